/** Where the ground person stands to each machine's keep-out: whose visits are mine, what is not sent, whom to ask. */
import { computed, signal } from "@preact/signals";
import { newKey, waiting } from "../../outbox";
import { ground, me, now } from "../../state";
import type { EntryCard, MachineCard, SheetMark } from "../../wire";

/** A visit of this phone, or of its person with a phone that is gone. */
export interface Mine {
  card: MachineCard;
  visit: EntryCard;
}

export const mine = computed<Mine[]>(() =>
  (ground.value?.machines ?? []).flatMap((card) =>
    card.way_in.people.filter((visit) => own(visit)).map((visit) => ({ card, visit })),
  ),
);

function own(visit: EntryCard): boolean {
  return visit.device === me.value?.device || (visit.person === me.value?.person && visit.lost != null);
}

/** What was pressed about a way in and has no answer: which, for which machine, and whether it failed to go. */
export interface Pressed {
  kind: "ask_in" | "go_in" | "come_out";
  machine: string;
  failed: boolean;
}

export const pressed = computed<Pressed[]>(() =>
  waiting.value.flatMap(({ command, failed }) =>
    command.kind === "ask_in" || command.kind === "go_in" || command.kind === "come_out"
      ? [{ kind: command.kind, machine: String(command.machine), failed }]
      : [],
  ),
);

/** "Not entering" is believed for so long, for one machine in one place: what nags is not read. */
const BELIEVED = 20 * 60_000;

const outside = signal<Record<string, number>>({});

const placed = (card: MachineCard) => `${card.id}@${card.place?.since ?? 0}`;

/** The ground person shoots from outside of this machine's keep-out. */
export function staysOutside(card: MachineCard): void {
  outside.value = { ...outside.value, [placed(card)]: now.value };
}

/** Whether a mark counts as within a machine's keep-out, as far as has been said. */
export function within(card: MachineCard, mark: SheetMark): boolean {
  const old = card.place_old_at == null || now.value >= card.place_old_at;
  return card.marks_within.includes(mark.id) || (old && mark.machine === card.id);
}

/** The machines that have to be asked before anyone reads at a mark. */
export function toAsk(mark: SheetMark | null): MachineCard[] {
  if (!mark) return [];
  return (ground.value?.machines ?? []).filter((card) => {
    const said = outside.value[placed(card)];
    const believed = said !== undefined && now.value - said < BELIEVED;
    const isIn = mine.value.some((one) => one.card.id === card.id && one.visit.stage === "in");
    return within(card, mark) && !believed && !isIn;
  });
}

/** A visit's name: this phone's own, used for one stay. */
export const newVisit = newKey;
