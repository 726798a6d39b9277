/** A curved wall: its line on every plan, and what to dig to along it, which comes nearer by a key. */
import { expect, test } from "./crew.ts";

/** 40 ft north, then a quarter turn to the right over 31.4 ft: level at 101.00, and a foot lower from 20 ft on. Invented. */
const WALL = `
[[target]]
id = "WALL"
name = "curved wall"
surface = "bare ground"

[target.along]
start = ["60 ft", "10 ft"]
left = "1.5 ft"
right = "1.5 ft"
pieces = [
    { to = ["60 ft", "50 ft"] },
    { centre = ["80 ft", "50 ft"], to = ["80 ft", "70 ft"], turn = "right" },
]
profile = [{ station = "0 ft", elevation = "101.00 ft" }, { station = "71.4 ft", elevation = "101.00 ft" }]
steps = [{ station = "20 ft", by = "-1 ft" }]

[[mark]]
id = "W-1"
target = "WALL"
at = ["60 ft", "30 ft"]
`;
test.use({ more: WALL });

test("a curved wall is drawn on every plan, with its profile for who works to it", async ({ crew }) => {
  const { ground, cab } = await crew.digs({ viewport: { width: 360, height: 740 } });
  const board = await crew.joins("SUPERVISOR", "PN", null, { viewport: { width: 390, height: 844 } });
  const { page } = ground;
  await page.getByRole("button", { name: "MARKS", exact: true }).click();
  await page.getByRole("button", { name: "PLAN", exact: true }).click();
  const profile = page.getByRole("img", { name: "Profile of curved wall" });
  await expect(profile).toContainText("101.00");
  await expect(profile).toContainText("100.00");
  const before = await profile.boundingBox();
  await page.getByRole("figure").filter({ has: profile }).getByRole("button", { name: "Closer" }).click();
  await expect.poll(async () => (await profile.boundingBox())?.width).toBeGreaterThan((before?.width ?? 0) * 1.9);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  await board.page.getByRole("button", { name: "TARGETS", exact: true }).click();
  await expect(board.page.getByRole("img", { name: "Profile of curved wall" })).toContainText("101.00");
  await cab.page.getByRole("button", { name: "PLAN", exact: true }).click();
  // EX-1 digs the pad: of what it does not dig, the cab has the line and its two edges on its plan, and no profile.
  const lines = cab.page.getByRole("img", { name: /^Plan of/ }).locator("polyline.plan-target");
  await expect(lines).toHaveCount(3);
  await expect(lines.and(cab.page.locator(".edge"))).toHaveCount(2);
  await expect(cab.page.getByRole("img", { name: "Profile of curved wall" })).toHaveCount(0);
});
