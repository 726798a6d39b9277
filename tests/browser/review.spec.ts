/** Looking back: the replay paints the cab as it was, dark screens too, and adds nothing to the log; who told is answered. */
import { call, expect, sendsReading, test } from "./crew.ts";

const SIZES = [
  { width: 360, height: 740 },
  { width: 390, height: 844 },
  { width: 1366, height: 850 },
];

test("a replay shows what the cab's page showed, and says nothing to the hub", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await cab.page.getByRole("button", { name: "GOT IT", exact: true }).click();
  await expect(ground.page.getByText("GOT IT PRESSED IN THE CAB", { exact: true })).toBeVisible();
  cab.link.cut();
  await expect
    .poll(async () => (await crew.hub.get("/api/replay")).ground.machines[0].screen.kind)
    .toBe("lost");
  const { page } = await crew.joins("SUPERVISOR", "PN");
  const press = (name: string) => page.getByRole("button", { name, exact: true }).click();
  await press("REVIEW");
  await expect(page.getByRole("heading", { name: "Out of the ordinary" })).toBeVisible();
  const before = (await crew.hub.get("/healthz")).head;
  await press("REPLAY");
  const { calls, to } = await crew.hub.get("/api/review");
  const slider = page.getByLabel("Time of the replay");
  // The nearest quarter of a second that lies behind the press.
  const { from } = await crew.hub.get("/api/review");
  const grain = 250;
  const at = (moment: number) => String(from + Math.ceil((moment - from) / grain) * grain);
  await slider.fill(at(calls[0].got_at));
  const painted = page.frameLocator('iframe[src="/replayed/operator"]').first();
  await expect(painted.getByRole("group", { name: /^DOWN 3\./ })).toBeVisible();
  await expect(painted.getByText("GOT IT ✓").or(painted.locator(".got.done"))).toBeVisible();
  const groundThen = page.frameLocator('iframe[src="/replayed/ground"]').first();
  await expect(groundThen.getByText("GOT IT PRESSED IN THE CAB").first()).toBeVisible();
  // At the end of the day the cab had no link: the number had hidden itself, and so it does here.
  await slider.fill(at(to));
  await expect(page.getByText(/^EX-1 OW · HAD NO LINK$/)).toBeVisible();
  await expect(painted.getByText("NO LINK", { exact: true })).toBeVisible();
  await expect(painted.getByRole("group", { name: /^DOWN 3\./ })).toBeHidden();
  expect((await crew.hub.get("/healthz")).head, "a replay adds nothing to the log").toBe(before);
});

test("who told it to dig is answered from the log, and the sheet opens", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  const { page } = await crew.joins("SUPERVISOR", "PN");
  const press = (name: string) => page.getByRole("button", { name, exact: true }).click();
  await press("REVIEW");
  await press("WHO TOLD");
  const ask = page.getByRole("button", { name: /^WHO TOLD IT TO DIG\?/ });
  // Nothing is chosen for the person who asks: what is not there to be read is not asked.
  await page.getByLabel("Near the mark").selectOption("P-1");
  await expect(page.getByRole("combobox", { name: "Machine" })).toHaveValue("");
  await expect(ask).toContainText("Choose the machine that is asked about.");
  await expect(ask).toBeDisabled();
  await page.getByRole("combobox", { name: "Machine" }).selectOption("EX-1");
  await ask.click();
  await expect(page.getByText("RT told EX-1: P-1 DOWN 3. No call asked for a bottom below 100.00 ft.")).toBeVisible();
  await expect(page.getByText("P-1: nobody said from what it was laid.")).toBeVisible();
  await expect(page.getByRole("heading", { name: /^EX-1, near P.*1, .* to / })).toBeVisible();
  const opened = page.waitForEvent("popup");
  await page.getByRole("link", { name: "THE WHOLE SHEET, WITH ITS PROOF" }).click();
  const sheet = await opened;
  await expect(sheet.getByText("Head of the chain at entry")).toBeVisible();
  // The question is in the address; it is asked again by a press alone.
  await page.reload();
  await expect(page.getByRole("combobox", { name: "Machine" })).toHaveValue("EX-1");
  await expect(page.getByLabel("Near the mark")).toHaveValue("P-1");
  await expect(page.getByText(/told EX-1/)).toHaveCount(0);
  await ask.click();
  await expect(page.getByText(/told EX-1/)).toBeVisible();
  // An answer stands under its own question alone.
  await page.getByRole("combobox", { name: "Machine" }).selectOption("EX-2");
  await expect(page.getByText(/told EX-1/)).toHaveCount(0);
  await expect(page.getByRole("link", { name: "THE WHOLE SHEET, WITH ITS PROOF" })).toHaveCount(0);
  await page.getByLabel("Near the mark").selectOption("");
  await expect(ask).toContainText("Choose a mark, or type east and north of the place in feet.");
});

