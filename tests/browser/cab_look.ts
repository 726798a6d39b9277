/** Measures a cab's page: where everything stands, what is covered, how high its figures are drawn, and what is wrong with that. */
import type { Page } from "@playwright/test";
import type { CabState } from "./cab_states.ts";

export interface Size {
  width: number;
  height: number;
  /** Of a phone with so many CSS pixels across; of a tablet of ten inches. */
  mm: number;
  /** The least height of one drawn figure, mm. */
  floor: number;
  /** Everything that stands over the number is in view, three strips too. */
  whole: boolean;
}

export const SIZES: readonly Size[] = [
  { width: 320, height: 640, mm: 0.185, floor: 34, whole: false },
  { width: 360, height: 740, mm: 0.185, floor: 38, whole: true },
  { width: 390, height: 844, mm: 0.166, floor: 38, whole: true },
  { width: 740, height: 360, mm: 0.185, floor: 30, whole: true },
  { width: 844, height: 390, mm: 0.166, floor: 30, whole: true },
  { width: 820, height: 1180, mm: 0.16, floor: 38, whole: true },
  { width: 1180, height: 820, mm: 0.16, floor: 38, whole: true },
];

interface Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

export interface Seen {
  stop: Box;
  /** What a finger would touch in the middle of STOP and of the sign of life. */
  stopCovered: boolean;
  tickCovered: boolean;
  /** How far the page runs past its edge. */
  over: number;
  keys: { name: string; box: Box; covered: boolean; cut: boolean }[];
  /** What stands over the number or beside it, whole and in view or not. */
  strips: { text: string; whole: boolean }[];
  /** Height of its drawn figures and how much of its room's width it fills, of a number in view. */
  number: { cap: number; fills: number; whole: boolean } | null;
  /** Parts that lie over one another. */
  overlaps: string[];
}

/** Everything that is measured, at once. */
export async function look(page: Page): Promise<Seen> {
  return page.evaluate(() => {
    const box = (of: Element): Box => {
      const { left, top, right, bottom } = of.getBoundingClientRect();
      return { left, top, right, bottom };
    };
    const covered = (of: Element) => {
      const { left, top, right, bottom } = of.getBoundingClientRect();
      const touched = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
      return !touched || !(of.contains(touched) || touched.contains(of));
    };
    const one = (name: string) => {
      const found = document.querySelector(name);
      if (!found) throw new Error(`${name} is not there`);
      return found;
    };
    const within = (inner: Box, outer: Box) =>
      inner.left >= outer.left - 1 &&
      inner.right <= outer.right + 1 &&
      inner.top >= outer.top - 1 &&
      inner.bottom <= outer.bottom + 1;
    const side = document.querySelector(".side");
    const strips = [...(side?.children ?? [])].filter((strip) => strip.getBoundingClientRect().height > 0);
    const screen = { left: 0, top: 0, right: innerWidth, bottom: innerHeight };
    const drawn = document.querySelector(".number");
    const number = () => {
      if (!drawn) return null;
      const figure = [...drawn.querySelectorAll("span:not(.fraction, .figure-word)")].at(0) ?? drawn;
      const style = getComputedStyle(figure);
      const pen = document.createElement("canvas").getContext("2d");
      if (!pen) throw new Error("No canvas");
      pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
      const room = box(one(".number-room"));
      const { left, right, top, bottom } = box(drawn);
      const cap = pen.measureText("4").actualBoundingBoxAscent;
      // Its figures stand in the middle of their line, however high that is.
      const middle = (top + bottom) / 2;
      const text = { left, right, top: middle - cap / 2, bottom: middle + cap / 2 };
      return {
        // A lone fraction is as high as a whole figure.
        cap: figure.closest(".fraction")
          ? box(one(".fraction")).bottom - box(one(".fraction")).top
          : cap,
        fills: (text.right - text.left) / (room.right - room.left),
        whole: within(text, { ...room, top: room.top - 4, bottom: room.bottom + 4 }) && within(room, screen),
      };
    };
    const parts = [".side", ".section, .plate-screen, .stop-screen, .loud", ".cab-keys > :not(.stop, .awake)", ".key.stop"];
    const overlaps: string[] = [];
    for (const [i, first] of parts.entries()) {
      for (const second of parts.slice(i + 1)) {
        for (const a of document.querySelectorAll(first)) {
          for (const b of document.querySelectorAll(second)) {
            const [x, y] = [box(a), box(b)];
            const apart =
              x.right <= y.left + 1 || y.right <= x.left + 1 || x.bottom <= y.top + 1 || y.bottom <= x.top + 1;
            if (!apart && x.bottom > x.top && y.bottom > y.top) overlaps.push(`${first} / ${second}`);
          }
        }
      }
    }
    return {
      stop: box(one(".key.stop")),
      stopCovered: covered(one(".key.stop")),
      tickCovered: covered(one(".tick")),
      over: document.documentElement.scrollWidth - innerWidth,
      keys: [...document.querySelectorAll("button:not(.stop)")].map((key) => ({
        name: key.getAttribute("aria-label") ?? key.textContent ?? "",
        box: box(key),
        covered: covered(key),
        cut: key.scrollWidth > key.clientWidth + 1,
      })),
      strips: strips.map((strip) => {
        const fixed = getComputedStyle(strip).position === "fixed";
        return {
          text: strip.textContent ?? "",
          whole: within(box(strip), fixed || !side ? screen : box(side)) && strip.scrollWidth <= strip.clientWidth + 1,
        };
      }),
      number: number(),
      overlaps,
    };
  });
}

