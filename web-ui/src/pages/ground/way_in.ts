/** Where the ground person stands to each machine's keep-out: whose visits are mine, what is not sent, whom to ask. */
import { computed, signal } from "@preact/signals";
import { newKey, waiting } from "../../outbox";
import { ground, me, now } from "../../state";
import type { EntryCard, MachineCard, SheetMark, ToldOutCard } from "../../wire";

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

/** For whom another phone has said OUT, and who has not answered yet: this phone's visit, or its person's. */
export const toldOut = computed<{ card: MachineCard; told: ToldOutCard }[]>(() =>
  (ground.value?.machines ?? []).flatMap((card) =>
    (card.way_in.told_out ?? [])
      .filter((told) => told.device === me.value?.device || told.person === me.value?.person)
      .map((told) => ({ card, told })),
  ),
);

/** The ground person shoots from outside of this machine's keep-out. */
export function staysOutside(card: MachineCard): void {
  outside.value = { ...outside.value, [placed(card)]: now.value };
}

/** Whether a mark counts as within a machine's keep-out, as far as has been said. */
export function within(card: MachineCard, mark: SheetMark): boolean {
  const old = card.place_old_at == null || now.value >= card.place_old_at;
  return card.marks_within.includes(mark.id) || (old && (card.is_about || mark.machine === card.id));
}

/** The machines whose keep-out a mark lies in, and where this phone's person is not in. */
function near(mark: SheetMark | null): MachineCard[] {
  if (!mark) return [];
  return (ground.value?.machines ?? []).filter((card) => {
    const isIn = mine.value.some((one) => one.card.id === card.id && one.visit.stage === "in");
    return within(card, mark) && !isIn;
  });
}

function believed(card: MachineCard): boolean {
  const said = outside.value[placed(card)];
  return said !== undefined && now.value - said < BELIEVED;
}

/** The machines that have to be asked before anyone reads at a mark. */
export const toAsk = (mark: SheetMark | null): MachineCard[] => near(mark).filter((card) => !believed(card));

/** Those that were said not to be entered: whoever steps in after all asks them as before. */
export const mayAsk = (mark: SheetMark | null): MachineCard[] => near(mark).filter(believed);

/** A visit's name: this phone's own, used for one stay. */
export const newVisit = newKey;
