/** NOW on the desk: places that never jump, a plan whose names lie on nothing and lose no mark, and the card of what was pressed. */
import type { Page } from "@playwright/test";
import { expect, FOOT, sendsReading, test } from "./crew.ts";

/** Sixty marks more on the yard, ten to a row of 8 ft, five rows of which lie close; a gas main, an overhead line. Invented. */
const MANY = `
${Array.from(
  { length: 60 },
  (_, i) => `[[mark]]
id = "Q-${String(i + 1).padStart(2, "0")}"
target = "PAD"
at = ["${10 + (i % 10) * 8} ft", "${30 + Math.floor(i / 10) * (i < 30 ? 12 : 5)} ft"]
`,
).join("\n")}
[[utility]]
id = "MAIN"
kind = "gas"
points = [["31 ft", "0 ft"], ["31 ft", "110 ft"]]
outside = "2 in"

[[overhead]]
id = "LANE"
points = [["-10 ft", "115 ft"], ["100 ft", "115 ft"]]
height = "24 ft"
`;

test.use({ more: MANY });

const DESKS = [
  { width: 1366, height: 768 },
  { width: 1920, height: 1080 },
];
const LAPTOP = { viewport: { width: 1366, height: 768 }, hasTouch: false };
const MARKS = 65;

interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

const key = (page: Page, name: string | RegExp) => page.getByRole("button", { name, exact: true });
const overlap = (a: Box, b: Box) =>
  a.x < b.x + b.width - 0.5 && b.x < a.x + a.width - 0.5 && a.y < b.y + b.height - 0.5 && b.y < a.y + a.height - 0.5;

/** Where the places of NOW stand, by their names. */
async function places(page: Page): Promise<Record<string, Box>> {
  return page.evaluate(() =>
    Object.fromEntries(
      [...document.querySelectorAll(".now > section, .now-behind")].map((one) => {
        const { x, y, width, height } = one.getBoundingClientRect();
        return [one.getAttribute("aria-label") ?? one.className, { x, y, width, height }];
      }),
    ),
  );
}

/** Names and counts of the plan as they are painted. */
async function names(page: Page): Promise<{ text: string; box: Box }[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll(".plan-names text, .plan-count text")].map((one) => {
      const { x, y, width, height } = one.getBoundingClientRect();
      return { text: one.textContent ?? "", box: { x, y: y + 2, width, height: height - 4 } };
    }),
  );
}

/** How many marks have their name on the plan, are counted in a place, or at its foot. */
async function told(page: Page): Promise<number> {
  return page.evaluate(() => {
    const named = [...document.querySelectorAll("[data-name^='mark ']")].length;
    const counted = [...document.querySelectorAll(".plan-count")].map(
      (one) => (one.getAttribute("aria-label") ?? "").split(/: |\. /)[1]?.split(", ") ?? [],
    );
    const marks = counted.flat().filter((id) => /^([PQD]-|SPOT)/.test(id)).length;
    const foot = document.querySelector(".site-plan figcaption")?.textContent ?? "";
    const rest = Number(/(\d+) names? ha/.exec(foot)?.[1] ?? 0);
    const out = Number(/(\d+) marks? lies? out of sight/.exec(foot)?.[1] ?? 0);
    return named + marks + rest + out;
  });
}

