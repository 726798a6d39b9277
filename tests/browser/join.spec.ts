/** Coming in: scan, name, role, IN. */
import { comeIn, expect, test } from "./crew.ts";

test("a ground person comes in by the code and sees the mark under the rod", async ({ crew }) => {
  const { page } = await crew.scans("GROUND");
  await expect(page.getByRole("heading", { name: "Come in · Mill yard" })).toBeVisible();
  await comeIn(page, "GROUND", "RT");
  await expect(page.getByRole("heading", { name: "RT" })).toBeVisible();
  await expect(page.getByRole("navigation")).toMatchAriaSnapshot(`
    - navigation "RT":
      - button "READ" [pressed]
      - button "LASER"
      - button "MARKS"
      - 'button "STOP: every machine"'
  `);
  // A phone sees plain http: what is tested here must not lean on what only a secure page has.
  expect(await page.evaluate(() => window.isSecureContext)).toBe(false);
});

test("a cab's code makes the phone the screen of that machine", async ({ crew }) => {
  const { page } = await crew.scans("OPERATOR", "EX-1");
  await expect(page.getByText("This phone becomes the screen of EX-1.")).toBeVisible();
  await comeIn(page, "OPERATOR", "OW");
  await expect(page.getByRole("heading", { name: /^EX-1/ })).toBeVisible();
  await expect(page.getByText("NO CALL", { exact: true })).toBeVisible();
  await expect(page.getByRole("navigation")).toMatchAriaSnapshot(`
    - navigation:
      - button "GOT IT" [disabled]
      - button "CHECK ME"
      - button "CAN'T"
      - 'button "STOP: every machine"'
  `);
});

test("a supervisor comes in on a phone and sees who is in", async ({ crew }) => {
  await crew.joins("OPERATOR", "OW", "EX-1");
  const { page } = await crew.joins("SUPERVISOR", "PN");
  const people = page.getByRole("region", { name: "Phones joined" });
  await expect(people).toContainText("OW OPERATOR EX-1");
  await expect(people).toContainText("PN SUPERVISOR");
});

test("a visitor looks on, with nothing to press but STOP", async ({ crew }) => {
  const { page } = await crew.joins("VISITOR", "VZ");
  await expect(page.getByText("You look on. STOP works for you too.")).toBeVisible();
});

test("without a name or with a void code the form says what to do", async ({ crew }) => {
  const { page } = await crew.scans("GROUND");
  await page.getByRole("button", { name: "IN", exact: true }).click();
  await expect(page.getByRole("alert")).toHaveText("Type your name or initials first.");
  await page.goto("/j/nonsense");
  await expect(page.getByRole("alert")).toContainText("code");
  await expect(page.getByRole("button", { name: "IN", exact: true })).toHaveCount(0);
});

test("a phone that reloads is still in", async ({ crew }) => {
  const { page } = await crew.joins("GROUND", "RT");
  await page.reload();
  await expect(page.getByRole("heading", { name: "RT" })).toBeVisible();
});
