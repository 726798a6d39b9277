/** Seen is seen: no GOT IT and no ON THE CAB'S SCREEN while something lies over the number; and what must be seen lies over all. */
import type { Page } from "@playwright/test";
import { call, expect, FOOT, hold, sendsReading, test } from "./crew.ts";

const GOT = "GOT IT";
const STOP = "STOP: every machine";
const ON = "ON THE CAB'S SCREEN";

const key = (page: Page, name: string | RegExp) => page.getByRole("button", { name, exact: true });

/** Counts what a phone buzzes: it buzzes with each tune. */
async function buzzes(page: Page): Promise<() => Promise<number>> {
  await page.evaluate(() => {
    const counted = window as unknown as { buzzed: number };
    counted.buzzed = 0;
    navigator.vibrate = () => {
      counted.buzzed++;
      return true;
    };
  });
  return () => page.evaluate(() => (window as unknown as { buzzed: number }).buzzed);
}

test("an honest day: every call is pressed as soon as it is seen, and none stands as never painted", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  let sent = 0;
  // Down in steps of a tenth: 105.00 − 4.20 = 100.80 ft, 0.80 over, and so on to 0.30 (derived by hand).
  for (const reading of ["4.20", "4.30", "4.40", "4.50", "4.60", "4.70"]) {
    for (const mark of [/^P-1/, /^P-2/, /^P-3/]) {
      await key(ground.page, "MARKS").click();
      await ground.page.getByRole("button", { name: mark }).click();
      await sendsReading(ground.page, reading);
      sent++;
      await expect(ground.page.locator(".sent-line")).toContainText("EX-1: DOWN");
      await key(cab.page, GOT).click();
      await expect(key(cab.page, "YOU HAVE IT")).toBeVisible();
      await expect(ground.page.getByText("GOT IT PRESSED IN THE CAB", { exact: true })).toBeVisible();
    }
  }
  const kinds = async (kind: string) => {
    const { lines } = await crew.hub.get(`/api/log?kind=${kind}&limit=100`);
    return lines as { seq: number }[];
  };
  expect(await kinds("call_sent")).toHaveLength(sent);
  expect(await kinds("call_got")).toHaveLength(sent);
  expect(await kinds("call_shown")).toHaveLength(sent);
});

test("LOOK in the number's place: no GOT IT, and the ground does not read that it is on the screen", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 20 * FOOT, y: 30 * FOOT } });
  // LOOK gives way by itself after six seconds; here it stays until it is pressed, however slow this machine is.
  await cab.page.evaluate(() => {
    const wait = window.setTimeout.bind(window);
    window.setTimeout = ((act: () => void, ms?: number) => (ms === 6_000 ? 0 : wait(act, ms))) as typeof setTimeout;
  });
  await key(ground.page, "NOT ENTERING – SHOOTING FROM OUTSIDE").click();
  await sendsReading(ground.page, "4.70");
  await expect(cab.page.getByRole("alert")).toContainText("RT AT P-1");
  await expect(key(cab.page, GOT)).toHaveCount(0);
  await expect(ground.page.getByText("NOT ON THE CAB'S SCREEN – USE HANDS", { exact: true })).toBeVisible();
  await key(cab.page, "EYE CONTACT").click();
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await expect(key(cab.page, GOT)).toBeVisible();
  await expect(ground.page.getByText(ON, { exact: true })).toBeVisible();
  // A plan that is opened and closed does not bring LOOK back; under it nothing is on the screen.
  await key(cab.page, "PLAN").click();
  await expect(key(cab.page, GOT)).toHaveCount(0);
  await key(cab.page, "SECTION").click();
  await expect(cab.page.locator(".loud")).toHaveCount(0);
});

