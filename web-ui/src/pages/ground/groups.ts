/** Marks in groups of ten by their names, and how each stands: what finds one among many in two presses. */
import { ground } from "../../state";
import type { MarkCard, SheetMark } from "../../wire";

export interface Group {
  name: string;
  marks: SheetMark[];
}

const TEN = 10;

/** What stands before a name's last figures: N- of N-07. */
const stem = (id: string) => id.replace(/\d+\D*$/, "");

/** In the order of work; a group is parted where the names change, unless both parts are few. */
export function groupsOf(marks: readonly SheetMark[]): Group[] {
  const runs: SheetMark[][] = [];
  for (const mark of marks) {
    const run = runs.at(-1);
    const before = run?.at(-1);
    if (run && before && run.length < TEN && stem(before.id) === stem(mark.id)) run.push(mark);
    else runs.push([mark]);
  }
  const groups: SheetMark[][] = [];
  for (const run of runs) {
    const group = groups.at(-1);
    if (group && group.length + run.length <= TEN) group.push(...run);
    else groups.push([...run]);
  }
  return groups.map((each) => ({ name: each[0]?.id ?? "", marks: each }));
}

/** From which to which: N-11–20; P-1–SPOT-1. A name stays whole. */
export function groupName({ marks }: Group): string {
  const first = marks[0]?.id ?? "";
  const last = marks.at(-1)?.id ?? "";
  if (first === last) return first;
  const same = stem(first) === stem(last) && marks.every((one) => stem(one.id) === stem(first));
  return `${first} – ${same ? last.slice(stem(last).length) : last}`;
}

/** How a mark stands, as whoever looks for the next one asks: a reading that counts no more, or was too close, is taken again. */
export type Standing = "high" | "low" | "on" | "again";

export const cardOf = (mark: SheetMark): MarkCard | undefined =>
  ground.value?.marks.find((one) => one.id === mark.id);

export function standingOf(mark: SheetMark): Standing | null {
  const card = cardOf(mark);
  if (!card) return null;
  if (card.counts.kind !== "counts") return "again";
  const { verdict } = card;
  if (!verdict) return null;
  return verdict === "high" || verdict === "low" || verdict === "on" ? verdict : "again";
}
