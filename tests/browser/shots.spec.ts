/** Takes the pictures: each state at each size, in both lights and languages, and those of the README. */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { BrowserContextOptions, Page } from "@playwright/test";
import { Altered } from "./altered.ts";
import { STATES } from "./cab_states.ts";
import { call, comeIn, expect, FOOT, sendsReading, test, typeRod } from "./crew.ts";

const SHOTS = join(import.meta.dirname, "shots");
const PICTURES = join(import.meta.dirname, "../../fixtures/pictures");

const SIZES = [
  { width: 360, height: 740 },
  { width: 390, height: 844 },
  { width: 820, height: 1180 },
  { width: 1366, height: 850 },
];

/** Saves what the page shows now, at each size and in both lights. */
async function shoot(page: Page, name: string): Promise<void> {
  mkdirSync(SHOTS, { recursive: true });
  const before = page.viewportSize();
  for (const light of ["sun", "dusk"]) {
    await page.evaluate((to) => {
      document.documentElement.dataset.theme = to;
    }, light);
    for (const size of SIZES) {
      await page.setViewportSize(size);
      await page.screenshot({ path: join(SHOTS, `${name}-${light}-${size.width}.png`) });
    }
  }
  await page.evaluate(() => {
    document.documentElement.dataset.theme = "sun";
  });
  if (before) await page.setViewportSize(before);
}

async function press(page: Page, ...names: (string | RegExp)[]): Promise<void> {
  for (const name of names) await page.getByRole("button", { name, exact: true }).click();
}

async function spanish(page: Page): Promise<void> {
  await press(page, "SCREEN");
  await page.getByRole("button", { name: "Español" }).click();
  await page.getByRole("button", { name: "CERRAR" }).click();
}

test("join", async ({ crew }) => {
  const { page } = await crew.scans("GROUND");
  await page.getByLabel("Name or initials").fill("RT");
  await shoot(page, "join-en");
  await page.getByRole("button", { name: "Español" }).click();
  await shoot(page, "join-es");
});

test("ground", async ({ crew }) => {
  const { ground } = await crew.digs();
  const page = ground.page;
  await shoot(page, "ground-read-empty");
  await typeRod(page, "4.70");
  await shoot(page, "ground-read-typed");
  await press(page, "BY EYE");
  await shoot(page, "ground-by-eye");
  await press(page, "CANCEL", "LASER");
  await shoot(page, "ground-laser");
  await press(page, "SET UP A LASER", /^BM-1/, "SKIP");
  await shoot(page, "ground-set-up");
  await press(page, "CANCEL", "MARKS");
  await shoot(page, "ground-marks");
  await press(page, "READ");
  await page.getByRole("button", { name: /^EX-1/ }).click();
  await shoot(page, "ground-with-what");
  await press(page, "CLOSE");
  await sendsReading(page, "4.70");
  await expect(page.getByText("ON THE CAB'S SCREEN", { exact: true })).toBeVisible();
  await shoot(page, "ground-sent");
  await press(page, "READ AGAIN");
  await sendsReading(page, "3.70");
  await expect(page.getByRole("alertdialog")).toBeVisible();
  await shoot(page, "ground-asked");
  await press(page, "READ IT AGAIN");
  ground.link.cut();
  await sendsReading(page, "4.70");
  await expect(page.getByText("1 NOT SENT – USE HANDS")).toBeVisible();
  await shoot(page, "ground-not-sent");
  ground.link.mend();
  await page.locator(".held-words").getByRole("button", { name: "SEND", exact: true }).click();
  await expect(page.getByText("1 NOT SENT – USE HANDS")).toBeHidden();
  await crew.hub.say({ kind: "say_moved", machine: "EX-1" });
  await press(page, /^NEXT MARK/);
  await expect(page.getByRole("button", { name: "ASK EX-1 TO COME IN" })).toBeVisible();
  await shoot(page, "ground-keep-out");
  await press(page, /^NOT ENTERING/);
  await typeRod(page, "4.80");
  await shoot(page, "ground-outside");
  await spanish(page);
  await shoot(page, "ground-es");
});

