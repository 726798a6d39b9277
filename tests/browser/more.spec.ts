/** MORE: a reading where no mark is, on a surface that is named, of a rocked rod. */
import type { Page } from "@playwright/test";
import { call, expect, test } from "./crew.ts";

/** Along x = 60 from north 10 to 50, dug to 100.00 but for 0.50 of gravel. Invented. */
const WALL = `
[[target]]
id = "WALL"
name = "wall"
surface = "top of gravel"
layers = [{ name = "gravel", thickness = "0.50 ft" }]

[target.along]
start = ["60 ft", "10 ft"]
first = "10+00 ft"
left = "1.5 ft"
right = "1.5 ft"
pieces = [{ to = ["60 ft", "50 ft"] }]
profile = [{ station = "10+00 ft", elevation = "100.50 ft" }, { station = "10+40 ft", elevation = "100.50 ft" }]
`;
test.use({ more: WALL });

async function opens(page: Page, where: RegExp) {
  await page.getByRole("button", { name: "READ", exact: true }).click();
  const again = page.getByRole("button", { name: "READ AGAIN", exact: true });
  if (await again.isVisible()) await again.click();
  await page.getByRole("button", { name: "MORE", exact: true }).click();
  const panel = page.getByRole("dialog", { name: "MORE" });
  await panel.getByRole("button", { name: where }).click();
  const fill = async (values: Record<string, string>) => {
    for (const [name, value] of Object.entries(values)) await panel.getByLabel(name, { exact: true }).fill(value);
  };
  return { panel, fill, send: () => panel.getByRole("button", { name: "SEND", exact: true }).click() };
}

test("a station and offset, two tapes, paces and a rocked rod each give a call, and outside there is none", async ({ crew }) => {
  const { ground, cab } = await crew.digs({ viewport: { width: 360, height: 740 } });
  const rod = "Rod A, by SETUP-1";
  // A mark, the top of gravel at 100.50: 105.00 − 4.20 = 100.80, 0.30 above it. The smallest of a rocked rod counts.
  const marked = await opens(ground.page, /^P-1/);
  await marked.panel.getByLabel(/^The rod stands on/).selectOption("top of slab");
  await marked.fill({ [rod]: "4.26" });
  await marked.panel.getByLabel(/^Other readings/).fill("4.20; 4.24");
  expect(await ground.page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  await marked.send();
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  // Between P-1 and P-2, 6 and 8 ft from them, to the right: 105.00 − 4.60 = 100.40, 0.40 above the dig-to of 100.00.
  const tied = await opens(ground.page, /^TWO TAPES/);
  await tied.panel.getByLabel("First mark").selectOption("P-1");
  await tied.panel.getByLabel("Second mark").selectOption("P-2");
  await tied.fill({ "Level tape from the first, feet": "6", "Level tape from the second, feet": "8", [rod]: "4.60" });
  await expect(tied.panel.getByRole("button", { name: "SEND", exact: true })).toBeDisabled();
  await tied.panel.getByRole("button", { name: "RIGHT", exact: true }).click();
  await tied.send();
  await expect(call(cab.page, "DOWN 4")).toBeVisible();
  // Half way from P-2 to P-3: 105.00 − 4.50 = 100.50, 0.50 above.
  const paced = await opens(ground.page, /^PACED/);
  await paced.panel.getByLabel("First mark").selectOption("P-2");
  await paced.panel.getByLabel("Second mark").selectOption("P-3");
  await paced.fill({ "Paces from the first": "2", "Paces for the whole way": "4", [rod]: "4.50" });
  await paced.send();
  await expect(call(cab.page, "DOWN 5")).toBeVisible();
  // Station 10+20 of the wall, 2 ft to the left: 0.50 ft beside it.
  const outside = await opens(ground.page, /^STATION/);
  await outside.panel.getByLabel("Target", { exact: true }).selectOption("WALL");
  await outside.fill({ "Station, such as 18.5 or 10+40": "10+20", "Offset, feet": "2", [rod]: "4.50" });
  await outside.panel.getByRole("button", { name: "LEFT", exact: true }).click();
  await outside.send();
  await expect(ground.page.getByText(/0\.5 ft past the left edge/).first()).toBeVisible();
});
