/** What stands beside each thing of the desk's plan: its name, how it stands, who is in; the gravest names have room first. */
import { lastShort } from "../../../parts/last";
import type { MachineCard, MarkCard, Point, Sheet } from "../../../wire";
import { t } from "../words";
import type { Rect } from "./cells";
import { HIGH, type Named } from "./labels";
import { onScreen, type Room, type Sight, type Spot } from "./sight";
import { REACH } from "./signs";
import { alongOf, type Lined, same, type Thing, waits } from "./things";

/** Half of the sides of a machine's sign, px. */
export const MACHINE = { wide: 17, high: 12 };

/** A name with what it says and what it belongs to. */
export interface Text extends Named {
  of: Thing;
  text: string;
  brief?: string;
}

export interface Shown {
  sheet: Sheet;
  machines: readonly MachineCard[];
  marks: ReadonlyMap<string, MarkCard>;
  lines: readonly Lined[];
  picked: Thing | null;
}

/** Who may be within a machine's keep-out, as a name beside it: JM IN. */
export function whoIsIn(card: MachineCard): string {
  const { stages } = t().wayIn;
  return card.way_in.people
    .filter((one) => one.stage !== "refused")
    .map((one) => `${one.person}${one.others ? ` + ${one.others}` : ""} ${stages[one.stage]}`)
    .join(", ");
}

/** All names of what is in sight, the gravest first. */
export function textsOf(shown: Shown, sight: Sight, room: Room, wide: (text: string) => number): Text[] {
  const spot = (point: Point) => onScreen(point, sight, room);
  const inside = ({ x, y }: Spot) => x >= 0 && y >= 0 && x <= room.wide && y <= room.high;
  const text = (of: Thing, words: string, points: readonly Point[], clear: number): Text[] => {
    const anchors = points.map(spot).filter(inside);
    if (anchors.length === 0 || words === "") return [];
    return [{ id: `${of.kind} ${of.id}`, of, text: words, anchors, clear, wide: wide(words) + 4 }];
  };
  const { sheet, machines, marks, picked } = shown;
  const people = machines.flatMap((one) =>
    one.place ? text({ kind: "machine", id: one.id }, whoIsIn(one), [one.place.at], MACHINE.wide) : [],
  );
  const named = new Set<string>();
  const ofLines = shown.lines.flatMap((one) => {
    // A face has two lines and one name.
    const key = `${one.kind} ${one.id}`;
    if (named.has(key) || one.kind === "ticket" || one.kind === "target") return [];
    named.add(key);
    return text(one, lineName(sheet, one), alongOf(one.points), 3);
  });
  const grave = (one: Text) => ["buried", "overhead"].includes(one.of.kind);
  const ofMarks = sheet.marks.flatMap((mark) => {
    const card = marks.get(mark.id);
    const whole = text(
      { kind: "mark", id: mark.id },
      `${mark.id} ${lastShort(card)}`.trim(),
      [mark.place],
      REACH,
    );
    return whole.map((one) => ({ ...one, brief: mark.id, short: wide(mark.id) + 4 }));
  });
  const first = (one: Text) => same(one.of, picked) || waits(marks.get(one.of.id));
  const benchmarks = sheet.benchmarks.flatMap((one) =>
    one.place ? text({ kind: "benchmark", id: one.id }, one.id, [one.place], REACH) : [],
  );
  return [
    ...people,
    ...ofMarks.filter((one) => same(one.of, picked)),
    ...ofLines.filter(grave),
    ...ofMarks.filter((one) => !same(one.of, picked) && first(one)),
    ...ofMarks.filter((one) => !first(one)),
    ...benchmarks,
    ...ofLines.filter((one) => !grave(one)),
  ];
}

function lineName(sheet: Sheet, { kind, id }: Thing): string {
  const words = t();
  if (kind === "face") return `${words.cuts.daylight} ${id}`;
  if (kind === "overhead") return `${words.crew.overheadLine} ${id}`;
  if (kind !== "buried") return id;
  const one = sheet.utilities.find((utility) => utility.id === id);
  const name = one ? words.cuts.kinds[one.kind] : "";
  return id.toUpperCase() === name ? name : `${name} ${id}`;
}

/** The boxes of the signs that no name may lie on. */
export function signBoxes({ sheet, machines }: Shown, sight: Sight, room: Room): Rect[] {
  const box = (point: Point, wide: number, high: number): Rect => {
    const { x, y } = onScreen(point, sight, room);
    return { left: x - wide, right: x + wide, top: y - high, bottom: y + high };
  };
  return [
    ...sheet.marks.map((one) => box(one.place, REACH - 1, REACH - 1)),
    ...sheet.benchmarks.flatMap((one) => (one.place ? [box(one.place, REACH - 1, REACH - 1)] : [])),
    ...machines.flatMap((one) => (one.place ? [box(one.place.at, MACHINE.wide, MACHINE.high)] : [])),
    // The arrow to the north, and the scale's bar.
    { left: room.wide - 40, right: room.wide, top: 0, bottom: 30 },
    { left: 0, right: 130, top: room.high - HIGH - 14, bottom: room.high },
  ];
}

let pen: CanvasRenderingContext2D | null | undefined;
/** What was measured before; names come again with each change of the day. */
const known = new Map<string, number>();

/** How long a name is in the plan's letters, px; where the browser can't tell, long enough for any. */
export function wideIn(font: string): (text: string) => number {
  if (pen === undefined) pen = document.createElement("canvas").getContext("2d");
  return (text) => {
    if (!pen) return text.length * 11;
    const key = `${font} ${text}`;
    const had = known.get(key);
    if (had !== undefined) return had;
    pen.font = font;
    const { width } = pen.measureText(text);
    if (known.size > 2_000) known.clear();
    known.set(key, width);
    return width;
  };
}
