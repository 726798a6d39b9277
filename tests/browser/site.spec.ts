/** The site changed on a phone: a target and a mark are added and a call comes out of them; nothing bad gets in, nothing is lost. */
import { call, expect, sendsReading, test } from "./crew.ts";

const PHONE = { viewport: { width: 390, height: 844 } };

test("a target and a mark that are added on a phone give a call, and a bad value is refused beside its field", async ({
  crew,
}) => {
  const { ground, cab } = await crew.digs();
  const { page } = await crew.joins("SUPERVISOR", "PN", null, PHONE);
  const press = (name: string | RegExp) => page.getByRole("button", { name, exact: true }).click();
  await press("SITE");
  await press("ADD Targets");
  await page.getByLabel("Short name").fill("SUMP");
  await page.getByLabel("Name on the operator's screen").fill("sump pit");
  await page.getByLabel("Its elevation is of").fill("pit floor");
  await page.getByLabel("Shape", { exact: true }).selectOption("flat");
  // A unit that nobody knows.
  await page.getByLabel("Elevation", { exact: true }).fill("99 yards");
  // A tolerance is as often inches as feet: nothing is put behind it.
  await page.getByLabel("Allowed high").fill("1");
  await page.getByLabel("Allowed low").fill("2 in");
  await expect(page.getByLabel("Allowed high")).toHaveValue("1");
  await press("LOOK AT IT FIRST");
  await expect(page.getByText("the unit “yards” is not known here")).toBeVisible();
  await expect(page.getByText("“1” has no unit. Write ft, in, mm or m")).toBeVisible();
  await page.getByLabel("Allowed high").fill("1 in");
  await expect(page.getByLabel("Elevation", { exact: true })).toHaveAttribute("aria-invalid", "true");
  // A page that is loaded again has lost nothing.
  await page.reload();
  await press("SITE");
  await expect(page.getByLabel("Short name")).toHaveValue("SUMP");
  await page.getByLabel("Elevation", { exact: true }).fill("99");
  await press("LOOK AT IT FIRST");
  await expect(page.getByRole("img", { name: /^Plan of/ })).toBeVisible();
  await expect(page.getByRole("row", { name: /^targets SUMP/ })).toBeVisible();
  await expect(page.getByRole("button", { name: "PUT IN FORCE" })).toBeDisabled();
  await page.getByLabel("Why? It goes into the log.").fill("engineer's sketch");
  await press("PUT IN FORCE");
  await page.getByRole("button", { name: "CLOSE", exact: true }).click();

  await press("CHANGE EX-1");
  await press("SUMP");
  await press("LOOK AT IT FIRST");
  await page.getByLabel("Why? It goes into the log.").fill("EX-1 digs it");
  await press("PUT IN FORCE");
  await page.getByRole("button", { name: "CLOSE", exact: true }).click();

  await press("ADD Marks");
  await page.getByLabel("Name", { exact: true }).fill("S-1");
  await page.getByLabel(/^Target/).selectOption("SUMP");
  await page.getByLabel("East").fill("20");
  await page.getByLabel("North").fill("70");
  await press("LOOK AT IT FIRST");
  await page.getByLabel("Why? It goes into the log.").fill("middle of the pit");
  await press("PUT IN FORCE");
  await page.getByRole("button", { name: "CLOSE", exact: true }).click();

  await ground.page.getByRole("button", { name: "MARKS", exact: true }).click();
  await ground.page.getByRole("button", { name: /^S-1/ }).click();
  // HI 105.00 − 5.60 = 99.40, pit floor 99.00: 0.40 high (derived by hand).
  await sendsReading(ground.page, "5.60");
  await expect(call(cab.page, "DOWN 4")).toBeVisible();
  await press("LOG");
  await expect(page.getByText("engineer's sketch")).toBeVisible();
});

test("a target that is changed says what it touches and what would not be accepted any more, and one with marks does not go alone", async ({
  crew,
}) => {
  const { ground, cab } = await crew.digs();
  await sendsReading(ground.page, "5.02");
  await expect(call(cab.page, "GRADE")).toBeVisible();
  const { page } = await crew.joins("SUPERVISOR", "PN", null, PHONE);
  const press = (name: string | RegExp) => page.getByRole("button", { name, exact: true }).click();
  await press("TARGETS");
  await press("REVISE PAD");
  // The dig-to falls from 100.00 to 99.70: what was on grade stands 0.28 high (derived by hand).
  await page.getByLabel("Thickness").fill("4");
  await press("LOOK AT IT FIRST");
  await expect(page.getByText("“4” has no unit.")).toBeVisible();
  await page.getByLabel("Thickness").fill("0.80 ft");
  await press("LOOK AT IT FIRST");
  // Every mark's dig-to, as it was and as it becomes.
  await expect(page.getByRole("row", { name: "P-1 100.00 99.70" })).toBeVisible();
  await expect(page.getByText("A dig-to changes by up to 0.30 ft.")).toBeVisible();
  await expect(page.getByText(/Accepted before, out now: P-1/)).toBeVisible();
  await press("BACK");
  await press("RETIRE PAD");
  await press("LOOK AT IT FIRST");
  await expect(page.getByText("which is not on this site").first()).toBeVisible();
  await press("LOOK: WITH ITS 3 MARKS");
  await expect(page.getByRole("row", { name: /^marks P-1/ })).toBeVisible();
});

