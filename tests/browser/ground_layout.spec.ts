/** The ground person's page, measured: each state at each size, keys that are reached without pushing, words that are whole. */
import type { Page } from "@playwright/test";
import { type Crew, expect, test } from "./crew.ts";
import { DOUBT, FULL_YARD, KEEP_OUT, PANELS, READING, type State } from "./ground_states.ts";

test.use({ more: FULL_YARD });

/** Phones upright, a small one or one with large letters, and two on their side. */
const SIZES = [
  { width: 320, height: 640 },
  { width: 360, height: 740 },
  { width: 390, height: 844 },
  { width: 740, height: 360 },
  { width: 844, height: 390 },
] as const;

/** What may be pushed along, and where: a list, a plan and long forms. Whatever sends them stays in sight. */
const PUSHED: readonly { state: RegExp; size: RegExp; keys: RegExp }[] = [
  { state: /^(marks|plan|work|start)$/, size: /./, keys: /^(?!READ|LASER|MARKS|STOP|CLOSE)/ },
  { state: /^tools$/, size: /./, keys: /TIES FIRST/ },
  { state: /^(more|sums|tools|with|laser|edge|face)$/, size: /^320/, keys: /^(?!SEND|CLOSE|CANCEL|STOP|WORK OUT)/ },
];

/** A key out of sight, or with something over it; words cut off, or over others. */
interface Faults {
  keys: string[];
  words: string[];
  over: string[];
}

/** Looks at the page as it stands: nothing is pushed. `all` is whether each key has to be in sight. */
async function faults(page: Page): Promise<Faults> {
  return page.evaluate(() => {
    const found = { keys: [] as string[], words: [] as string[], over: [] as string[] };
    const [wide, high] = [window.innerWidth, window.innerHeight];
    const panel = [...document.querySelectorAll(".panel")].at(-1);
    const root = panel ?? document.body;
    const seen = (el: Element) => {
      const box = el.getBoundingClientRect();
      return box.width > 2 && box.height > 2 && getComputedStyle(el).visibility !== "hidden";
    };
    const name = (el: Element) => (el.getAttribute("aria-label") ?? el.textContent ?? "").trim().slice(0, 40);
    for (const key of root.querySelectorAll("button, input:not([type=file]), label.photo")) {
      if (!seen(key)) continue;
      const box = key.getBoundingClientRect();
      const points = [
        [box.left + box.width / 2, box.top + box.height / 2],
        [box.left + box.width / 2, box.top + 4],
        [box.left + box.width / 2, box.bottom - 4],
        [box.left + 4, box.top + box.height / 2],
        [box.right - 4, box.top + box.height / 2],
      ];
      // STOP is eight-sided: its middle and the middles of its sides are pressed.
      const out = points.filter(([x = 0, y = 0]) => {
        if (x < 0 || y < 0 || x > wide || y > high) return true;
        const there = document.elementFromPoint(x, y);
        return !there || !(key.contains(there) || there.contains(key));
      });
      const hit = points.filter(([x = 0, y = 0]) => key.contains(document.elementFromPoint(x, y)));
      if (out.length > 0 || hit.length === 0) found.keys.push(name(key));
    }
    // Words: within every box that cuts, and none over another.
    const texts: { text: string; box: DOMRect; of: Element }[] = [];
    const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const of = node.parentElement;
      if (!node.textContent?.trim() || !of || of.closest(".unseen, [hidden], option, svg")) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const text = node.textContent.trim();
      for (const box of range.getClientRects()) {
        if (box.width < 1) continue;
        texts.push({ text, box, of });
        for (let at: Element | null = of; at && at !== document.documentElement; at = at.parentElement) {
          const style = getComputedStyle(at);
          const key = at.tagName === "BUTTON" || at.matches(".panel, .frame");
          if ((style.overflowX === "visible" && !key) || style.textOverflow === "ellipsis") continue;
          const room = at.getBoundingClientRect();
          if (box.left < room.left - 1 || box.right > room.right + 1) found.words.push(text);
          // A key's words stand within its height too.
          if (at.tagName === "BUTTON" && (box.top < room.top - 3 || box.bottom > room.bottom + 3)) found.words.push(text);
          if (style.position === "fixed") break;
        }
      }
    }
    for (const [i, one] of texts.entries()) {
      for (const other of texts.slice(i + 1)) {
        if (one.of.contains(other.of) || other.of.contains(one.of)) continue;
        const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        const down = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
        if (across > 2 && down > 5 && on(one) && on(other)) found.over.push(`${one.text} / ${other.text}`);
      }
    }
    /** Whether these words are what one sees there. */
    function on({ of, box }: { of: Element; box: DOMRect }): boolean {
      const there = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
      return !!there && (of.contains(there) || there.contains(of));
    }
    return { ...found, words: [...new Set(found.words)] };
  });
}

