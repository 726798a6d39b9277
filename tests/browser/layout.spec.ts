/** Marks and layout on the ground person's phone: paint, the plan, the sums, the pocket sheet on the laptop. */
import type { Page } from "@playwright/test";
import { expect, test } from "./crew.ts";

/** What is done seldom at marks shares one key. */
async function opensTool(page: Page, name: string): Promise<void> {
  await page.getByRole("button", { name: /^PAINT · TIES/ }).click();
  await page.getByRole("button", { name, exact: true }).click();
}

test("a mark is laid, gone, and not read before it is laid again", async ({ crew }) => {
  const { ground } = await crew.digs();
  const { page } = ground;
  await page.getByRole("button", { name: "MARKS", exact: true }).click();
  await opensTool(page, "PAINT");
  const panel = page.getByRole("dialog", { name: /^Paint of/ });
  await panel.getByRole("button", { name: "GONE", exact: true }).click();
  await expect(page.getByText("GONE · 1", { exact: false })).toBeVisible();
  await opensTool(page, "PAINT");
  await panel.getByRole("button", { name: "HUB", exact: true }).click();
  await expect(page.getByText("laid · 2", { exact: false })).toBeVisible();
});

test("the plan shows the marks and a press on one chooses it", async ({ crew }) => {
  const { ground } = await crew.digs();
  const { page } = ground;
  await page.getByRole("button", { name: "MARKS", exact: true }).click();
  await page.getByRole("button", { name: "PLAN", exact: true }).click();
  const plan = page.getByRole("group", { name: /^Plan of/ });
  await expect(plan).toBeVisible();
  await page.getByRole("button", { name: "Closer" }).click();
  await page.getByRole("button", { name: "ALL", exact: true }).click();
  await expect(plan.getByText("P-1", { exact: false }).first()).toBeVisible();
});

test("an offset hub is lettered as the trade does", async ({ crew }) => {
  const { ground } = await crew.digs();
  const { page } = ground;
  await page.getByRole("button", { name: "MARKS", exact: true }).click();
  await opensTool(page, "SUMS");
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
  await opensTool(page, "SUMS");
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

test("a mark that the machine is about to take is named with the tapes to take first, and is laid again from them", async ({
  crew,
}) => {
  const { ground, cab } = await crew.digs({ viewport: { width: 360, height: 740 } });
  const { page } = ground;
  const board = await crew.joins("SUPERVISOR", "PN");
  await page.getByRole("button", { name: "MARKS", exact: true }).click();
  // P-2 at 40, 20 lies √2000 = 44.72 ft from both benchmarks, at 0, 0 and 80, 0; their tapes meet at 2·atan(2) = 126.9°.
  await crew.hub.say({ kind: "lay_marks", marks: ["P-1"], from: { kind: "hub" } });
  await crew.hub.say({ kind: "lay_marks", marks: ["P-2"], from: { kind: "mark", id: "P-1" } });
  await expect(board.page.getByText("EX-1 is about to take P-2")).toBeVisible();
  const tools = page.getByRole("button", { name: /^PAINT · TIES/ });
  await expect(tools).toContainText("EX-1 takes P-2 next: TIES FIRST");
  await tools.click();
  const next = page.getByRole("dialog").getByRole("button", { name: /EX-1 takes P-2 next: TIES FIRST/ });
  await expect(next).toContainText("BM-1 44.72 · BM-2 44.72 · meet at 127°");
  await next.click();
  const panel = page.getByRole("dialog", { name: "Ties of P-2" });
  await panel.getByLabel("Tape from BM-1").fill("45.72");
  await panel.getByLabel("Tape from BM-2").fill("44.72");
  await panel.getByRole("button", { name: "SEND", exact: true }).click();
  await expect(page.getByText("from where the plan has it", { exact: false })).toBeVisible();
  await page.getByRole("alertdialog").getByRole("button", { name: "CLOSE" }).click();
  await tools.click();
  await next.click();
  await panel.getByLabel("Tape from BM-1").fill("44.72");
  await panel.getByLabel("Tape from BM-2").fill("44.73");
  await panel.getByRole("button", { name: "SEND", exact: true }).click();
  await expect(tools).not.toContainText("takes P-2 next");
  await expect(board.page.getByText("EX-1 is about to take P-2")).toHaveCount(0);
  await page.getByRole("button", { name: /^P-2/ }).click();
  await page.getByRole("button", { name: "MARKS", exact: true }).click();
  await opensTool(page, "PAINT");
  await page.getByRole("button", { name: "GONE", exact: true }).click();
  await opensTool(page, "PAINT");
  await page.getByRole("button", { name: "ITS TIES", exact: true }).click();
  await expect(page.getByText("laid · 2", { exact: false })).toBeVisible();
  await expect(cab.page.getByText("NO CALL", { exact: true })).toBeVisible();
});
