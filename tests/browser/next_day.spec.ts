/** The next day is opened while people are at work: who may be in keeps their screen, and no number of the day before stays. */
import type { Page } from "@playwright/test";
import { call, expect, FOOT, hold, sendsReading, test } from "./crew.ts";

/** Says something from a phone as its page would, while that shows something else. */
async function says(page: Page, command: Record<string, unknown>): Promise<void> {
  const status = await page.evaluate(async (said) => {
    const body = JSON.stringify({ key: `next-day-${Math.random()}`, made_at: Date.now(), command: said });
    const headers = { "content-type": "application/json" };
    return (await fetch("/api/say", { method: "POST", headers, body })).status;
  }, command);
  expect(status).toBe(200);
}

test("opened with the ground page, two cabs and a person in: nobody who is in is asked to join, no old number is left", async ({
  crew,
}, info) => {
  const board = await crew.joins("SUPERVISOR", "PN");
  const { ground, cab } = await crew.digs();
  const other = await crew.joins("OPERATOR", "LG", "EX-2");
  await crew.hub.say({ kind: "place_machine", machine: "EX-2", at: { x: 500 * FOOT, y: 500 * FOOT } });
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  const told = ground.page.locator(".sent-line").filter({ hasText: "EX-1: DOWN 3" });
  await expect(told).toBeVisible();
  await crew.hub.say({ kind: "shoot_check", set_up: "S1", benchmark: "BM-2", rod: "A", text: "3.48" });
  await crew.hub.say({ kind: "close_day" });
  await expect(call(cab.page, "DOWN 3")).toHaveCount(0);
  // After the close somebody goes in all the same: to fetch a rod.
  await says(ground.page, { kind: "ask_in", machine: "EX-1", visit: "visit-of-rt-1", mark: "P-1" });
  await hold(cab.page, /^BUCKET DOWN/, async () => {
    await expect(ground.page.getByRole("button", { name: "I GO IN", exact: true })).toBeVisible();
  });
  await ground.page.getByRole("button", { name: "I GO IN", exact: true }).click();
  const inBar = ground.page.getByText(/^YOU ARE IN AT EX-1/);
  await expect(inBar).toBeVisible();
  await expect(told).toBeVisible();

  const press = (name: string) => board.page.getByRole("button", { name, exact: true }).click();
  await press("DAY");
  await press("OPEN THE NEXT DAY");
  const next = board.page.getByRole("dialog", { name: "OPEN THE NEXT DAY" });
  await next.getByRole("button", { name: "OPEN THE NEXT DAY", exact: true }).click();
  const over = "The day is over. Scan a new code tomorrow.";
  await expect(other.page.getByText(over)).toBeVisible();
  await expect(board.page.getByRole("button", { name: "DAY", exact: true })).toBeVisible();

  await expect(told).toHaveCount(0);
  await expect(inBar).toBeVisible();
  await expect(cab.page.getByText("RT IS IN", { exact: false })).toBeVisible();
  await ground.page.screenshot({ path: info.outputPath("ground-next-day.png") });
  await cab.page.screenshot({ path: info.outputPath("cab-next-day.png") });
  for (const page of [ground.page, cab.page]) {
    await expect(page.getByLabel("Name or initials")).toHaveCount(0);
    await expect(page.getByText(over)).toHaveCount(0);
  }
  for (const page of [ground.page, cab.page, other.page]) {
    await expect(page.locator(".number")).toHaveCount(0);
    await expect(page.getByText("DOWN 3", { exact: false })).toHaveCount(0);
  }
  // Out and released, they scan like everybody else; the number of the day before does not come back with it.
  await hold(ground.page, "I AM OUT", async () => {
    await expect(cab.page.getByText("RT IS IN", { exact: false })).toHaveCount(0);
  });
  await hold(cab.page, "RELEASE", async () => {
    await expect(cab.page.getByText(over)).toBeVisible();
  });
  for (const page of [ground.page, cab.page]) {
    await expect(page.getByText(over)).toBeVisible();
    await expect(page.locator(".number")).toHaveCount(0);
  }
});
