/** A machine in one line: its shape, its last call and where that stands, and what is wrong. */
import { setUpName } from "../given_names";
import { ago } from "../show";
import { now } from "../state";
import type { MachineCard } from "../wire";
import { t } from "../words";
import { stateWords, textOf } from "./call";
import { nearWords } from "./near";
import { Shape } from "./shape";

/** What is wrong with a machine or its screen, gravest first. */
export function troubles(card: MachineCard): string[] {
  const words = t();
  const found: string[] = [];
  if (card.stop) found.push(words.stopped(card.id, card.stop.by));
  for (const one of card.way_in.people) {
    if (one.stage === "refused") continue;
    const link = one.lost == null ? "" : ` · ${words.wayIn.lostLink}`;
    found.push(`${card.id}: ${one.person} ${words.wayIn.stages[one.stage]}${link}`);
  }
  if (card.paused_by) found.push(words.paused(card.id, setUpName(card.paused_by)));
  if (card.must_see) found.push(words.mustSee(card.id, card.must_see));
  if (card.cant) found.push(words.cantSaid(card.id, words.cant[card.cant.why]));
  if (card.cant?.why === "water") found.push(words.cuts.also.water);
  if (card.battery_low != null) found.push(words.crew.batteryTold(card.id));
  if (card.spotter?.lost != null) found.push(words.crew.spotterLost(card.spotter.person));
  found.push(...card.near.map((near) => `${card.id}: ${nearWords(near)}`));
  if (card.screen.kind === "none") found.push(words.noScreen(card.id));
  if (card.screen.kind === "hidden") found.push(words.screenHidden(card.id));
  if (card.screen.kind === "lost") found.push(words.screenLost(card.id));
  if (card.look_asked_at != null) {
    found.push(words.waitsForLook(card.id, ago(now.value - card.look_asked_at)));
  }
  return found;
}

export function MachineLine({ card, onPress }: { card: MachineCard; onPress: () => void }) {
  const [first] = troubles(card);
  return (
    <button type="button" class="key machine-line" onClick={onPress}>
      <Shape of={card.shape} />
      {!first && <strong>{card.id}</strong>}
      <span class={first ? "trouble" : ""}>
        {first ?? callLine(card)}
        {card.mute && <small> · {t().noSound(card.id)}</small>}
      </span>
    </button>
  );
}

/** The last call and where it stands, in one line. */
export function callLine(card: MachineCard): string {
  if (!card.call) return t().noCall;
  return `${textOf(card.call)?.line ?? ""} · ${stateWords(card.call, card)}`;
}
