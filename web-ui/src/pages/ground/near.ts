/** Marks by how near they lie to a place. */
import type { Point, SheetMark } from "../../wire";

/** Nearest first. */
export function nearest(marks: readonly SheetMark[], to: Point): SheetMark[] {
  const far = (mark: SheetMark) => Math.hypot(mark.place.x - to.x, mark.place.y - to.y);
  return [...marks].sort((a, b) => far(a) - far(b));
}
