/**
 * Where this machine stands, said in its own cab while that is old or unknown. Held: from it follows who is near and which
 * faces are. Whoever presses amiss says it anew.
 */
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { say } from "../../hub";
import { waiting } from "../../outbox";
import { HoldKey, Key } from "../../parts/keys";
import { LatePanel } from "../../parts/late_panel";
import { ago } from "../../show";
import { now } from "../../state";
import type { Operator, StandCard } from "../../wire";
import { t } from "../../words";

/** The place is too old to judge by, or nobody has said one: as the hub tells it. */
function owed(card: StandCard): boolean {
  return card.old_at == null || now.value >= card.old_at;
}

/** What is not known of the place; nothing while it is known. */
export function standWords(view: Operator): string {
  const card = view.stand;
  if (!card || !owed(card)) return "";
  return card.since == null ? t().placeUnknown : t().placeOld;
}

/** Where there is no call: what is not known; its keys stand in the place of GOT IT. */
export function Stand({ view }: { view: Operator }) {
  const words = standWords(view);
  return words ? <p class="stand">{words}</p> : null;
}

/** In the place of GOT IT where there is no call, a row each. */
export function standKeys(view: Operator): ComponentChildren[] {
  const words = t().crew;
  const card = view.stand;
  if (!card || !owed(card)) return [];
  const likely = card.since != null || card.called != null;
  const name = likely ? words.standElse : words.standTitle;
  const elsewhere = <Elsewhere key="else" view={view} card={card} name={name} />;
  return likely ? [<Likely key="likely" card={card} />, elsewhere] : [elsewhere];
}

/** Beside GOT IT under a call: it takes no room from the number. Another place is said on the plan. */
export function StandKey({ view }: { view: Operator | null }) {
  const card = view?.stand;
  return card && owed(card) ? <Likely card={card} /> : null;
}

/** The place that it most likely is: where it was, else at the mark that was called last. */
function Likely({ card }: { card: StandCard }) {
  const words = t().crew;
  const { since, called } = card;
  if (waiting.value.some((item) => item.command.kind === "stand_here")) {
    return <p class="held">{t().states.waiting}</p>;
  }
  if (since != null) {
    return (
      <HoldKey onPress={() => void say({ kind: "stand_here", at: { kind: "still", since } })}>
        {words.standStill(card.near ?? "")}
      </HoldKey>
    );
  }
  if (!called) return null;
  return (
    <HoldKey onPress={() => void say({ kind: "stand_here", at: { kind: "mark", mark: called } })}>
      {words.standAt(called)}
    </HoldKey>
  );
}

function Elsewhere({ view, card, name }: { view: Operator; card: StandCard; name: string }) {
  const [open, setOpen] = useState(false);
  const close = () => setOpen(false);
  return (
    <>
      <Key onPress={() => setOpen(true)}>{name}</Key>
      {open && (
        <LatePanel title={t().crew.standTitle} onClose={close}>
          {(late) => <late.StandPanel machine={view.machine} card={card} onClose={close} />}
        </LatePanel>
      )}
    </>
  );
}

/** On the plan: what was said last, and the way to say it anew. */
export function StandLine({ view }: { view: Operator }) {
  const words = t();
  const card = view.stand;
  if (!card) return null;
  return (
    <p class="row stand">
      <span>
        {card.since == null
          ? words.placeUnknown
          : words.placeSaid(card.near ?? "", ago(now.value - card.since))}
      </span>
      <Elsewhere view={view} card={card} name={words.crew.standTitle} />
    </p>
  );
}