/** The width of a phone 6.0 in across, mm. */
const WIDE = 66.6;
/** Between STOP and any other key of the page, mm. */
const APART = 6;
/** The echo's two rows, px, where a phone is not the smallest. */
const ECHO = 28;

/** What a state must show beside its keys. */
async function missing(page: Page, state: string, size: string): Promise<string[]> {
  const upright = !/^(740|844)/.test(size);
  const mm = WIDE / Math.min(...size.split("×").map(Number));
  const seen = await page.evaluate(() => {
    const look = (selector: string) => {
      const found = [...document.querySelectorAll(selector)].at(-1);
      const box = found?.getBoundingClientRect();
      if (!found || !box || box.width === 0) return null;
      const there = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
      const inside = box.top >= 0 && box.bottom <= window.innerHeight && box.right <= window.innerWidth;
      return {
        inView: inside && !!there && (found.contains(there) || there.contains(found)),
        letters: Number.parseFloat(getComputedStyle(found).fontSize),
        text: found.textContent ?? "",
      };
    };
    const stop = document.querySelector("nav .stop")?.getBoundingClientRect();
    const near = [...document.querySelectorAll("main .key:not(.stop)")].flatMap((key) => {
      const box = key.getBoundingClientRect();
      if (!stop || document.querySelector(".panel") || box.width === 0 || box.bottom < 0) return [];
      const across = Math.max(stop.left - box.right, box.left - stop.right, 0);
      const down = Math.max(stop.top - box.bottom, box.top - stop.bottom, 0);
      return [{ name: key.textContent ?? "", apart: Math.hypot(across, down) }];
    });
    return {
      near,
      mark: look(".key.mark.here .mark-name"),
      must: look(".key.mark.here .rod-must strong"),
      figure: look(".read .window"),
      ground: look(".echo-ground"),
      call: look(".echo-call strong"),
      why: look(".echo-why"),
      hand: look(".hand-line"),
      send: look("main .key.send"),
      keep: look("main .key.keep"),
      tick: look(".tick"),
      loud: look(".loud-words"),
    };
  });
  // What is pushed along passes by it.
  const still = !PUSHED.some((one) => one.state.test(state) && one.size.test(size));
  const wrong = seen.near
    .filter((one) => still &&  one.apart * mm < APART)
    .map((one) => `${one.name} is ${(one.apart * mm).toFixed(1)} mm from STOP`);
  const must = (what: string, is: boolean | undefined) => is || wrong.push(what);
  must("no sign of life in sight", seen.tick?.inView);
  const pad = /^(empty|typed|in|outside|no-target|in-doubt|inches)/.test(state);
  if (pad) must("the mark is not in sight", seen.mark?.inView);
  if (pad && !/^(no-target|in-doubt)/.test(state)) must("what the rod must read is not in sight", seen.must?.inView);
  if (/^(typed|in-typed|in-stop|outside)/.test(state)) {
    must("the ground's row is not in sight", seen.ground?.inView);
    must("the call's row is not in sight", seen.call?.inView && /DOWN 3/.test(seen.call.text));
    const crowded = /stop/.test(state) || size.startsWith("320");
    must(`the call is set in ${seen.call?.letters} px`, (seen.call?.letters ?? 0) >= (crowded ? 22 : ECHO));
    if (upright && !crowded) must("HIGH is set too small", (seen.ground?.letters ?? 0) >= ECHO);
    must("the figure is not the largest", (seen.figure?.letters ?? 0) + 12 >= (seen.call?.letters ?? 99));
  }
  if (/^(no-target|in-doubt)$/.test(state)) {
    must("something looks like SEND", !seen.send);
    must("what becomes of it is not in sight", seen.keep?.inView && seen.why?.inView && /Kept as a spot/.test(seen.why.text));
  }
  if (state === "not-sent") {
    must("what to show by hand is not in sight", seen.hand?.inView && /P-1: show DOWN 3/.test(seen.hand.text));
  }
  if (state === "stay-out") must("STAY OUT is too small", (seen.loud?.letters ?? 0) * mm >= 15);
  return wrong;
}