test("NOW fits without scrolling, its places overlap nowhere and never jump, whatever happens in them", async ({ crew }) => {
  test.slow();
  const { page } = await crew.joins("SUPERVISOR", "PN", null, LAPTOP);
  const { ground, cab } = await crew.digs();
  await expect(page.locator(".plan-names text").first()).toBeVisible();
  const before: Record<number, Record<string, Box>> = {};
  for (const size of DESKS) {
    await page.setViewportSize(size);
    const here = await places(page);
    before[size.width] = here;
    const all = Object.entries(here);
    expect(all.map(([name]) => name).sort()).toEqual(
      ["In a keep-out", "Lasers", "Machines", "Needs somebody", "PLAN", "now-behind"].sort(),
    );
    for (const [i, [name, box]] of all.entries()) {
      expect(box.height, name).toBeGreaterThan(36);
      for (const [other, its] of all.slice(i + 1)) expect(overlap(box, its), `${name} on ${other}`).toBe(false);
    }
    const scrolls = await page.evaluate(() => {
      const body = document.querySelector(".body");
      return [body && body.scrollHeight - body.clientHeight, body && body.scrollWidth - body.clientWidth];
    });
    expect(scrolls, `${size.width}`).toEqual([0, 0]);
  }
  // A reading is called, somebody asks to come in, the cab's link goes, a check falls due: nothing moves.
  await sendsReading(ground.page, "4.70");
  await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 20 * FOOT, y: 30 * FOOT } });
  await key(ground.page, /^NEXT MARK/).click();
  await key(ground.page, "ASK EX-1 TO COME IN").click();
  await expect(page.getByRole("region", { name: "In a keep-out" })).toContainText("RT");
  cab.link.cut();
  await expect(page.getByRole("region", { name: "Machines" })).toContainText("link lost");
  await crew.hub.say({ kind: "say_bumped", set_up: "S1" });
  await expect(page.getByRole("region", { name: "Needs somebody" })).toContainText("SETUP-1 in doubt");
  await key(ground.page, "STOP: every machine").click();
  await expect(page.locator(".warnings .all-stop")).toContainText("RT pressed STOP");
  await expect(page.getByRole("region", { name: "In a keep-out" })).toContainText("EX-1 stopped by RT");
  for (const size of DESKS) {
    await page.setViewportSize(size);
    expect(await places(page), `${size.width}`).toEqual(before[size.width]);
  }
  // Who is in stands at the machine on the plan as well.
  await expect(page.locator(".plan-names [data-name='machine EX-1']")).toContainText("RT");
});

test("the names of 60 marks lie on no other name and on no sign, and each mark has its own or is counted, at every zoom", async ({
  crew,
}) => {
  test.slow();
  const { page } = await crew.joins("SUPERVISOR", "PN", null, LAPTOP);
  await expect(page.locator(".plan-names text").first()).toBeVisible();
  for (const size of DESKS) {
    await page.setViewportSize(size);
    await key(page, "ALL").click();
    for (const step of ["whole", "Closer", "Closer", "To the west", "Closer"]) {
      if (step !== "whole") await key(page, step).click();
      const all = await names(page);
      expect(all.length, step).toBeGreaterThan(4);
      const wrong: string[] = [];
      for (const [i, one] of all.entries()) {
        for (const other of all.slice(i + 1)) {
          if (overlap(one.box, other.box)) wrong.push(`${one.text} on ${other.text}`);
        }
      }
      expect(wrong, `${size.width} ${step}`).toEqual([]);
      expect(await told(page), `${size.width} ${step}`).toBeGreaterThanOrEqual(MARKS);
    }
  }
});

test("a mark, a machine, a line are pressed and their cards open beside the plan", async ({
  crew,
}) => {
  const { page } = await crew.joins("SUPERVISOR", "PN", null, LAPTOP);
  const { ground } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(page.getByRole("region", { name: "Machines" })).toContainText("DOWN 3");
  const before = await places(page);
  await page.locator(".plan-thing[aria-label='P-1 HIGH']").click();
  const card = page.getByRole("complementary", { name: "mark P-1" });
  await expect(card).toContainText("HIGH +0.30 ft");
  // 100.50 less half a foot of gravel (derived by hand).
  await expect(card.getByRole("region", { name: "Target" })).toContainText("100.50");
  await expect(card.getByRole("region", { name: "Target" })).toContainText("gravel 0.50 ft");
  await expect(card.getByRole("region", { name: "Target" })).toContainText("100.00");
  await expect(card).toContainText("Reading 4.70 at P-1");
  await expect(card).toContainText("EX-1 ← DOWN 3");
  // The places round the plan stand where they stood.
  const open = await places(page);
  for (const name of ["In a keep-out", "Machines", "Needs somebody", "Lasers"]) expect(open[name]).toEqual(before[name]);
  // A second reading of the mark comes onto its card by itself.
  await key(ground.page, "READ AGAIN").click();
  await sendsReading(ground.page, "5.02");
  await expect(card).toContainText("ON −0.02 ft");
  await expect(card).toContainText("Reading 5.02 at P-1");
  // The target's name leads on, and its marks back.
  await card.getByRole("button", { name: "PAD" }).click();
  const target = page.getByRole("complementary", { name: "target PAD" });
  await target.getByRole("button", { name: /^P-3/ }).click();
  await expect(page.getByRole("complementary", { name: "mark P-3" })).toContainText("no reading yet");
  // A machine of which nobody has said where it stands is reached by its name.
  await page.getByRole("region", { name: "Machines" }).getByRole("button", { name: "EX-2" }).click();
  await expect(page.getByRole("complementary", { name: "machine EX-2" })).toContainText(
    "Nobody has said where it stands.",
  );
  await page.locator(".plan-thing[aria-label='EX-1']").focus();
  await page.keyboard.press("Enter");
  await expect(page.getByRole("complementary", { name: "machine EX-1" })).toContainText("where truck said at");
  await page.locator(".plan-thing[aria-label='buried line MAIN']").focus();
  await page.keyboard.press("Enter");
  await expect(page.getByRole("complementary", { name: "buried line MAIN" })).toContainText("GAS");
  await page.locator(".plan-thing[aria-label='line CREEK']").focus();
  await page.keyboard.press("Enter");
  await expect(page.getByRole("complementary", { name: "line CREEK" })).toContainText("nobody digs beyond it");
});

