/** Every page at every size: nothing runs off the edge, keys are large enough, and axe finds nothing grave. */
import type { Page } from "@playwright/test";
import { axeFaults } from "./axe.ts";
import { call, type Crew, expect, FOOT, type Phone, sendsReading, test, typeRod } from "./crew.ts";

/** Phones, a tablet, the laptop. */
const SIZES = [
  { width: 360, height: 740 },
  { width: 390, height: 844 },
  { width: 820, height: 1180 },
  { width: 1366, height: 850 },
];

/** How far the page runs past its edge, in px. */
async function overflow(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
}

/** Words that are cut off at a side or run over the edge of their key: a number without its last figure is another number. */
async function cut(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      if (!node.textContent?.trim()) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const text = range.getBoundingClientRect();
      for (let at = node.parentElement; at; at = at.parentElement) {
        // A list's words are drawn by the browser in a window of their own; the chosen one is measured below.
        if (at.tagName === "OPTION") break;
        const style = getComputedStyle(at);
        // What is fixed to the screen is not cut by what it stands in.
        if (style.position === "fixed") break;
        // A row of keys is pushed along.
        if (at.matches(".tabs")) break;
        // The first to give way to the number, and then out of sight whole.
        if (at.matches(".exact")) break;
        // Words that run over the edge of their own key run into the next one.
        const key = at.tagName === "BUTTON";
        if ((style.overflowX === "visible" && !key) || style.textOverflow === "ellipsis") continue;
        const room = at.getBoundingClientRect();
        // What is for screen readers alone has no room at all.
        if (room.width < 2) break;
        if (text.left < room.left - 1 || text.right > room.right + 1) found.push(node.textContent);
      }
    }
    const pen = document.createElement("canvas").getContext("2d");
    for (const list of document.querySelectorAll("select")) {
      const style = getComputedStyle(list);
      const chosen = list.selectedOptions[0]?.text ?? "";
      if (!pen || list.clientWidth === 0) continue;
      pen.font = `${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
      const arrow = 20;
      const room = list.clientWidth - Number.parseFloat(style.paddingLeft) - Number.parseFloat(style.paddingRight) - arrow;
      if (pen.measureText(chosen).width > room + 1) found.push(chosen);
    }
    return found;
  });
}

/** Looks at a page in this state, at every size and in both lights. */
async function passes(page: Page, state: string): Promise<void> {
  const before = page.viewportSize();
  for (const size of SIZES) {
    await page.setViewportSize(size);
    expect(await overflow(page), `${state} at ${size.width} px`).toBeLessThanOrEqual(0);
    expect(await cut(page), `cut off in ${state} at ${size.width} px`).toEqual([]);
  }
  if (before) await page.setViewportSize(before);
  for (const light of ["sun", "dusk"]) {
    await page.evaluate((to) => {
      document.documentElement.dataset.theme = to;
    }, light);
    expect(await axeFaults(page, true), `${state}, ${light}`).toEqual([]);
  }
}

async function press(page: Page, ...names: (string | RegExp)[]): Promise<void> {
  for (const name of names) await page.getByRole("button", { name, exact: true }).click();
}

test("the form to come in", async ({ crew }) => {
  const { page } = await crew.scans("GROUND");
  await expect(page.getByRole("button", { name: "IN", exact: true })).toBeVisible();
  await passes(page, "join");
});

test("the ground person's pages", async ({ crew }) => {
  const { ground } = await crew.digs();
  await passes(ground.page, "READ");
  await typeRod(ground.page, "4.70");
  await passes(ground.page, "READ, typed");
  await press(ground.page, "BY EYE");
  await passes(ground.page, "BY EYE");
  await press(ground.page, "CANCEL", "LASER");
  await expect(ground.page.getByRole("button", { name: "CHECK SHOT" })).toBeVisible();
  await passes(ground.page, "LASER");
  await press(ground.page, "SET UP A LASER");
  await passes(ground.page, "setting up");
  await press(ground.page, "CANCEL", "MARKS");
  await passes(ground.page, "MARKS");
  await press(ground.page, "READ");
  await sendsReading(ground.page, "4.70");
  await expect(ground.page.getByText("ON THE CAB'S SCREEN", { exact: true })).toBeVisible();
  await passes(ground.page, "on the screen");
  await press(ground.page, "READ AGAIN");
  await sendsReading(ground.page, "3.70");
  await expect(ground.page.getByRole("alertdialog")).toBeVisible();
  await passes(ground.page, "asked");
});

test("the ground person's pages in Spanish, with a mark to tie first", async ({ crew }) => {
  const { page } = (await crew.digs()).ground;
  await press(page, "SCREEN", "Español", "CERRAR");
  await passes(page, "LEER");
  await press(page, "LÁSER");
  await passes(page, "LÁSER");
  await press(page, "MARCAS");
  await passes(page, "MARCAS");
  await press(page, /^PINTURA · AMARRES/);
  await expect(page.getByRole("dialog").getByRole("button", { name: /AMARRE ANTES/ })).toHaveCount(4);
  await passes(page, "what is done at marks");
  await press(page, /^EX-1 toma P-1/);
  await passes(page, "AMARRES");
  await press(page, "CANCELAR", /^PINTURA · AMARRES/, "PINTURA");
  await passes(page, "PINTURA");
});

test("the ground person's page inside a keep-out, asking and shooting from outside", async ({ crew }) => {
  const { page } = (await crew.digs()).ground;
  await crew.hub.say({ kind: "say_moved", machine: "EX-1" });
  await expect(page.getByRole("button", { name: "ASK EX-1 TO COME IN" })).toBeVisible();
  await passes(page, "ASK");
  await press(page, "SCREEN", "Español", "CERRAR");
  await passes(page, "PEDIR");
  await press(page, /^NO ENTRO/);
  await expect(page.getByRole("button", { name: "1", exact: true })).toBeVisible();
  await passes(page, "LEER desde afuera");
});

/** Brings the cab from one state to the next and gives each a look. */
async function cabStates(crew: Crew, { ground, cab }: { ground: Phone; cab: Phone }): Promise<void> {
  const main = cab.page.getByRole("main");
  await passes(cab.page, "NO CALL");
  for (const [reading, line] of [
    ["4.70", "DOWN 3"],
    ["5.40", "UP 4"],
    ["5.02", "GRADE"],
  ] as const) {
    await sendsReading(ground.page, reading);
    await expect(call(cab.page, line)).toBeVisible();
    await passes(cab.page, line);
    await ground.page.getByRole("button", { name: /^NEXT MARK/ }).click();
  }
  await press(cab.page, "CAN'T");
  await passes(cab.page, "CAN'T");
  await press(cab.page, "CANCEL");
  await crew.hub.say({ kind: "say_bumped", set_up: "S1" });
  await expect(main).toContainText("PAUSE");
  await passes(cab.page, "PAUSE");
  await crew.hub.say({ kind: "stop_all", why: "somebody in the cut" });
  await expect(cab.page.getByRole("alert")).toContainText("STOP");
  await passes(cab.page, "STOP");
  cab.link.cut();
  await expect(cab.page.getByRole("alert")).toBeHidden();
  await passes(cab.page, "NO LINK");
}

test("the cab's page", async ({ crew }) => {
  await cabStates(crew, await crew.digs());
});

test("the cab's page beside another machine", async ({ crew }) => {
  const { cab } = await crew.digs();
  const other = await crew.joins("OPERATOR", "LG", "EX-2");
  await crew.hub.say({ kind: "place_machine", machine: "EX-2", at: { x: 310 * FOOT, y: 300 * FOOT } });
  await expect(cab.page.getByText("EX-2 10 FT AWAY – BOOMS CAN MEET", { exact: false })).toBeVisible();
  await passes(cab.page, "booms that can meet");
  await crew.hub.say({
    kind: "agree_slew",
    sides: [
      { machine: "EX-1", keeps_out_of: "east" },
      { machine: "EX-2", keeps_out_of: "west" },
    ],
  });
  await expect(cab.page.getByText("KEEP OUT OF THE EAST – EX-2")).toBeVisible();
  await passes(cab.page, "a slew to agree");
  await press(cab.page, "AGREED");
  await press(other.page, "AGREED");
  await expect(cab.page.getByText("AGREED WITH EX-2 – KEEP OUT OF THE EAST")).toBeVisible();
  await passes(cab.page, "a slew that is agreed");
  await press(cab.page, "SCREEN", "Español", "CERRAR");
  await passes(cab.page, "a slew that is agreed, in Spanish");
});

test("no unit and no language cuts a figure off the cab's screen", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  const shows = async (unit: string, language: string) => {
    await cab.page.getByRole("button", { name: /^(SCREEN|PANTALLA)$/ }).click();
    await press(cab.page, language, unit);
    await press(cab.page, /^(CLOSE|CERRAR)$/);
  };
  // Two figures and a fraction, a whole and a fraction, a point: the widest that each unit runs.
  for (const reading of ["3.60", "4.09", "4.70", "4.86"]) {
    await sendsReading(ground.page, reading);
    await expect(ground.page.getByText("ON THE CAB'S SCREEN", { exact: true })).toBeVisible();
    for (const [language, units] of [
      ["Español", ["Pies y pulgadas", "Milímetros", "Décimas de pie"]],
      ["English", ["Feet and inches", "Millimetres", "Tenths of a foot"]],
    ] as const) {
      for (const unit of units) {
        await shows(unit, language);
        for (const size of SIZES) {
          await cab.page.setViewportSize(size);
          expect(await cut(cab.page), `${reading}, ${unit}, ${size.width} px`).toEqual([]);
        }
      }
    }
    await press(ground.page, "READ AGAIN");
  }
});

test("the supervisor's pages", async ({ crew }) => {
  const { page } = await crew.joins("SUPERVISOR", "PN");
  const { ground } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await crew.hub.say({ kind: "stop_all", why: "somebody in the cut" });
  await expect(page.getByRole("button", { name: "LIFT STOP EX-1" })).toBeVisible();
  await passes(page, "NOW");
  await press(page, "LIFT STOP EX-1");
  await passes(page, "LIFT STOP");
  await press(page, "CANCEL", "LOG");
  await expect(page.getByText(/DOWN 3/).first()).toBeVisible();
  await passes(page, "LOG");
  await press(page, "CODES");
  await expect(page.getByRole("img", { name: /GROUND/ }).first()).toBeVisible();
  await passes(page, "CODES");
  await press(page, "TARGETS");
  await passes(page, "TARGETS");
  await press(page, "SCREEN", "Español", "CERRAR", "RASANTES");
  await passes(page, "TARGETS in Spanish");
});

test("keys for wet gloves are large and apart", async ({ crew }) => {
  const { ground, cab } = await crew.digs({ viewport: { width: 360, height: 740 } });
  // screens: at 360 px wide, keypad keys at least 104×72 px, bottom keys 78×80.
  for (const digit of ["1", "5", "9", "0"]) {
    const box = await ground.page.getByRole("button", { name: digit, exact: true }).boundingBox();
    expect(box?.width, `key ${digit}`).toBeGreaterThanOrEqual(104);
    expect(box?.height, `key ${digit}`).toBeGreaterThanOrEqual(72);
  }
  for (const [page, name, wide] of [
    // The nothing round STOP comes first: at 360 px it takes a tenth from each tab beside it.
    [ground.page, "READ", 68],
    [ground.page, "LASER", 68],
    [ground.page, "STOP: every machine", 84],
    [cab.page, "CAN'T", 78],
    [cab.page, "STOP: every machine", 84],
  ] as const) {
    const box = await page.getByRole("button", { name, exact: true }).boundingBox();
    expect(box?.width, name).toBeGreaterThanOrEqual(wide);
    expect(box?.height, name).toBeGreaterThanOrEqual(80);
  }
  // All of READ lies within the screen: nothing is hunted for with a glove.
  const send = await ground.page.getByRole("button", { name: "SEND", exact: true }).boundingBox();
  const stop = await ground.page.getByRole("button", { name: "STOP: every machine" }).boundingBox();
  expect((send?.y ?? 0) + (send?.height ?? 0)).toBeLessThanOrEqual(stop?.y ?? 0);
  expect((stop?.y ?? 0) + (stop?.height ?? 0)).toBeLessThanOrEqual(740);
});