test("points of a table are shown over the lot, a bad row is left out by its line, and the others become marks with a reason", async ({ crew }) => {
  const { page } = await crew.joins("SUPERVISOR", "PN", null, PHONE);
  const press = (name: string | RegExp) => page.getByRole("button", { name, exact: true }).click();
  await press("SITE");
  await press("IMPORT");
  const send = (text: string) =>
    page
      .getByLabel("A table of points (CSV) or LandXML 1.2")
      .setInputFiles({ name: "points.csv", mimeType: "text/csv", buffer: Buffer.from(text) });
  // A table of nothing but bad rows is refused whole, each row by its line.
  await send("elevation,northing,point,easting\n101.00,north,I-2,38\n");
  await expect(page.getByText("Line 2:")).toBeVisible();
  await expect(page.getByRole("button", { name: "LOOK AT IT FIRST" })).toHaveCount(0);
  await send("elevation,northing,point,easting\n101.00,22,I-1,36\n101.00,north,I-2,38\n");
  await expect(page.getByRole("listitem").filter({ hasText: "LEFT OUT Line 3:" })).toContainText("I-2");
  await expect(page.getByText("1 points, 1 of them with an elevation.").or(page.getByText("1 point, 1 of it with an elevation."))).toBeVisible();
  await expect(page.getByRole("button", { name: "LOOK AT IT FIRST" })).toBeVisible();
  await send("elevation,northing,point,easting\n101.00,22,I-1,36\n101.00,24,I-2,38\n");
  await expect(page.getByText("2 points, 2 of them with an elevation.")).toBeVisible();
  await expect(page.getByRole("img", { name: /^Plan of/ })).toBeVisible();
  await page.getByLabel("Target of these marks").selectOption("PAD");
  await press("LOOK AT IT FIRST");
  await page.getByLabel("Why? It goes into the log.").fill("surveyor's list");
  await press("PUT IN FORCE");
  await page.getByRole("button", { name: "CLOSE", exact: true }).click();
  await expect(page.getByRole("button", { name: "CHANGE I-2" })).toBeVisible();
  // What is exported is what is in force.
  const exported = await page.evaluate(async () => (await fetch("/api/site/file/marks.csv")).text());
  expect(exported).toContain("I-2,38 ft,24 ft");
});

test("a line overhead is added on the page, asks for a spotter at once, and is gone when it is retired", async ({ crew }) => {
  const { cab } = await crew.digs();
  const { page } = await crew.joins("SUPERVISOR", "PN", null, PHONE);
  const press = (name: string | RegExp) => page.getByRole("button", { name, exact: true }).click();
  await press("SITE");
  await press("ADD Lines overhead");
  await page.getByLabel("Name", { exact: true }).fill("LANE");
  for (const [number, east] of [
    [0, "250"],
    [1, "350"],
  ] as const) {
    await press("ONE MORE: What it hangs over, pole by pole");
    await page.getByLabel("East").nth(number).fill(east);
    await page.getByLabel("North").nth(number).fill("310");
  }
  await page.getByLabel("Its lowest over the ground").fill("24 yards");
  await press("LOOK AT IT FIRST");
  await expect(page.getByLabel("Its lowest over the ground")).toHaveAttribute("aria-invalid", "true");
  await page.getByLabel("Its lowest over the ground").fill("24");
  await press("LOOK AT IT FIRST");
  await expect(page.getByRole("img", { name: /^Plan of/ })).toContainText("OVERHEAD LANE");
  await page.getByLabel("Why? It goes into the log.").fill("nobody had drawn it");
  await press("PUT IN FORCE");
  await page.getByRole("button", { name: "CLOSE", exact: true }).click();
  // Nobody knows its voltage: 50 ft until its owner says it; 20 ft hold to 350 kV alone (29 CFR 1926.1408 and .1409).
  const needed = "LINE OVERHEAD: LANE – STAY 50 FT OFF – SPOTTER NEEDED";
  await expect(cab.page.getByText(needed)).toBeVisible();
  await press("RETIRE LANE");
  await press("LOOK AT IT FIRST");
  await page.getByLabel("Why? It goes into the log.").fill("taken down");
  await press("PUT IN FORCE");
  await expect(cab.page.getByText(needed)).toHaveCount(0);
});

test("the cab's plan comes by one key and gives way to a new call by itself", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await cab.page.getByRole("button", { name: "PLAN", exact: true }).click();
  await expect(cab.page.getByRole("img", { name: /^Plan of/ })).toBeVisible();
  await expect(cab.page.getByRole("button", { name: "STOP: every machine" })).toBeVisible();
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await expect(cab.page.getByRole("img", { name: /^Plan of/ })).toHaveCount(0);
});