test("by keyboard the plan is one stop: arrows go from thing to thing, Enter opens a card, Escape gives the focus back", async ({
  crew,
}) => {
  const { page } = await crew.joins("SUPERVISOR", "PN", null, LAPTOP);
  await expect(page.locator(".plan-thing").first()).toBeAttached();
  const stops = await page.locator(".plan-thing[tabindex='0']").count();
  expect(stops).toBe(1);
  await page.locator(".plan-thing[tabindex='0']").focus();
  await page.keyboard.press("ArrowRight");
  const here = await page.evaluate(() => document.activeElement?.getAttribute("aria-label") ?? "");
  await page.keyboard.press("Enter");
  const card = page.getByRole("complementary");
  await expect(card).toHaveAccessibleName(new RegExp(here.split(" ").at(-1) ?? ""));
  await card.getByRole("button", { name: /^CLOSE/ }).focus();
  await page.keyboard.press("Escape");
  await expect(card).toHaveCount(0);
  expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toBe(here);
});

test("a STOP stands first with its LIFT, what has no key of its own is shown where it is, and phones are behind one key", async ({
  crew,
}) => {
  const { page } = await crew.joins("SUPERVISOR", "PN", null, LAPTOP);
  const { cab } = await crew.digs();
  await key(cab.page, "STOP: every machine").click();
  const first = page.getByRole("region", { name: "In a keep-out" });
  await expect(first.getByRole("button", { name: "LIFT STOP EX-1" })).toBeVisible();
  await expect(page.getByRole("region", { name: "Needs somebody" })).not.toContainText("stopped by");
  await first.getByRole("button", { name: "LIFT STOP EX-1" }).click();
  const panel = page.getByRole("dialog", { name: /LIFT STOP/ });
  await panel.getByLabel("What did you see before lifting it?").fill("walked round it");
  // Somebody else lifts it meanwhile: what was typed stays until this hand closes it.
  await crew.hub.say({ kind: "lift_stop", press: Number.MAX_SAFE_INTEGER, why: "all at the truck" });
  await expect(first.getByText("No STOP stands.")).toBeAttached();
  await expect(panel.getByLabel("What did you see before lifting it?")).toHaveValue("walked round it");
  await page.keyboard.press("Escape");
  await key(cab.page, "CAN'T").click();
  await cab.page.getByRole("dialog").getByRole("button").first().click();
  const needs = page.getByRole("region", { name: "Needs somebody" });
  await expect(needs).toContainText("EX-1 can't");
  await key(page, "SHOW EX-1").click();
  await expect(page.getByRole("complementary", { name: "machine EX-1" })).toBeVisible();
  await key(page, /^PHONES \d/).click();
  const phones = page.getByRole("dialog", { name: "Phones joined" });
  await expect(phones).toContainText("OW OPERATOR");
  // A panel from a panel: Escape closes the inner one alone.
  await phones.getByRole("button", { name: "PHONE OW" }).click();
  await page.keyboard.press("Escape");
  await expect(phones).toBeVisible();
});