test("under PLAN and under a panel there is no GOT IT, and the ground reads that it is not on the screen", async ({
  crew,
}) => {
  const { ground, cab } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(ground.page.getByText(ON, { exact: true })).toBeVisible();
  for (const [opens, closes] of [
    ["PLAN", "SECTION"],
    ["CAN'T", "CANCEL"],
    ["SCREEN", "CLOSE"],
  ] as const) {
    await key(cab.page, opens).click();
    await expect(key(cab.page, GOT)).toHaveCount(0);
    await expect(ground.page.getByText("NOT ON THE CAB'S SCREEN – USE HANDS", { exact: true })).toBeVisible();
    await key(cab.page, closes).click();
    await expect(ground.page.getByText(ON, { exact: true })).toBeVisible();
  }
  await key(ground.page, STOP).click();
  await expect(cab.page.getByRole("alert")).toContainText("RT pressed STOP");
  await expect(key(cab.page, GOT)).toHaveCount(0);
  await expect(ground.page.getByText(ON, { exact: true })).toHaveCount(0);
});

test("a stop, an ask and an entry without a word close whatever panel is open in the cab", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  const board = await crew.joins("SUPERVISOR", "PN");
  const alert = cab.page.getByRole("alert");
  await key(cab.page, "CAN'T").click();
  await expect(cab.page.getByRole("dialog")).toBeVisible();
  await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 20 * FOOT, y: 30 * FOOT } });
  await key(ground.page, "ASK EX-1 TO COME IN").click();
  await expect(cab.page.getByRole("dialog")).toHaveCount(0);
  await expect(alert).toContainText("RT ASKS TO COME IN AT P-1");
  await hold(cab.page, /^BUCKET DOWN/, async () => {
    await expect(key(ground.page, "I GO IN")).toBeVisible();
  });
  await key(cab.page, "SCREEN").click();
  await expect(cab.page.getByRole("dialog")).toBeVisible();
  await key(board.page, STOP).click();
  await expect(cab.page.getByRole("dialog")).toHaveCount(0);
  await expect(alert).toContainText("PN pressed STOP");
  // Opened while it stands, it stands over the panel; a further press closes that one, too.
  await key(cab.page, "SCREEN").click();
  await expect(cab.page.getByRole("dialog")).toContainText("PN pressed STOP");
  await key(ground.page, STOP).click();
  await expect(cab.page.getByRole("dialog")).toHaveCount(0);
});

test("a stop stands over an open panel of the ground's and of the supervisor's page, and what was typed stays", async ({
  crew,
}) => {
  const { ground, cab } = await crew.digs();
  const board = await crew.joins("SUPERVISOR", "PN");
  await ground.page.getByRole("button", { name: /^EX-1/ }).click();
  await key(board.page, "TARGETS").click();
  await key(board.page, "SET AN AIM").or(key(board.page, "SCREEN")).first().click();
  await key(cab.page, STOP).click();
  for (const page of [ground.page, board.page]) {
    const over = page.getByRole("dialog").getByRole("alert").filter({ hasText: "OW pressed STOP" });
    await expect(over).toBeInViewport({ ratio: 1 });
  }
  await key(ground.page, "CLOSE").click();
  await expect(ground.page.getByRole("dialog")).toHaveCount(0);
});

test("a second press on a stop that stands sounds again", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await key(ground.page, STOP).click();
  await expect(cab.page.getByRole("alert")).toContainText("RT pressed STOP");
  const buzzed = await buzzes(cab.page);
  // A touch and its click are one press: what comes at once after a press is not another.
  await expect
    .poll(async () => {
      await key(ground.page, STOP).click();
      return buzzed();
    })
    .toBeGreaterThan(0);
});

test("a cab that nobody has tapped says to everybody that it has no sound", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  const board = await crew.joins("SUPERVISOR", "PN");
  const said = /EX-1 HAS NO SOUND/;
  // The press that joined lets the page sound; a page that was loaded anew has had none.
  await cab.page.reload();
  await expect(key(cab.page, "NO SOUND YET: TAP ONCE")).toBeVisible();
  for (const page of [ground.page, board.page]) await expect(page.getByText(said).first()).toBeVisible();
  await key(cab.page, "CHECK ME").click();
  await expect(key(cab.page, "NO SOUND YET: TAP ONCE")).toHaveCount(0);
  for (const page of [ground.page, board.page]) await expect(page.getByText(said)).toHaveCount(0);
});

