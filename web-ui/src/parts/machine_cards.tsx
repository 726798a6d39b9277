/** A card for each machine: what it was last told, whether anyone sees it, what is wrong. */
import { ago, overFeet } from "../show";
import { now } from "../state";
import type { MachineCard } from "../wire";
import { t } from "../words_later";
import { labelWords, live } from "./call";
import { Key } from "./keys";
import { callLine, troubles } from "./machine";
import { Shape } from "./shape";

interface MachineCardsProps {
  cards: MachineCard[];
  /** A machine's name is pressed. */
  onPick?: ((machine: string) => void) | undefined;
}

export function MachineCards({ cards, onPick }: MachineCardsProps) {
  return (
    <>
      {cards.map((card) => (
        <div class="card" key={card.id}>
          <h3>
            <Shape of={card.shape} />{" "}
            {onPick ? (
              <Key kind="plain" onPress={() => onPick(card.id)}>
                {card.id}
              </Key>
            ) : (
              card.id
            )}{" "}
            <small>{card.works_on.join(", ")}</small>
          </h3>
          <p class="told-line">
            {card.call?.mark ? `${card.call.mark}: ` : ""}
            {callLine(card)}
            {card.call && ` · ${ago(now.value - card.call.made_at)}`}
            {live(card.call) && labelWords(card.call).map((label) => ` · ${label}`)}
          </p>
          <p>{screenWords(card)}</p>
          {card.beyond_reach != null && <p>{t().crew.beyondReach(card.id, overFeet(card.beyond_reach))}</p>}
          {card.spotter && <p>{t().crew.spotter(card.spotter.person)}</p>}
          {card.mute && <p class="trouble">{t().noSound(card.id)}</p>}
          {troubles(card).map((line) => (
            <p key={line} class="trouble">
              {line}
            </p>
          ))}
        </div>
      ))}
    </>
  );
}

function screenWords(card: MachineCard): string {
  const words = t();
  const screen = card.screen;
  if (screen.kind === "none") return words.screenNone;
  if (screen.kind === "showing") return words.screenShows(screen.person);
  const since = words.ago(ago(now.value - screen.since));
  const who = screen.kind === "hidden" ? words.screenHiddenBy : words.screenLostBy;
  return `${who(screen.person)}, ${since}`;
}
