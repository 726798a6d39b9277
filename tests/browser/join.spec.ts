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

test("two people of one name are told apart at the door: that person, or somebody else with a name of their own", async ({
  crew,
}) => {
  await crew.joins("GROUND", "JM");
  const board = await crew.joins("SUPERVISOR", "PN");
  const second = await crew.scans("GROUND");
  await second.page.getByLabel("Name or initials").fill("jm");
  await second.page.getByRole("button", { name: "IN", exact: true }).click();
  await expect(second.page.getByText(/^JM is here already, on another phone since .*Who are you\?$/)).toBeVisible();
  await expect(second.page.getByLabel("I am somebody else. My name here:")).toHaveValue("jm 2");
  await second.page.getByLabel("I am somebody else. My name here:").fill("JMA");
  await second.page.getByRole("button", { name: "IN AS SOMEBODY ELSE" }).click();
  await expect(second.page.getByRole("heading", { name: "JMA" })).toBeVisible();
  const third = await crew.scans("GROUND");
  await third.page.getByLabel("Name or initials").fill("JM");
  await third.page.getByRole("button", { name: "IN", exact: true }).click();
  await third.page.getByRole("button", { name: "I AM THAT JM, ON ANOTHER PHONE" }).click();
  await expect(third.page.getByRole("heading", { name: "JM", exact: true })).toBeVisible();
  const people = board.page.getByRole("region", { name: "Phones joined" });
  await expect(people.getByText("JM", { exact: true })).toHaveCount(2);
  await expect(people.getByText("JMA", { exact: true })).toHaveCount(1);
});

test("a cab's code that is scanned on the ground takes no cab until whoever sits there gives it away", async ({ crew }) => {
  const cab = await crew.joins("OPERATOR", "OW", "EX-1");
  const other = await crew.scans("OPERATOR", "EX-1");
  await other.page.getByLabel("Name or initials").fill("ZZ");
  await other.page.getByRole("button", { name: "IN", exact: true }).click();
  await expect(other.page.getByRole("alert")).toContainText("OW's phone is the screen of EX-1.");
  await expect(cab.page.getByText("NO CALL", { exact: true })).toBeVisible();
  await cab.page.getByRole("button", { name: "SCREEN", exact: true }).click();
  await cab.page.getByRole("button", { name: "GIVE THE CAB OF EX-1 TO ANOTHER PHONE" }).click();
  await other.page.getByRole("button", { name: "IN", exact: true }).click();
  await expect(other.page.getByText("NO CALL", { exact: true })).toBeVisible();
  await expect(cab.page.getByText("Another phone is this machine's screen now.", { exact: false })).toBeVisible();
});