/** How far two boxes are apart, px. */
export function apart(a: Box, b: Box): number {
  const x = Math.max(a.left - b.right, b.left - a.right, 0);
  const y = Math.max(a.top - b.bottom, b.top - a.bottom, 0);
  return Math.hypot(x, y);
}

/** What is wrong with a state at a size, in words. */
export function faults(state: CabState, seen: Seen, size: Size): string[] {
  const found: string[] = [];
  if (seen.over > 0) found.push(`the page runs ${seen.over} px past its edge`);
  if (seen.stopCovered) found.push("STOP is covered");
  if (seen.tickCovered) found.push("the sign of life is covered");
  const stop = seen.stop;
  for (const key of seen.keys) {
    if (key.cut) found.push(`${key.name} runs over its key`);
    const gap = apart(key.box, stop) * size.mm;
    if (gap < 5.9) found.push(`${key.name} is ${gap.toFixed(1)} mm from STOP`);
    const over = key.box.right > stop.left && key.box.left < stop.right && key.box.bottom <= stop.top;
    const high = key.box.bottom - key.box.top;
    if (over && high > 70 && (stop.top - key.box.bottom) * size.mm < 20) found.push(`${key.name} lies over STOP`);
  }
  for (const name of state.keys ?? []) {
    const key = seen.keys.find((one) => (typeof name === "string" ? one.name === name : name.test(one.name)));
    if (!key) {
      found.push(`${name} is not there`);
      continue;
    }
    const inside = key.box.top >= 0 && key.box.bottom <= size.height && key.box.right <= size.width;
    if (size.whole && (!inside || key.covered)) found.push(`${name} is not in reach`);
  }
  if (size.whole) {
    found.push(...seen.strips.filter((one) => !one.whole).map((one) => `not whole: ${one.text}`));
  }
  found.push(...seen.overlaps.map((one) => `over one another: ${one}`));
  if (state.number !== undefined) {
    const number = seen.number;
    if (!number) return [...found, "no number"];
    if (!number.whole) found.push("the number is cut");
    const mm = number.cap * size.mm;
    // What has more figures than one is as high as its width lets it be; a box stands round feet.
    const least = state.number === "1.4" ? size.floor * 0.7 : size.floor;
    if (mm < least && number.fills < 0.8) found.push(`figures of ${mm.toFixed(1)} mm`);
    if (state.number.length === 1 && mm < size.floor) found.push(`a figure of ${mm.toFixed(1)} mm`);
  }
  return found;
}
