/** Where names stand on a plan: over no line, no sign and no other name; what has no room is counted where it stands, never left out. */
import { Cells, type Rect } from "./cells";
import type { Room, Spot } from "./sight";

/** A name that wants a place. */
export interface Named {
  id: string;
  /** Where its thing is; of a line, the places along it where its name may stand. */
  anchors: readonly Spot[];
  /** How far from the anchor its own sign reaches, px. */
  clear: number;
  /** How long the name is, px. */
  wide: number;
  /** How long it is without how its thing stands, which the sign tells too; said so where there is no room for more. */
  short?: number;
}

export interface Placed {
  id: string;
  box: Rect;
  anchor: Spot;
  /** It stands so far off that a straight leads to it. */
  led: boolean;
  /** Its short name alone had room. */
  short: boolean;
}

/** Names that had no room, counted in one place beside their signs. */
export interface Counted {
  ids: string[];
  box: Rect;
  anchor: Spot;
}

export interface Labels {
  placed: Placed[];
  counted: Counted[];
  /** Not even a count had room; the plan's foot counts them. */
  rest: string[];
}

/** How high a name is, px. */
export const HIGH = 16;
/** How far beyond its sign a name stands, px: beside it, or off with a straight that leads to it; a count may stand farther. */
const OFF = [3, 10, 18, 28, 40, 54, 70, 90, 115, 145];
const NAME_OFF = 5;
/** The directions that are tried, the easiest to read first: east, west, the corners, north and south, then those between. */
const HALF = Math.SQRT1_2;
const SIDES: readonly (readonly [number, number])[] = [
  [1, 0],
  [-1, 0],
  [HALF, -HALF],
  [HALF, HALF],
  [-HALF, -HALF],
  [-HALF, HALF],
  [0, -1],
  [0, 1],
  [0.92, -0.38],
  [0.92, 0.38],
  [-0.92, -0.38],
  [-0.92, 0.38],
  [0.38, -0.92],
  [0.38, 0.92],
  [-0.38, -0.92],
  [-0.38, 0.92],
];
/** Signs that stand so near to each other are counted together, px. */
const TOGETHER = 44;
const FEW = 4;
/** A count's width, px, for each of its letters and its sign. */
const LETTER = 12;

/** Names in the order of their importance; `lines` and `signs` are what no name may lie on. */
export function labels(
  named: readonly Named[],
  room: Room,
  lines: readonly (readonly Spot[])[],
  signs: readonly Rect[],
): Labels {
  const drawn = new Cells(room);
  const names = new Cells(room);
  for (const line of lines) drawn.takeLine(line);
  for (const sign of signs) {
    drawn.takeBox(sign);
    names.takeBox(sign);
  }
  const found: Labels = { placed: [], counted: [], rest: [] };
  const left: Named[] = [];
  const put = (one: Named, most: number): Placed | null => {
    const place = placeFor(one, most, room, drawn, names);
    if (!place) return null;
    names.takeBox(place.box);
    if (place.led) {
      drawn.takeLine(leader(place));
      names.takeLine(leader(place));
    }
    return place;
  };
  const kept = (place: Placed | null): boolean => place !== null && found.placed.push(place) > 0;
  const brief = (one: Named): Placed | null => {
    const place = one.short === undefined ? null : put({ ...one, wide: one.short }, NAME_OFF);
    return place && { ...place, short: true };
  };
  for (const one of named) {
    if (!kept(put(one, NAME_OFF)) && !kept(brief(one))) left.push(one);
  }
  const count = (group: readonly Named[]): boolean => {
    const wide = LETTER * (1 + String(group.length).length);
    const anchors = group.flatMap((one) => one.anchors);
    const place = put({ id: "", anchors, clear: group[0]?.clear ?? 0, wide }, OFF.length);
    if (place) found.counted.push({ ids: group.map((one) => one.id), box: place.box, anchor: place.anchor });
    return place !== null;
  };
  for (const heap of together(left)) {
    // Of many the straights to each could not be told apart: they are counted first. A few go farther off, one by one.
    if (heap.length > FEW && count(heap)) continue;
    const group = heap.filter((one) => !kept(put(one, OFF.length)));
    if (group.length > 0 && !count(group)) found.rest.push(...group.map((one) => one.id));
  }
  return found;
}

/** The straight from a sign to its name. */
export function leader({ anchor, box }: Pick<Placed, "anchor" | "box">): [Spot, Spot] {
  const clamp = (at: number, low: number, high: number) => Math.min(high, Math.max(low, at));
  const end = { x: clamp(anchor.x, box.left, box.right), y: clamp(anchor.y, box.top, box.bottom) };
  // It begins beside the sign, not in its middle.
  const long = Math.hypot(end.x - anchor.x, end.y - anchor.y) || 1;
  const begin = Math.min(8, long / 2) / long;
  return [
    { x: anchor.x + (end.x - anchor.x) * begin, y: anchor.y + (end.y - anchor.y) * begin },
    { x: end.x + (anchor.x - end.x) * (1 / long), y: end.y + (anchor.y - end.y) * (1 / long) },
  ];
}

function placeFor(one: Named, most: number, room: Room, drawn: Cells, names: Cells): Placed | null {
  for (const off of OFF.slice(0, most)) {
    for (const [east, south] of SIDES) {
      for (const anchor of one.anchors) {
        const box = boxAt(anchor, one, off, east, south);
        const inside =
          box.left >= 2 && box.top >= 2 && box.right <= room.wide - 2 && box.bottom <= room.high - 2;
        if (!inside || !drawn.freeBox(box) || !names.freeBox(box)) continue;
        const led = off > (OFF[0] ?? 0);
        const place = { id: one.id, box, anchor, led, short: false };
        // A straight may cross the ground's lines, but no name and no sign; its own sign is left behind by then.
        if (led && !names.freeLine(beyond(leader(place), one.clear))) continue;
        return place;
      }
    }
  }
  return null;
}

/** What of a straight lies farther from its beginning than its sign reaches. */
function beyond([from, to]: [Spot, Spot], clear: number): [Spot, Spot] {
  const long = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const part = Math.min(1, clear / long);
  return [{ x: from.x + (to.x - from.x) * part, y: from.y + (to.y - from.y) * part }, to];
}

/** The box that lies in this direction: its near side, corner or middle is the one that looks at the sign. */
function boxAt(anchor: Spot, { wide, clear }: Named, off: number, east: number, south: number): Rect {
  const far = clear + off;
  const [x, y] = [anchor.x + east * far, anchor.y + south * far];
  const left = x + ((east - 1) / 2) * wide;
  const top = y + ((south - 1) / 2) * HIGH;
  return { left, top, right: left + wide, bottom: top + HIGH };
}

/** Those whose signs stand near to the first of their group. */
function together(left: readonly Named[]): Named[][] {
  const groups: Named[][] = [];
  for (const one of left) {
    const at = one.anchors[0];
    const group = groups.find(([first]) => {
      const other = first?.anchors[0];
      return at && other && Math.hypot(at.x - other.x, at.y - other.y) < TOGETHER;
    });
    if (group) group.push(one);
    else groups.push([one]);
  }
  return groups;
}
