/** A newcomer's day by touch: how many presses the work of the ground person takes. Printed, and no more than here. */
import type { Page } from "@playwright/test";
import { call, type Crew, expect, test } from "./crew.ts";
import { FULL_YARD } from "./ground_states.ts";

test.use({ more: FULL_YARD, viewport: { width: 360, height: 740 } });

const PHONE = { viewport: { width: 360, height: 740 }, hasTouch: true };

/** Presses by finger and counts; what is typed on the phone's own keyboard is an answer, counted apart. */
class Thumb {
  taps = 0;
  answers = 0;

  constructor(private readonly page: Page) {}

  async tap(...names: (string | RegExp)[]): Promise<void> {
    for (const name of names) {
      const panel = this.page.getByRole("dialog").last();
      const root = (await panel.count()) > 0 ? panel : this.page;
      await root.getByRole("button", typeof name === "string" ? { name, exact: true } : { name }).first().tap();
      this.taps++;
    }
  }

  async answer(text: string): Promise<void> {
    await this.page.getByRole("dialog").last().getByRole("textbox").fill(text);
    this.answers++;
  }
}

/** What is counted, with what it took when it was last counted by hand. */
function tells(what: string, thumb: Thumb, most: number, before: string): void {
  console.log(`${what}: ${thumb.taps} taps, ${thumb.answers} typed answers (before: ${before})`);
  expect(thumb.taps, what).toBeLessThanOrEqual(most);
}

async function digs(crew: Crew) {
  const yard = await crew.digs(PHONE);
  return { ...yard, page: yard.ground.page };
}

test("readings in the order of work: next mark, three digits, SEND", async ({ crew }) => {
  const { page, cab } = await digs(crew);
  const first = new Thumb(page);
  await first.tap("4", "7", "0", "SEND");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  tells("the first reading to the cab", first, 4, "5");
  const next = new Thumb(page);
  await next.tap(/^NEXT MARK/, "5", "4", "0", "SEND");
  await expect(call(cab.page, "UP 4")).toBeVisible();
  tells("the next mark's reading to the cab", next, 5, "5–6");
});

test("a mark out of order, among sixty-five: by its number, and near the one before", async ({ crew }) => {
  const { page, cab } = await digs(crew);
  await page.getByRole("button", { name: "MARKS", exact: true }).tap();
  const found = new Thumb(page);
  // All of what is pressed is in sight: nothing was pushed along.
  await expect(page.getByRole("button", { name: /^N-41 –/ })).toBeInViewport({ ratio: 1 });
  await found.tap(/^N-41 –/);
  await expect(page.getByRole("button", { name: /^N-47 / })).toBeInViewport({ ratio: 1 });
  await found.tap(/^N-47 /);
  await expect(page.locator(".mark.here")).toContainText("N-47");
  tells("a mark by its number, on MARKS", found, 2, "up to three screens of scrolling");
  await page.getByRole("button", { name: "MARKS", exact: true }).tap();
  const near = new Thumb(page);
  await near.tap("NEAR");
  // The row of marks before it stands 12 ft off: N-37 is nearer than any of another ten but its neighbours.
  await expect(page.getByRole("button", { name: /^N-37 / })).toBeInViewport({ ratio: 1 });
  await near.tap(/^N-37 /);
  tells("a mark near the last one, on MARKS", near, 2, "the same scrolling");
  const sent = new Thumb(page);
  await sent.tap("4", "7", "0", "SEND");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
});

test("a machine's first call while nobody has said where it stands: one press more", async ({ crew }) => {
  const { page, cab } = await digs(crew);
  await crew.hub.say({ kind: "say_moved", machine: "EX-1" });
  await expect(page.getByRole("button", { name: "ASK EX-1 TO COME IN" })).toBeVisible();
  const thumb = new Thumb(page);
  await thumb.tap(/^NOT ENTERING/, "4", "7", "0", "SEND");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  tells("the first call of a machine", thumb, 5, "6, and the number hidden for 6 s");
});

test("where a machine stands: its line, and the mark", async ({ crew }) => {
  const { page } = await digs(crew);
  const thumb = new Thumb(page);
  await thumb.tap(/^EX-1/, "EX-1 STANDS AT P-1", "CLOSE");
  await expect(page.getByRole("button", { name: "ASK EX-1 TO COME IN" })).toBeVisible();
  tells("saying where a machine stands", thumb, 3, "5");
});

