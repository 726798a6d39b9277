/** The cab's page in every state and hold: millimetres of its number, STOP in its corner, nothing over another, each key in reach. */
import type { Page } from "@playwright/test";
import { Altered } from "./altered.ts";
import { type CabState, STATES } from "./cab_states.ts";
import { expect, test } from "./crew.ts";

interface Size {
  width: number;
  height: number;
  /** Of a phone with so many CSS pixels across; of a tablet of ten inches. */
  mm: number;
  /** The least height of one drawn figure, mm. */
  floor: number;
  /** Everything that stands over the number is in view, three strips too. */
  whole: boolean;
}

const SIZES: readonly Size[] = [
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

interface Seen {
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
async function look(page: Page): Promise<Seen> {
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
function apart(a: Box, b: Box): number {
  const x = Math.max(a.left - b.right, b.left - a.right, 0);
  const y = Math.max(a.top - b.bottom, b.top - a.bottom, 0);
  return Math.hypot(x, y);
}

/** What is wrong with a state at a size, in words. */
function faults(state: CabState, seen: Seen, size: Size): string[] {
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

test("each state at each size", async ({ crew }) => {
  test.slow();
  const cab = await Altered.cab(crew, { width: 390, height: 844 });
  const wrong: string[] = [];
  const corners = new Map<number, string>();
  for (const size of SIZES) {
    await cab.page.setViewportSize(size);
    for (const [name, state] of Object.entries(STATES)) {
      await cab.show(state.view());
      const seen = await look(cab.page);
      wrong.push(...faults(state, seen, size).map((what) => `${name} ${size.width}×${size.height}: ${what}`));
      // The same corner and the same size in every state.
      const corner = JSON.stringify(seen.stop);
      const before = corners.get(size.width) ?? corner;
      corners.set(size.width, before);
      if (before !== corner) wrong.push(`${name} ${size.width}×${size.height}: STOP at ${corner}, elsewhere ${before}`);
    }
  }
  expect(wrong).toEqual([]);
});

test("UP is as large as DOWN, and what is said of it is smaller", async ({ crew }) => {
  const cab = await Altered.cab(crew, { width: 390, height: 844 });
  const cap = async (name: string, what: string) => {
    await cab.show(STATES[name]?.view() ?? {});
    return cab.page.locator(what).evaluate((one) => Number.parseFloat(getComputedStyle(one).fontSize));
  };
  for (const size of SIZES) {
    await cab.page.setViewportSize(size);
    const [down, up] = [await cap("hand-dig", ".number"), await cap("up-4", ".number")];
    expect(up, `${size.width}`).toBeGreaterThan(0.9 * down);
    expect(await cap("up-4", ".warn")).toBeLessThan((await cap("up-4", ".word")) / 1.2);
  }
});

test("the same in Spanish: nothing is cut, covered or out of reach", async ({ crew }) => {
  test.slow();
  const cab = await Altered.cab(crew, { width: 360, height: 740 });
  await cab.page.getByRole("button", { name: "SCREEN", exact: true }).click();
  await cab.page.getByRole("button", { name: "Español" }).click();
  await cab.page.getByRole("button", { name: "CERRAR" }).click();
  const wrong: string[] = [];
  for (const size of SIZES.filter((one) => one.width === 360 || one.height === 360)) {
    await cab.page.setViewportSize(size);
    for (const [name, state] of Object.entries(STATES)) {
      await cab.show(state.view());
      const seen = await look(cab.page);
      const { keys: _english, ...rest } = state;
      wrong.push(...faults(rest, seen, size).map((what) => `${name} ${size.width}: ${what}`));
    }
  }
  expect(wrong).toEqual([]);
});

test("upside down a section shows which side is up: the ground's last edge is solid, the sky's is not", async ({
  crew,
}) => {
  const cab = await Altered.cab(crew, { width: 390, height: 844 });
  for (const name of ["down-3", "up-4", "grade"]) {
    await cab.show(STATES[name]?.view() ?? {});
    const edges = await cab.page.locator(".section").evaluate((section) => {
      const [first, last] = [section.firstElementChild, section.lastElementChild];
      const ink = (one: Element | null) => (one ? getComputedStyle(one).backgroundColor : "");
      const gap = section.getBoundingClientRect().bottom - (last?.getBoundingClientRect().bottom ?? 0);
      return { sky: ink(first), ground: ink(last), gap };
    });
    expect(edges, name).toEqual({ sky: "rgba(0, 0, 0, 0)", ground: "rgb(0, 0, 0)", gap: 0 });
  }
});

test("text spacing, a text of twice the size, forced colours and no motion lose nothing", async ({ crew }) => {
  const cab = await Altered.cab(crew, { width: 390, height: 844 });
  const { page } = cab;
  const size = SIZES.find((one) => one.width === 390);
  if (!size) throw new Error("no such size");
  // WCAG 2.2, 1.4.12.
  await page.evaluate(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(
      "* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; } p { margin-bottom: 2em !important; }",
    );
    document.adoptedStyleSheets = [sheet];
  });
  for (const name of ["down-3", "down-3half", "up-4", "inches", "look-strip"]) {
    await cab.show(STATES[name]?.view() ?? {});
    const seen = await look(page);
    expect(seen.number?.whole, `${name} with spaced text`).toBe(true);
    expect([seen.stopCovered, seen.tickCovered, seen.over]).toEqual([false, false, 0]);
  }
  await page.evaluate(() => {
    document.adoptedStyleSheets = [];
  });
  // A page that is drawn twice as large has half the pixels (1.4.4); 320 px stand in the table above (1.4.10).
  await page.setViewportSize({ width: 195, height: 422 });
  for (const name of ["down-3", "up-4", "stop", "asks"]) {
    await cab.show(STATES[name]?.view() ?? {});
    const seen = await look(page);
    expect([seen.stopCovered, seen.tickCovered, seen.over], name).toEqual([false, false, 0]);
    if (seen.number) expect(seen.number.cap * 2 * size.mm, name).toBeGreaterThan(20);
    for (const key of STATES[name]?.keys ?? []) {
      const found = page.getByRole("button", { name: key }).first();
      await found.scrollIntoViewIfNeeded();
      await expect(found).toBeInViewport({ ratio: 0.9 });
    }
  }
  await page.setViewportSize(size);
  await page.emulateMedia({ forcedColors: "active" });
  await cab.show(STATES["up-4"]?.view() ?? {});
  const kept = await page.evaluate(() => {
    const of = (name: string) => {
      const one = document.querySelector(name);
      return one ? getComputedStyle(one) : null;
    };
    const paper = of("body")?.backgroundColor;
    return {
      stop: of(".key.stop")?.backgroundColor !== paper && of(".key.stop")?.clipPath !== "none",
      line: of(".target-line")?.backgroundColor !== paper,
      hatch: of(".soil .hatch")?.backgroundImage !== "none",
      tick: of(".tick i")?.backgroundColor !== paper,
    };
  });
  expect(kept).toEqual({ stop: true, line: true, hatch: true, tick: true });
  await page.emulateMedia({ forcedColors: "none", reducedMotion: "reduce" });
  await cab.show(STATES.stop?.view() ?? {});
  const moves = await page.evaluate(() => ({
    hatch: getComputedStyle(document.querySelector(".stop-screen") as Element, "::before").animationName,
    // What takes an old number away is no decoration: it runs.
    living: getComputedStyle(document.querySelector(".living") as Element).animationName.startsWith("gone-"),
  }));
  expect(moves).toEqual({ hatch: "none", living: true });
});

test("one place tells a reader each call, and the title says what stands without its number", async ({ crew }) => {
  const cab = await Altered.cab(crew, { width: 390, height: 844 });
  const heard = cab.page.locator(".cab > [role=status]");
  await cab.show(STATES["down-3"]?.view() ?? {});
  const place = await heard.elementHandle();
  await expect(heard).toContainText("DOWN 3");
  await expect(cab.page).toHaveTitle("CALL · EX-1 · OPERATOR · Rodcall");
  await cab.show(STATES["up-4"]?.view() ?? {});
  await expect(heard).toContainText("UP 4");
  expect(await heard.evaluate((now, before) => now === before, place)).toBe(true);
  await cab.show(STATES.stop?.view() ?? {});
  await expect(heard).toContainText("STOP");
  await expect(cab.page).toHaveTitle("STOP · EX-1 · OPERATOR · Rodcall");
});

test("all of CAN'T, and BUCKET DOWN before anybody gets out, is in reach without scrolling, in both holds", async ({
  crew,
}) => {
  const cab = await Altered.cab(crew, { width: 360, height: 740 });
  await cab.show(STATES["down-3"]?.view() ?? {});
  const dialog = cab.page.getByRole("dialog");
  for (const size of SIZES.filter((one) => one.width === 360 || one.height === 360)) {
    await cab.page.setViewportSize(size);
    await cab.page.getByRole("button", { name: "CAN'T", exact: true }).click();
    await expect(dialog.getByRole("button", { name: "PIPE", exact: true })).toBeVisible();
    const keys = await dialog.getByRole("button").all();
    expect(keys.length).toBeGreaterThan(12);
    for (const one of keys) await expect(one).toBeInViewport({ ratio: 1 });
    expect((await look(cab.page)).keys.filter((one) => one.cut).map((one) => one.name)).toEqual([]);
    const { keys: seen } = await look(cab.page);
    const stop = await dialog.locator(".key.stop").boundingBox();
    if (!stop) throw new Error("STOP stands nowhere");
    const box = { left: stop.x, top: stop.y, right: stop.x + stop.width, bottom: stop.y + stop.height };
    const inside = seen.filter((one) => !one.covered);
    for (const one of inside) expect(apart(one.box, box) * size.mm, one.name).toBeGreaterThan(5.9);
    await dialog.getByRole("button", { name: "CANCEL" }).click();
    await cab.page.getByRole("button", { name: "SCREEN", exact: true }).click();
    await expect(dialog.getByRole("button", { name: /^BUCKET DOWN/ })).toBeInViewport({ ratio: 1 });
    await cab.page.keyboard.press("Escape");
  }
});