test("CHECK ME reaches the ground person from both machines, on whatever page", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  const other = await crew.joins("OPERATOR", "LG", "EX-2");
  await key(ground.page, "LASER").click();
  await key(other.page, "CHECK ME").click();
  const asks = (machine: string) => ground.page.getByRole("alert").filter({ hasText: `${machine} asks for a look` });
  await expect(asks("EX-2")).toBeVisible();
  await key(cab.page, "CHECK ME").click();
  for (const tab of ["READ", "LASER", "MARKS"]) {
    await key(ground.page, tab).click();
    for (const machine of ["EX-1", "EX-2"]) await expect(asks(machine)).toBeVisible();
  }
});

test("after a revision no page shows the old result as one that counts", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  // 105.00 − 5.02 = 99.98 ft, 0.02 under 100.00 and on grade.
  await sendsReading(ground.page, "5.02");
  await expect(call(cab.page, "GRADE")).toBeVisible();
  await key(ground.page, "READ AGAIN").click();
  await expect(ground.page.getByText("last −0.02", { exact: false })).toBeVisible();
  await crew.hub.say({
    kind: "revise_target",
    target: "PAD",
    grade: {
      shape: { kind: "flat", elevation: 100.2 * FOOT },
      stack: { surface: "top of slab", layers: [{ name: "gravel", thickness: FOOT / 2 }] },
      undercuts: [],
    },
    tolerance: { high: FOOT / 10, low: FOOT / 5 },
    why: "engineer's sketch",
  });
  const was = "was −0.02 before the change: shoot again";
  await expect(ground.page.getByText(was, { exact: false })).toBeVisible();
  await key(ground.page, "MARKS").click();
  await expect(ground.page.getByText(was, { exact: false })).toBeVisible();
  await key(ground.page, "PLAN").click();
  await expect(ground.page.locator("svg text").filter({ hasText: "P-1" })).toHaveText("P-1 AGAIN");
});

test("the cab says in one press that is held where it stands, and the ground asks by it; PLAN says it anew", async ({
  crew,
}) => {
  const { ground, cab } = await crew.digs();
  await crew.hub.say({ kind: "say_moved", machine: "EX-1" });
  await expect(cab.page.getByText("Nobody has said where this machine stands.")).toBeVisible();
  await key(ground.page, "NOT ENTERING – SHOOTING FROM OUTSIDE").click();
  await sendsReading(ground.page, "4.70");
  await expect(cab.page.getByRole("note")).toContainText("Nobody has said where this machine stands.");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await hold(cab.page, /^I STAND AT P-1/, async () => {
    await expect(cab.page.getByRole("button", { name: /^I STAND AT/ })).toHaveCount(0);
  });
  await expect(cab.page.getByRole("note")).toContainText("LOOK");
  await expect(cab.page.getByRole("note")).not.toContainText("Nobody has said");
  await key(ground.page, "READ AGAIN").click();
  await expect(ground.page.getByText("P-1 lies within the keep-out of EX-1.")).toBeVisible();
  // Pressed amiss: it is said anew, and the newest word counts.
  await key(cab.page, "PLAN").click();
  await key(cab.page, "WHERE I STAND").click();
  await cab.page.getByRole("dialog").getByRole("button", { name: "SPOT-1" }).click();
  // Far from the mark that it was called to: the number goes, and the plan says what was said last.
  await expect(cab.page.getByText("MACHINE MOVED", { exact: true })).toBeVisible();
  await key(cab.page, "PLAN").click();
  await expect(cab.page.getByText(/^near SPOT-1, said/)).toBeVisible();
  await expect(ground.page.getByText("P-1 lies within the keep-out of EX-1.")).toHaveCount(0);
});