test("the start of a day, and of the next", async ({ crew }) => {
  const { page } = await digs(crew);
  const thumb = new Thumb(page);
  await thumb.tap("LASER", /START CHECKS/, "SAY HAT AND VEST");
  for (const [check, answer] of [
    ["HAT AND VEST", "RT and OW by PN"],
    ["HAND SIGNALS", ""],
    ["FIRST AID", "box in the truck, street gate"],
    ["OVERHEAD LINES", "none over the site, looked at from the gate"],
    ["LOCATE TICKETS", "ticket 114, until Friday"],
    ["LASER AND RODS", "two-peg on Monday"],
    ["LADDERS AND BARRICADES", "north end of the trench"],
  ] as const) {
    await expect(page.getByRole("dialog", { name: check })).toBeVisible();
    if (answer) await thumb.answer(answer);
    else await thumb.tap("STOP", "LOWER", "RAISE", "SO MUCH", "GRADE");
    await thumb.tap("SEND");
  }
  await expect(page.getByText("START CHECKS 7 OF 7", { exact: false }).first()).toBeAttached();
  await thumb.tap("CLOSE");
  tells("the start checks of a day", thumb, 16, "21");
});

test("what is not sent is shown by hand, with the signal that was agreed", async ({ crew }) => {
  const { page, ground } = await digs(crew);
  await crew.hub.say({
    kind: "say_start_check",
    check: "hand_signals",
    value: "OW and RT, at the truck",
    signals: ["stop", "lower", "so_much"],
  });
  const thumb = new Thumb(page);
  await thumb.tap("LASER");
  await expect(page.getByText("START CHECKS 1 OF 7", { exact: false })).toBeVisible();
  await thumb.tap("READ");
  ground.link.cut();
  // Until then the page offers what waits with a SEND of its own.
  await expect(page.getByText("No link to the hub", { exact: false })).toBeVisible();
  await thumb.tap("4", "7", "0", "SEND");
  const hand = page.locator(".by-hand");
  await expect(hand).toContainText("P-1: show DOWN 3");
  await expect(hand).toContainText("Signal LOWER + SO MUCH, agreed: OW and RT, at the truck");
  // The next one, too: neither takes the other's place.
  await thumb.tap(/^NEXT MARK/);
  await expect(page.locator(".read-top")).toContainText("P-1: show DOWN 3 · NOT SENT – USE HANDS");
  await thumb.tap("5", "4", "0", "SEND");
  await expect(hand).toContainText("P-2: show UP 4");
  // Raising was not agreed.
  await expect(hand).toContainText("No hand signal for it was agreed today: eye contact first.");
});

test("marks are listed by how they stand", async ({ crew }) => {
  const { page } = await digs(crew);
  const thumb = new Thumb(page);
  // 105.00 − 4.70 = 100.30 ft, 0.30 over; 105.00 − 5.02 = 99.98 ft, on grade (derived by hand).
  await thumb.tap("4", "7", "0", "SEND", /^NEXT MARK/, "5", "0", "2", "SEND");
  await expect(page.locator(".sent-line")).toContainText("GRADE");
  await thumb.tap("MARKS", /^HIGH 1/);
  await expect(page.locator(".mark-list .mark")).toHaveCount(1);
  await expect(page.locator(".mark-list")).toContainText("P-1");
  await thumb.tap(/^HIGH 1/, /^ON 1/);
  await expect(page.locator(".mark-list")).toContainText("P-2");
  await crew.hub.say({ kind: "say_bumped", set_up: "S1" });
  await expect(page.getByRole("button", { name: /^SHOOT AGAIN 2/ })).toBeVisible();
});

test("a mark of the plan is reached and chosen by keyboard", async ({ crew }) => {
  const { page } = await digs(crew);
  await page.getByRole("button", { name: "MARKS", exact: true }).click();
  await page.getByRole("button", { name: "PLAN", exact: true }).click();
  const plan = page.getByRole("group", { name: /^Plan of/ });
  await plan.getByRole("button", { name: "P-1" }).focus();
  await page.keyboard.press("ArrowRight");
  await expect(plan.getByRole("button", { name: "P-2" })).toBeFocused();
  await page.keyboard.press("Enter");
  await expect(plan.getByRole("button", { name: "P-2" })).toHaveAttribute("aria-pressed", "true");
  await page.getByRole("button", { name: "READ", exact: true }).click();
  await expect(page.locator(".mark.here")).toContainText("P-2");
});
