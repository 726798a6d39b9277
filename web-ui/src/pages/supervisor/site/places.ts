/** Where a thing of the site that is being typed lies: its places by their paths in the draft, read from what is typed and written
 * back when one is dragged. What can't be read is not drawn, and stays as it is typed. */
import { FOOT, INCH, METRE, MILLIMETRE } from "../../../grade";
import type { Point, SiteFormOf, Typed, TypedTable } from "../../../wire";
import { at, put } from "./draft";

/** A place of the draft. */
export interface DraftPlace {
  path: string;
  point: Point;
}

/** The key of the one place that a thing has, and of the places of a line or an area. */
const ONE: Partial<Record<SiteFormOf, string>> = { mark: "at", benchmark: "at", pile: "at" };
const MANY: Partial<Record<SiteFormOf, string>> = {
  line: "points",
  overhead: "points",
  structure: "points",
  utility: "points",
  ticket: "area",
  face: "toe",
  target: "within",
};

/** Whether places of such a thing can be drawn on the plan, and whether it has several. */
export function drawn(of: SiteFormOf): "one" | "many" | null {
  return ONE[of] ? "one" : MANY[of] ? "many" : null;
}

const UNIT: Record<string, number> = { ft: FOOT, "'": FOOT, in: INCH, '"': INCH, m: METRE, mm: MILLIMETRE };

/** A length as it is typed: 12.5 ft, 3.81 m, 12 ft 6 in; a plain number is feet. Null when it can't be told. */
export function lengthTyped(text: Typed | undefined): number | null {
  if (typeof text !== "string") return null;
  const plain = text.trim().replace("−", "-").replace(",", ".");
  if (/^-?(\d+(\.\d*)?|\.\d+)$/.test(plain)) return Math.round(Number(plain) * FOOT);
  const one = /^(-?(?:\d+(?:\.\d*)?|\.\d+))\s*(ft|in|mm|m|'|")$/.exec(plain);
  if (one) return Math.round(Number(one[1]) * (UNIT[one[2] ?? ""] ?? 0));
  const two = /^(-?)(\d+)\s*(?:ft|')\s*(\d+)(?:\s+(\d+)\/(\d+))?\s*(?:in|")$/.exec(plain);
  if (!two) return null;
  const inches = Number(two[3]) + (two[5] ? Number(two[4]) / Number(two[5]) : 0);
  return Math.round((two[1] ? -1 : 1) * (Number(two[2]) * FOOT + inches * INCH));
}

function placeOf(typed: Typed | undefined): Point | null {
  if (!Array.isArray(typed)) return null;
  const [x, y] = [lengthTyped(typed[0]), lengthTyped(typed[1])];
  return x === null || y === null ? null : { x, y };
}

/** The places of a draft that can be told. */
export function placesOf(of: SiteFormOf, typed: TypedTable): DraftPlace[] {
  const one = ONE[of];
  if (one) {
    const point = placeOf(at(typed, one));
    return point ? [{ path: one, point }] : [];
  }
  const many = MANY[of];
  const list = many ? at(typed, many) : undefined;
  if (!Array.isArray(list)) return [];
  return list.flatMap((each, i) => {
    const point = placeOf(each);
    return point ? [{ path: `${many}.${i}`, point }] : [];
  });
}

/** Feet as a place is written: 12.34 ft. */
const written = (length: number) => `${(Math.round((length * 100) / FOOT) / 100).toFixed(2)} ft`;

/** The draft with a place moved; an elevation that stands with it stays. */
export function moved(typed: TypedTable, path: string, to: Point): TypedTable {
  const east = put(typed, `${path}.0`, written(to.x));
  return put(east, `${path}.1`, written(to.y)) as TypedTable;
}

/** The draft with a place more: the one that it has, or the next of several. */
export function more(of: SiteFormOf, typed: TypedTable, to: Point): TypedTable {
  const one = ONE[of];
  if (one) return moved(typed, one, to);
  const many = MANY[of];
  if (!many) return typed;
  const list = at(typed, many);
  const each = Array.isArray(list) ? list : [];
  // A corner that was added and is empty still takes the next place.
  const empty = each.findIndex((place) => Array.isArray(place) && place.every((part) => part === ""));
  return moved(typed, `${many}.${empty >= 0 ? empty : each.length}`, to);
}
