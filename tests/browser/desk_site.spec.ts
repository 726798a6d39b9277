/** SITE on the desk: list, plan and form side by side; a place is drawn and dragged, undone, and in force only with its reason. */
import type { Page } from "@playwright/test";
import { expect, test } from "./crew.ts";

const LAPTOP = { viewport: { width: 1366, height: 768 }, hasTouch: false };
const DESKS = [
  { width: 1366, height: 768 },
  { width: 1920, height: 1080 },
];

const key = (page: Page, name: string | RegExp) => page.getByRole("button", { name, exact: true });

async function middle(page: Page, of: string): Promise<{ x: number; y: number }> {
  const box = await page.locator(of).boundingBox();
  if (!box) throw new Error(`${of} stands nowhere`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Feet that a field holds: 36.25 of "36.25 ft". */
async function feetIn(page: Page, label: string, nth = 0): Promise<number> {
  const text = await page.getByLabel(label, { exact: true }).nth(nth).inputValue();
  expect(text).toMatch(/^-?\d+\.\d\d ft$/);
  return Number(text.split(" ")[0]);
}

test("list, plan and form stand side by side and fit, and a row says its units in words", async ({ crew }) => {
  const { page } = await crew.joins("SUPERVISOR", "PN", null, LAPTOP);
  await key(page, "SITE").click();
  await key(page, /^CHANGE CREEK/).click();
  await expect(page.locator(".handle")).toHaveCount(2);
  for (const size of DESKS) {
    await page.setViewportSize(size);
    const boxes = await Promise.all(
      [".site-list", ".site-middle", ".site-form", ".frame > nav"].map((of) => page.locator(of).boundingBox()),
    );
    boxes.slice(1).forEach((box, i) => {
      const before = boxes[i];
      expect(before && box && box.x >= before.x + before.width - 1, `${size.width} ${i}`).toBe(true);
      expect(box && before && box.width > 100 && box.height > 400, `${size.width} ${i}`).toBe(true);
    });
    const scrolls = await page.evaluate(() => {
      const body = document.querySelector(".body");
      return body && [body.scrollHeight - body.clientHeight, document.documentElement.scrollWidth - innerWidth];
    });
    expect(scrolls).toEqual([0, 0]);
  }
  const rods = page.getByRole("region", { name: "Rods" });
  await expect(rods).toContainText("feet and hundredths");
  await expect(page.locator(".site-list")).not.toContainText("feet_hundredths");
  // Rows are 28 to 32 px, controls 36 to 40.
  const row = await key(page, /^CHANGE CREEK/).boundingBox();
  expect(row?.height).toBeGreaterThanOrEqual(28);
  expect(row?.height).toBeLessThanOrEqual(32);
  const field = await page.getByLabel("Name", { exact: true }).boundingBox();
  expect(field?.height).toBeGreaterThanOrEqual(36);
  expect(field?.height).toBeLessThanOrEqual(40);
});

test("a mark is placed by a press on the plan, dragged, moved by an arrow, undone, and in force with its reason alone", async ({
  crew,
}) => {
  const { page } = await crew.joins("SUPERVISOR", "PN", null, LAPTOP);
  await key(page, "SITE").click();
  await key(page, "ADD Marks").click();
  await page.getByLabel("Name", { exact: true }).fill("Z-1");
  await page.getByLabel("Target (optional)", { exact: true }).selectOption("PAD");
  await key(page, "PLACE IT ON THE PLAN").click();
  // Beside P-3, which lies at 50, 20.
  const near = await middle(page, ".plan-thing[aria-label='P-3']");
  await page.mouse.click(near.x + 40, near.y);
  await expect(page.locator(".handle")).toHaveCount(1);
  const [east, north] = [await feetIn(page, "East"), await feetIn(page, "North")];
  expect(east).toBeGreaterThan(50);
  expect(Math.abs(north - 20)).toBeLessThan(2);
  // Dragged north: the number beside it follows.
  await page.mouse.move(near.x + 40, near.y);
  await page.mouse.down();
  await page.mouse.move(near.x + 40, near.y - 30, { steps: 5 });
  await page.mouse.move(near.x + 40, near.y - 60, { steps: 5 });
  await page.mouse.up();
  await expect.poll(() => feetIn(page, "North")).toBeGreaterThan(north + 3);
  // A number that is typed moves the handle.
  const before = await middle(page, ".handle");
  await page.getByLabel("North", { exact: true }).fill("20 ft");
  await expect.poll(async () => (await middle(page, ".handle")).y).toBeGreaterThan(before.y + 20);
  await page.locator(".handle").focus();
  await page.keyboard.press("ArrowUp");
  await expect(page.getByLabel("North", { exact: true })).toHaveValue("20.10 ft");
  // Step by step back to where it had no place.
  for (let presses = 0; presses < 12; presses++) {
    if ((await page.locator(".handle").count()) === 0) break;
    await key(page, "UNDO").click();
  }
  await expect(page.locator(".handle")).toHaveCount(0);
  // Nothing of it is on the site yet.
  await expect(page.getByRole("button", { name: /^CHANGE Z-1/ })).toHaveCount(0);
  await page.getByLabel("Name", { exact: true }).fill("Z-1");
  await page.getByLabel("Target (optional)", { exact: true }).selectOption("PAD");
  await page.getByLabel("East", { exact: true }).fill("60");
  await page.getByLabel("North", { exact: true }).fill("25");
  await key(page, "LOOK AT IT FIRST").click();
  await expect(key(page, "PUT IN FORCE")).toBeDisabled();
  await page.getByLabel("Why? It goes into the log.").fill("engineer's sketch");
  await key(page, "PUT IN FORCE").click();
  await page.getByRole("alertdialog").getByRole("button", { name: "CLOSE" }).click();
  await expect(key(page, /^CHANGE Z-1/)).toBeVisible();
  await expect(page.locator(".plan-thing[aria-label='Z-1']")).toBeAttached();
  // RETIRE stands behind the row, and asks first.
  await expect(key(page, "RETIRE Z-1")).toHaveCount(0);
  await page.locator(".plan-thing[aria-label='Z-1']").click();
  await key(page, "RETIRE Z-1").click();
  await key(page, "LOOK AT IT FIRST").click();
  await page.getByLabel("Why? It goes into the log.").fill("drawn twice");
  await key(page, "PUT IN FORCE").click();
  await expect(key(page, /^CHANGE Z-1/)).toHaveCount(0);
});

test("a buried line is drawn corner by corner, is on the plan once it is in force, and a ticket covers its ground", async ({
  crew,
}) => {
  const { page } = await crew.joins("SUPERVISOR", "PN", null, LAPTOP);
  await key(page, "SITE").click();
  await key(page, "ADD Buried lines").click();
  await page.getByLabel("Name", { exact: true }).fill("MAIN");
  await page.getByLabel("What runs in it").selectOption("gas");
  await key(page, "DRAW ON THE PLAN").click();
  const from = await middle(page, ".plan-thing[aria-label='P-1']");
  await page.mouse.click(from.x - 20, from.y + 20);
  await page.mouse.click(from.x - 20, from.y - 60);
  await page.mouse.click(from.x + 30, from.y - 90);
  await expect(page.locator(".handle")).toHaveCount(3);
  await expect(page.getByLabel("North", { exact: true })).toHaveCount(3);
  await key(page, "LOOK AT IT FIRST").click();
  await page.getByLabel("Why? It goes into the log.").fill("painted this morning");
  await key(page, "PUT IN FORCE").click();
  await page.getByRole("alertdialog").getByRole("button", { name: "CLOSE" }).click();
  await expect(page.locator(".plan-thing[aria-label='buried line MAIN']")).toBeAttached();
  await key(page, "ADD Locate tickets").click();
  await page.getByLabel("Number of the ticket").fill("T-77");
  await page.getByLabel(/^First day/).fill("yesterday");
  await page.getByLabel(/^Last day/).fill("2099-01-01");
  await key(page, "gas, oil, steam").click();
  await key(page, "DRAW ON THE PLAN").click();
  for (const [x, y] of [
    [-60, 60],
    [60, 60],
    [60, -120],
    [-60, -120],
  ] as const)
    await page.mouse.click(from.x + x, from.y + y);
  await expect(page.locator(".handle")).toHaveCount(4);
  await key(page, "LOOK AT IT FIRST").click();
  // A day that is none is refused at once, and nothing that was drawn is lost.
  await expect(page.locator(".site-form .trouble").first()).toBeVisible();
  await expect(page.locator(".handle")).toHaveCount(4);
  await page.getByLabel(/^First day/).fill("2020-01-01");
  await key(page, "LOOK AT IT FIRST").click();
  await page.getByLabel("Why? It goes into the log.").fill("called in");
  await key(page, "PUT IN FORCE").click();
  await page.getByRole("alertdialog").getByRole("button", { name: "CLOSE" }).click();
  await expect(key(page, /^CHANGE T-77/)).toBeVisible();
  await key(page, "FACES").click();
  await expect(page.getByText("T-77").first()).toBeVisible();
});
