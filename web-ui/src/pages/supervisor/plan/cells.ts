/** What of a room is taken, in cells of a few px: lines, signs and names are put in, and a box asks whether it is free. */
import type { Room, Spot } from "./sight";

/** A box on the screen, px. */
export interface Rect {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

/** The side of a cell, px. */
const CELL = 3;

export class Cells {
  private readonly wide: number;
  private readonly high: number;
  private readonly taken: Uint8Array;

  constructor(room: Room) {
    this.wide = Math.max(1, Math.ceil(room.wide / CELL));
    this.high = Math.max(1, Math.ceil(room.high / CELL));
    this.taken = new Uint8Array(this.wide * this.high);
  }

  takeBox(box: Rect): void {
    this.each(box, (cell) => {
      this.taken[cell] = 1;
      return true;
    });
  }

  /** What of a line lies within the room: a step of half a cell misses no more than a corner of one. */
  takeLine(points: readonly Spot[]): void {
    this.walk(points, (cell) => {
      this.taken[cell] = 1;
      return true;
    });
  }

  /** Whether nothing of a box is taken; with a cell to spare, for the corners that a line's steps miss. */
  freeBox({ left, top, right, bottom }: Rect): boolean {
    const box = { left: left - CELL, top: top - CELL, right: right + CELL, bottom: bottom + CELL };
    return this.each(box, (cell) => this.taken[cell] === 0);
  }

  freeLine(points: readonly Spot[]): boolean {
    return this.walk(points, (cell) => this.taken[cell] === 0);
  }

  private each(box: Rect, ask: (cell: number) => boolean): boolean {
    const [left, right] = [Math.floor(box.left / CELL), Math.floor(box.right / CELL)];
    const [top, bottom] = [Math.floor(box.top / CELL), Math.floor(box.bottom / CELL)];
    for (let y = Math.max(0, top); y <= Math.min(this.high - 1, bottom); y++) {
      for (let x = Math.max(0, left); x <= Math.min(this.wide - 1, right); x++) {
        if (!ask(y * this.wide + x)) return false;
      }
    }
    return true;
  }

  private walk(points: readonly Spot[], ask: (cell: number) => boolean): boolean {
    for (let i = 1; i < points.length; i++) {
      const part = within(points[i - 1] as Spot, points[i] as Spot, this.wide * CELL, this.high * CELL);
      if (!part) continue;
      const [from, to] = part;
      const steps = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / (CELL / 2)) || 1;
      for (let step = 0; step <= steps; step++) {
        const x = Math.floor((from.x + ((to.x - from.x) * step) / steps) / CELL);
        const y = Math.floor((from.y + ((to.y - from.y) * step) / steps) / CELL);
        if (x < 0 || y < 0 || x >= this.wide || y >= this.high) continue;
        if (!ask(y * this.wide + x)) return false;
      }
    }
    return true;
  }
}

/** The part of a straight within a room that begins at 0, 0; nothing where it passes by (Liang and Barsky, 1984). */
export function within(from: Spot, to: Spot, wide: number, high: number): [Spot, Spot] | null {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  let [first, last] = [0, 1];
  for (const [p, q] of [
    [-dx, from.x],
    [dx, wide - from.x],
    [-dy, from.y],
    [dy, high - from.y],
  ] as const) {
    if (p === 0) {
      if (q < 0) return null;
      continue;
    }
    const at = q / p;
    if (p < 0) first = Math.max(first, at);
    else last = Math.min(last, at);
    if (first > last) return null;
  }
  const on = (part: number) => ({ x: from.x + dx * part, y: from.y + dy * part });
  return [on(first), on(last)];
}
