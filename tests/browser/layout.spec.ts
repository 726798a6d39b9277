/** Marks and layout on the ground person's phone: paint, the plan, the sums, the pocket sheet on the laptop. */
import { expect, test } from "./crew.ts";

test("a mark is laid, gone, and not read before it is laid again", async ({ crew }) => {
  const { ground } = await crew.digs();
  const { page } = ground;
  await page.getByRole("button", { name: "MARKS", exact: true }).click();
  await page.getByRole("button", { name: "PAINT", exact: true }).click();
  const panel = page.getByRole("dialog", { name: /^Paint of/ });
  await panel.getByRole("button", { name: "GONE", exact: true }).click();
  await expect(page.getByText("GONE · 1", { exact: false })).toBeVisible();
  await page.getByRole("button", { name: "PAINT", exact: true }).click();
  await panel.getByRole("button", { name: "HUB", exact: true }).click();
  await expect(page.getByText("laid · 2", { exact: false })).toBeVisible();
});

test("the plan shows the marks and a press on one chooses it", async ({ crew }) => {
  const { ground } = await crew.digs();
  const { page } = ground;
  await page.getByRole("button", { name: "MARKS", exact: true }).click();
  await page.getByRole("button", { name: "PLAN", exact: true }).click();
  const plan = page.getByRole("img", { name: /^Plan of/ });
  await expect(plan).toBeVisible();
  await page.getByRole("button", { name: "Closer" }).click();
  await page.getByRole("button", { name: "ALL", exact: true }).click();
  await expect(plan.getByText("P-1", { exact: false }).first()).toBeVisible();
});

test("an offset hub is lettered as the trade does", async ({ crew }) => {
  const { ground } = await crew.digs();
  const { page } = ground;
  await page.getByRole("button", { name: "MARKS", exact: true }).click();
  await page.getByRole("button", { name: "SUMS", exact: true }).click();
  const panel = page.getByRole("dialog", { name: "Sums of layout" });
  // 304.58 − 302.00 = 2.58 ft of cut, five feet to the right (derived by hand).
  await panel.getByLabel("Top of the hub").fill("304.58");
  await panel.getByLabel("Dig to").fill("302.00");
  await panel.getByLabel(/^Offset/).fill("5");
  await panel.getByRole("button", { name: "WORK OUT" }).click();
  await expect(panel.getByText("C 2.58")).toBeVisible();
  await expect(panel.getByText("OF 5.00 RT")).toBeVisible();
});

test("the dig is measured down from a string, and boards that are not level are named", async ({ crew }) => {
  const { ground } = await crew.digs();
  const { page } = ground;
  await page.getByRole("button", { name: "MARKS", exact: true }).click();
  await page.getByRole("button", { name: "SUMS", exact: true }).click();
  const panel = page.getByRole("dialog", { name: "Sums of layout" });
  await panel.getByRole("button", { name: "String between batter boards" }).click();
  // A quarter of the way along a string that falls 1.00 ft: 304.75 − 302.00 = 2.75 ft (derived by hand).
  await panel.getByLabel("First board's elevation").fill("305.00");
  await panel.getByLabel("Second board's elevation").fill("304.00");
  await panel.getByLabel("Between the boards").fill("40");
  await panel.getByLabel("From the first board to here").fill("10");
  await panel.getByLabel("Dig to").fill("302.00");
  await panel.getByRole("button", { name: "WORK OUT" }).click();
  await expect(panel.getByText("2.75 ft")).toBeVisible();
  await expect(panel.getByText("NO", { exact: true })).toBeVisible();
});

test("the pocket sheet says what the rod must read at every mark", async ({ crew }) => {
  await crew.digs();
  const board = await crew.joins("SUPERVISOR", "PN");
  await board.page.getByRole("button", { name: "CODES", exact: true }).click();
  await board.page.getByRole("button", { name: "POCKET SHEET", exact: true }).click();
  // HI 105.00 − dig-to 100.00 (derived by hand).
  const row = board.page.getByRole("row", { name: /^P-1/ });
  await expect(row).toContainText("100.00");
  await expect(row).toContainText("5.00");
});