test("cab in English", async ({ crew }) => {
  const { cab, ground } = await crew.digs();
  await shoot(cab.page, "cab-en-no-call");
  for (const [reading, name, line] of [
    ["4.70", "down-3", "DOWN 3"],
    ["5.40", "up-4", "UP 4"],
    ["5.02", "grade", "GRADE"],
  ] as const) {
    await sendsReading(ground.page, reading);
    await expect(call(cab.page, line)).toBeVisible();
    await shoot(cab.page, `cab-en-${name}`);
    await press(ground.page, /^NEXT MARK/);
  }
  await press(ground.page, "MARKS", /^P-1/);
  await sendsReading(ground.page, "4.86");
  await expect(call(cab.page, "SHAVE.*")).toBeVisible();
  await shoot(cab.page, "cab-en-shave");
  await press(ground.page, "READ AGAIN");
  await crew.hub.say({ kind: "say_moved", machine: "EX-1" });
  await press(ground.page, /^NOT ENTERING/);
  await sendsReading(ground.page, "4.95");
  await expect(cab.page.getByRole("note").first()).toContainText("LOOK");
  await shoot(cab.page, "cab-en-look-beside");
  await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 20 * FOOT, y: 30 * FOOT } });
  await press(ground.page, "READ AGAIN", /^NOT ENTERING/);
  await sendsReading(ground.page, "4.97");
  await expect(cab.page.getByRole("alert")).toBeVisible();
  await shoot(cab.page, "cab-en-look");
  await expect(cab.page.getByRole("alert")).toHaveCount(0);
  await shoot(cab.page, "cab-en-strip");
  await press(cab.page, "CAN'T");
  await shoot(cab.page, "cab-en-cant");
  await press(cab.page, "CANCEL");
  await crew.hub.say({ kind: "say_bumped", set_up: "S1" });
  await expect(cab.page.locator(".plate-title", { hasText: "PAUSE" })).toBeVisible();
  await shoot(cab.page, "cab-en-pause");
  await crew.hub.say({ kind: "stop_all", why: "somebody in the cut" });
  await expect(cab.page.getByRole("alert")).toBeVisible();
  await shoot(cab.page, "cab-en-stop");
  cab.link.cut();
  await expect(cab.page.getByRole("alert")).toBeHidden();
  await shoot(cab.page, "cab-en-no-link");
});

/** The table of states that the layout is measured in, upright and on its side. */
test("cab, each state in each hold", async ({ crew }) => {
  mkdirSync(SHOTS, { recursive: true });
  const holds = [
    { width: 360, height: 740 },
    { width: 740, height: 360 },
    { width: 1180, height: 820 },
  ];
  const cab = await Altered.cab(crew, { width: 360, height: 740 });
  for (const size of holds) {
    await cab.page.setViewportSize(size);
    for (const [name, state] of Object.entries(STATES)) {
      await cab.show(state.view());
      await cab.page.screenshot({ path: join(SHOTS, `state-${name}-${size.width}.png`) });
    }
  }
});

test("cab in Spanish, in inches", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await spanish(cab.page);
  await press(cab.page, "PANTALLA", "Pies y pulgadas", "CERRAR");
  for (const [reading, name] of [
    ["4.70", "down"],
    ["5.40", "up"],
    ["5.02", "grade"],
  ] as const) {
    await sendsReading(ground.page, reading);
    await expect(cab.page.locator("[data-number]")).toBeVisible();
    await shoot(cab.page, `cab-es-${name}`);
    await press(ground.page, /^NEXT MARK/);
  }
  await crew.hub.say({ kind: "stop_all", why: "" });
  await expect(cab.page.getByRole("alert")).toBeVisible();
  await shoot(cab.page, "cab-es-stop");
});

