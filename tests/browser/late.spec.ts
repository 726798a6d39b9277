/** A phone that is cut off says so, keeps what was said, and the hub takes it by the late rule. */
import type { Page } from "@playwright/test";
import { call, expect, sendsReading, test } from "./crew.ts";

/** What waited is asked about before it becomes a call: it still holds. */
async function stillHolds(page: Page): Promise<void> {
  const asks = page.getByRole("alert").filter({ hasText: "Does it still hold?" });
  await asks.getByRole("button", { name: "SEND", exact: true }).click();
}

test("a reading on a cut phone is NOT SENT, and reaches the cab when the link is back and its person says SEND", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  ground.link.cut();
  await sendsReading(ground.page, "4.70");
  await expect(ground.page.getByText("NOT SENT – USE HANDS", { exact: true })).toBeVisible();
  await expect(ground.page.getByText("1 NOT SENT – USE HANDS")).toBeVisible();
  await expect(ground.page.getByText("No link to the hub. Use hands.")).toBeVisible();
  await expect(call(cab.page, "DOWN 3")).toHaveCount(0);
  ground.link.mend();
  await stillHolds(ground.page);
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await expect(ground.page.getByText("ON THE CAB'S SCREEN", { exact: true })).toBeVisible();
  await expect(ground.page.getByText("1 NOT SENT – USE HANDS")).toHaveCount(0);
});

test("a queued reading outlives a reload, and arrives once", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  ground.link.cut();
  await sendsReading(ground.page, "4.70");
  await expect(ground.page.getByText("1 NOT SENT – USE HANDS")).toBeVisible();
  ground.link.mend();
  await ground.page.reload();
  await stillHolds(ground.page);
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  const { lines } = await crew.hub.get("/api/log?limit=200&kind=call_sent");
  expect(lines).toHaveLength(1);
});

test("a queued reading that a newer one has passed is kept in the log and not shown", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  const other = await crew.joins("GROUND", "JM");
  await expect(other.page.getByText("ROD MUST READ")).toBeVisible();
  ground.link.cut();
  await sendsReading(ground.page, "4.70");
  await expect(ground.page.getByText("1 NOT SENT – USE HANDS")).toBeVisible();
  // 105.00 − 4.80 = 100.20 ft, 0.20 over.
  await sendsReading(other.page, "4.80");
  await expect(call(cab.page, "DOWN 2")).toBeVisible();
  ground.link.mend();
  await stillHolds(ground.page);
  await expect(ground.page.getByText("JM has a newer reading. Kept in the log, not shown.")).toBeVisible();
  await expect(call(cab.page, "DOWN 2")).toBeVisible();
});

test("STOP from a cut phone is not sent, says so, and stops the cab once it can", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  ground.link.cut();
  await ground.page.getByRole("button", { name: "STOP: every machine" }).click();
  await expect(ground.page.getByText("1 NOT SENT – USE HANDS")).toBeVisible();
  ground.link.mend();
  await expect(cab.page.getByRole("alert")).toContainText("RT pressed STOP");
});