test("no part of the review runs off a phone's edge", async ({ crew }) => {
  const { ground } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(ground.page.getByText("ON THE CAB'S SCREEN", { exact: true })).toBeVisible();
  const { page } = await crew.joins("SUPERVISOR", "PN");
  await page.getByRole("button", { name: "REVIEW", exact: true }).click();
  for (const part of ["THE DAY", "REPLAY", "PICTURES", "HISTORIES", "WHO TOLD", "PAPER"]) {
    const key = page.getByRole("button", { name: part, exact: true });
    await key.click();
    await expect(key).toHaveAttribute("aria-pressed", "true");
    for (const size of SIZES) {
      await page.setViewportSize(size);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(over, `${part} at ${size.width} px`).toBeLessThanOrEqual(0);
    }
  }
});

test("charts are drawn with their words, and a moment of the day's lanes replays from there", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  const { page } = await crew.joins("SUPERVISOR", "PN");
  const refused: string[] = [];
  page.on("console", (message) => message.type() === "error" && refused.push(message.text()));
  await page.getByRole("button", { name: "REVIEW", exact: true }).click();
  await page.getByRole("button", { name: "PICTURES", exact: true }).click();
  const differences = page.getByRole("img", { name: "Final differences" });
  // One mark, 0.30 high: one bar with its count, over where it belongs.
  await expect(differences.getByText("1", { exact: true }).first()).toBeVisible();
  await expect(differences.getByText("0.30", { exact: true })).toBeVisible();
  await expect(page.getByRole("img", { name: "From call to got it" }).getByText("30 s")).toBeVisible();
  await page.getByRole("button", { name: "THE DAY", exact: true }).click();
  const lanes = page.getByRole("img", { name: "The day as lanes" });
  await expect(lanes.getByText("machine EX-1")).toBeVisible();
  const slider = page.getByLabel("Time of the replay");
  await slider.press("End");
  await slider.press("Enter");
  await expect(page.getByRole("button", { name: "REPLAY", exact: true })).toHaveAttribute("aria-pressed", "true");
  const { from, to } = await crew.hub.get("/api/review");
  const grain = 250;
  await expect(slider).toHaveValue(String(from + Math.ceil((to - from) / grain) * grain));
  expect(refused, "the page's policy refuses nothing of the charts").toEqual([]);
});

test("what was out of the ordinary is counted by kind; a pressed count leaves that kind alone on the page", async ({
  crew,
}) => {
  const { ground } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(ground.page.getByText("ON THE CAB'S SCREEN", { exact: true })).toBeVisible();
  await crew.hub.say({ kind: "stop_all", why: "a truck in the swing" });
  await crew.hub.say({ kind: "say_bumped", set_up: "S1" });
  const { page } = await crew.joins("SUPERVISOR", "PN");
  await page.getByRole("button", { name: "REVIEW", exact: true }).click();
  const line = (text: RegExp) => page.getByRole("button", { name: text });
  const [stop, laser] = [line(/^\d\d:\d\d STOP ALL STOP .*a truck in the swing/), line(/^\d\d:\d\d LASER SETUP-1 IN DOUBT/)];
  await expect(stop).toBeVisible();
  await expect(laser).toBeVisible();
  const { exceptions } = await crew.hub.get("/api/review");
  const of = (kind: string) => exceptions.filter((one: { kind: string }) => one.kind === kind).length;
  const count = page.getByRole("button", { name: `LASER ${of("laser")}`, exact: true });
  await count.click();
  await expect(stop).toBeHidden();
  await expect(laser).toBeVisible();
  await page.emulateMedia({ media: "print" });
  await expect(stop, "paper has them all").toBeVisible();
  await page.emulateMedia({ media: "screen" });
  await count.click();
  await expect(stop).toBeVisible();
});