/** Walks through the states one after the other, and looks at each at every size. */
async function walk(crew: Crew, states: State[], look: (page: Page, state: string, size: string) => Promise<void>) {
  const [, , usual] = SIZES;
  const yard = { crew, ...(await crew.digs({ viewport: usual })) };
  const { page } = yard.ground;
  for (const state of states) {
    await page.setViewportSize(usual);
    await state.reach(yard);
    if (!state.name) continue;
    for (const size of SIZES) {
      await page.setViewportSize(size);
      await look(page, state.name, `${size.width}×${size.height}`);
    }
  }
}

for (const [name, states] of Object.entries({ READING, DOUBT, KEEP_OUT, PANELS })) {
  test(`${name}: keys in sight, words whole, at every size`, async ({ crew }, info) => {
    // Many looks, one after the other, on a slow machine.
    test.setTimeout(900_000);
    const wrong: string[] = [];
    await walk(crew, states, async (page, state, size) => {
      const { keys, words, over } = await faults(page);
      const may = PUSHED.filter((one) => one.state.test(state) && one.size.test(size));
      for (const key of keys) {
        if (!may.some((one) => one.keys.test(key))) wrong.push(`${state} ${size}: out of reach: ${key}`);
      }
      for (const what of await missing(page, state, size)) wrong.push(`${state} ${size}: ${what}`);
      for (const text of words) wrong.push(`${state} ${size}: cut: ${text}`);
      for (const text of over) wrong.push(`${state} ${size}: over one another: ${text}`);
      if (wrong.some((line) => line.startsWith(`${state} ${size}:`))) {
        await page.screenshot({ path: info.outputPath(`${state}-${size}.png`) });
      }
    });
    expect(wrong).toEqual([]);
  });
}

/** What WCAG 2.2, 1.4.12, asks a page to bear. */
const SPACED =
  "* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; } p { margin-bottom: 2em !important; }";

test("letters twice as large, and spaced: what is pressed is reached, and no word is cut", async ({ crew }) => {
  test.setTimeout(900_000);
  const { page } = (await crew.digs()).ground;
  await page.getByRole("button", { name: "4", exact: true }).click();
  // 390 × 844 px at 200 %.
  await page.setViewportSize({ width: 195, height: 422 });
  for (const name of ["EDGE", "MORE", "9", "Erase", "BY EYE", "SEND", "LASER", "MARKS", "STOP: every machine"]) {
    const key = page.getByRole("button", { name, exact: true });
    await key.scrollIntoViewIfNeeded();
    await key.click({ trial: true });
  }
  expect((await faults(page)).words).toEqual([]);
  await page.setViewportSize({ width: 390, height: 844 });
  await page.evaluate((text) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(text);
    document.adoptedStyleSheets = [sheet];
  }, SPACED);
  expect((await faults(page)).words).toEqual([]);
  await page.getByRole("button", { name: "SEND", exact: true }).click({ trial: true });
});
