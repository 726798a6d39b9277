/** Where the ground person stands and with what: the mark, the rod, the set-up. Kept over a reload. */
import { computed, effect, signal } from "@preact/signals";
import { ground, remember, remembered, sheet } from "../../state";
import type { Care, Line, MachineCard, Rod, SetUpCard, SheetMark, StepSide } from "../../wire";

interface Chosen {
  mark: string | null;
  rod: string | null;
  setUp: string | null;
  /** Another machine than the one that the mark is assigned to. */
  machine: string | null;
  receiver: boolean;
  care: Care;
  side: StepSide | null;
  /** Readings are typed in from paper: when they were made, and by whom. */
  paper: { at: number; by: string } | null;
}

const NOTHING: Chosen = {
  mark: null,
  rod: null,
  setUp: null,
  machine: null,
  receiver: false,
  care: "coarse",
  side: null,
  paper: null,
};

const STORE = "rodcall.at";

export const chosen = signal<Chosen>(stored());

effect(() => remember(STORE, JSON.stringify(chosen.value)));

function stored(): Chosen {
  try {
    return { ...NOTHING, ...JSON.parse(remembered(STORE) ?? "{}") };
  } catch {
    return NOTHING;
  }
}

export function choose(change: Partial<Chosen>): void {
  chosen.value = { ...chosen.value, ...change };
}

/** Another mark: what belonged to the mark before is let go. */
export function chooseMark(id: string): void {
  choose({ mark: id, machine: null, side: null });
}

export const mark = computed<SheetMark | null>(() => {
  const marks = sheet.value?.marks ?? [];
  return marks.find((one) => one.id === chosen.value.mark) ?? marks[0] ?? null;
});

export const rod = computed<Rod | null>(() => {
  const rods = sheet.value?.rods ?? [];
  return rods.find((one) => one.id === chosen.value.rod) ?? rods[0] ?? null;
});

/** The chosen set-up, else the newest that may be used, else the newest. */
export const setUp = computed<SetUpCard | null>(() => {
  const standing = ground.value?.set_ups ?? [];
  const usable = standing.filter((one) => one.state.kind === "proven");
  return (
    standing.find((one) => one.id === chosen.value.setUp) ??
    usable[usable.length - 1] ??
    standing[standing.length - 1] ??
    null
  );
});

export const machine = computed<MachineCard | null>(() => {
  const id = chosen.value.machine ?? mark.value?.machine;
  return ground.value?.machines.find((one) => one.id === id) ?? null;
});

/** The mark so many places on in the order of work; it does not run past the ends. */
export function step(by: number): void {
  const marks = sheet.value?.marks ?? [];
  const here = marks.findIndex((one) => one.id === mark.value?.id);
  const next = marks[Math.max(0, Math.min(marks.length - 1, here + by))];
  if (next) chooseMark(next.id);
}

/** The elevation to dig to, on the side that was said. */
export function digTo(of: SheetMark | null, side: StepSide | null): number | null {
  const at = of?.dig_to;
  if (!at) return null;
  if ("at" in at) return at.at;
  return side ? at.near_step[side] : null;
}

export function nearStep(of: SheetMark | null): boolean {
  return !!of?.dig_to && "near_step" in of.dig_to;
}

/** The height of the laser's plane over the chosen mark; a sloped laser's differs from mark to mark. */
export function heightHere(): number | null {
  if (!setUp.value) return null;
  const shot = ground.value?.shots.find(
    (one) => one.mark === mark.value?.id && one.set_up === setUp.value?.id,
  );
  if (shot) return shot.height;
  return setUp.value.slope ? null : setUp.value.height;
}

/** HI less dig-to: the rod value at grade on this set-up, any bracket counted in. */
export function gradeRod(): number | null {
  const to = digTo(mark.value, chosen.value.side);
  if (to === null || !setUp.value || setUp.value.state.kind !== "proven") return null;
  const height = heightHere();
  return height === null ? null : height - to;
}

/** The lines of this site that must not be crossed. */
export function keptLines(): Line[] {
  return (sheet.value?.lines ?? []).filter((line) => line.no_cross);
}
