/** Who was in at which machine when this phone last knew: a page that is loaded without a hub says that instead of nothing. */
import { ground, me, now, operator, remember, remembered, supervisor } from "./state";
import type { EntryCard, Me } from "./wire";

const STORE = "rodcall.last";
/** The moment of what has not changed is written down anew this often, ms. */
const EVERY = 30_000;

export interface LastSeen {
  me: Me;
  /** When the hub last said so. */
  at: number;
  /** Who may be within which machine's keep-out. */
  inside: { machine: string; person: string; device: string }[];
  /** Machines that a stop held. */
  stopped: string[];
}

let kept: LastSeen | null | undefined;

/** What this phone last knew; nothing on a phone that was never in, or keeps nothing. */
export function lastSeen(): LastSeen | null {
  if (kept === undefined) kept = read();
  return kept;
}

function read(): LastSeen | null {
  try {
    const found = JSON.parse(remembered(STORE) ?? "null") as LastSeen | null;
    return found?.me?.device && Array.isArray(found.inside) && Array.isArray(found.stopped) ? found : null;
  } catch {
    return null;
  }
}

const mayBeIn = (one: EntryCard) =>
  one.stage === "answered" || one.stage === "in" || one.stage === "unconfirmed";

/** Somebody has come in on this phone: what it knew was another's. */
export function rememberMe(me: Me): void {
  kept = { me, at: now.value, inside: [], stopped: [] };
  remember(STORE, JSON.stringify(kept));
}

/** After each view: who may be in now. */
export function rememberWhoIsIn(): void {
  const who = me.value;
  if (!who) return;
  const cab = operator.value;
  const cards = (ground.value ?? supervisor.value)?.machines ?? [];
  const of = (machine: string, people: EntryCard[]) =>
    people.filter(mayBeIn).map(({ person, device }) => ({ machine, person, device }));
  const inside = cab
    ? of(cab.machine, cab.way_in.people)
    : cards.flatMap((card) => of(card.id, card.way_in.people));
  const stopped = cab
    ? cab.screen.kind === "stop"
      ? [cab.machine]
      : []
    : cards.filter((card) => card.stop).map((card) => card.id);
  const next: LastSeen = { me: who, at: now.value, inside, stopped };
  const before = lastSeen();
  const same =
    before?.me.device === who.device &&
    JSON.stringify([before.inside, before.stopped]) === JSON.stringify([inside, stopped]);
  if (same && next.at - before.at < EVERY) return;
  kept = next;
  remember(STORE, JSON.stringify(next));
}