/** What lies over a number and over a panel, in both languages. */
for (const tongue of ["en", "es"] as const) {
  test(`what must be seen, ${tongue}`, async ({ crew }) => {
    const { ground, cab } = await crew.digs();
    const board = await crew.joins("SUPERVISOR", "PN");
    const words =
      tongue === "en"
        ? { screen: "SCREEN", cant: "CAN'T", plan: "PLAN" }
        : { screen: "PANTALLA", cant: "NO PUEDO", plan: "PLANO" };
    if (tongue === "es") await spanish(cab.page);
    await crew.hub.say({ kind: "say_moved", machine: "EX-1" });
    await press(ground.page, /^NOT ENTERING/);
    await sendsReading(ground.page, "4.70");
    await expect(cab.page.locator(".strip.beside")).toBeVisible();
    await shoot(cab.page, `seen-${tongue}-look-beside`);
    await press(cab.page, words.cant);
    await shoot(cab.page, `seen-${tongue}-cant`);
    await press(ground.page, "STOP: every machine");
    await expect(cab.page.getByRole("dialog")).toHaveCount(0);
    await shoot(cab.page, `seen-${tongue}-stop`);
    await press(cab.page, words.screen);
    await shoot(cab.page, `seen-${tongue}-screen-under-stop`);
    await press(ground.page, /^EX-1/);
    await shoot(ground.page, `seen-${tongue}-ground-panel-under-stop`);
    await press(ground.page, "CLOSE");
    await crew.hub.say({ kind: "lift_stop", press: Number.MAX_SAFE_INTEGER, why: "looked round, nobody in the swing" });
    await expect(cab.page.getByRole("dialog")).toBeVisible();
    await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 20 * FOOT, y: 30 * FOOT } });
    await press(ground.page, "READ AGAIN", "ASK EX-1 TO COME IN");
    await expect(cab.page.getByRole("dialog")).toHaveCount(0);
    await shoot(cab.page, `seen-${tongue}-ask`);
    await press(board.page, "TARGETS");
    await shoot(board.page, `seen-${tongue}-board`);
  });
}

test("supervisor", async ({ crew }) => {
  const { page } = await crew.joins("SUPERVISOR", "PN");
  const { ground, cab } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await shoot(page, "board-now");
  await press(page, "LOG");
  await expect(page.getByText(/DOWN 3/).first()).toBeVisible();
  await shoot(page, "board-log");
  await press(page, "CODES");
  await expect(page.getByRole("img", { name: /GROUND/ }).first()).toBeVisible();
  await shoot(page, "board-codes");
  await press(page, "TARGETS");
  await shoot(page, "board-targets");
  await press(page, "REVISE PAD");
  await expect(page.getByLabel("Short name")).toHaveValue("PAD");
  await shoot(page, "board-revise");
  await press(page, "BACK", "NOW");
  await crew.hub.say({ kind: "stop_all", why: "somebody in the cut" });
  await expect(page.getByRole("button", { name: "LIFT STOP EX-1" })).toBeVisible();
  await shoot(page, "board-stopped");
});

/** Pictures for the README: a phone twice as fine, a laptop as it is. */
test("pictures", async ({ crew }) => {
  const fine: BrowserContextOptions = { deviceScaleFactor: 1.5 };
  const picture = (page: Page, name: string) => page.screenshot({ path: join(PICTURES, `${name}.png`) });
  const form = await crew.scans("GROUND", null, fine);
  await form.page.getByLabel("Name or initials").fill("RT");
  await picture(form.page, "join");
  await comeIn(form.page, "GROUND", "JM");
  const board = await crew.joins("SUPERVISOR", "PN", null, { viewport: { width: 1366, height: 850 } });
  const { ground, cab } = await crew.digs(fine);
  await typeRod(ground.page, "4.70");
  await picture(ground.page, "ground");
  await press(ground.page, "SEND");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await picture(cab.page, "operator-down");
  await press(ground.page, /^NEXT MARK/);
  await sendsReading(ground.page, "5.02");
  await expect(call(cab.page, "GRADE")).toBeVisible();
  await picture(cab.page, "operator-grade");
  await expect(board.page.getByText("ON THE CAB'S SCREEN").first()).toBeVisible();
  await picture(board.page, "supervisor");
  await press(ground.page, "STOP: every machine");
  await expect(cab.page.getByRole("alert")).toContainText("STOP");
  await picture(cab.page, "operator-stop");
});
