/** ALL STOP, from anyone to everyone; lifted by a supervisor with a reason. PAUSE and NEW TARGET withdraw the number. */
import type { Page } from "@playwright/test";
import { call, type Crew, expect, hold, type Phone, sendsReading, test } from "./crew.ts";

const STOP = "STOP: every machine";

interface Everyone {
  ground: Phone;
  cab: Phone;
  board: Phone;
}

async function everyone(crew: Crew): Promise<Everyone> {
  const board = await crew.joins("SUPERVISOR", "PN");
  return { ...(await crew.digs()), board };
}

async function stands({ ground, cab, board }: Everyone, by: string): Promise<void> {
  const screen = cab.page.getByRole("alert");
  await expect(screen).toContainText("STOP");
  await expect(screen).toContainText("EVERY MACHINE");
  await expect(screen).toContainText(`${by} pressed STOP`);
  await expect(screen).toContainText("Stand still, bucket down.");
  await expect(ground.page.getByText(`EX-1 STOPPED by ${by}`).first()).toBeVisible();
  const needs = board.page.getByRole("region", { name: "Needs somebody" });
  await expect(needs).toContainText(`EX-1 stopped by ${by}`);
  await expect(needs).toContainText(`EX-2 stopped by ${by}`);
}

/** Lifts the stop of a machine, with a reason, as the supervisor. */
async function lifts(page: Page, machine: string): Promise<void> {
  await page.getByRole("button", { name: `LIFT STOP ${machine}` }).click();
  const panel = page.getByRole("dialog", { name: `LIFT STOP: ${machine}` });
  const act = panel.getByRole("button", { name: "LIFT STOP" });
  await expect(act).toBeDisabled();
  await panel.getByLabel("What did you see before lifting it?").fill("cut is empty, eyes met");
  await act.click();
}

for (const [role, who, by] of [
  ["ground", "RT", (all: Everyone) => all.ground],
  ["operator", "OW", (all: Everyone) => all.cab],
  ["supervisor", "PN", (all: Everyone) => all.board],
] as const) {
  test(`STOP pressed by the ${role} stands on all three pages until a supervisor lifts it`, async ({ crew }) => {
    const all = await everyone(crew);
    await sendsReading(all.ground.page, "4.70");
    await expect(call(all.cab.page, "DOWN 3")).toBeVisible();
    await by(all).page.getByRole("button", { name: STOP }).click();
    await stands(all, who);
    await expect(call(all.cab.page, "DOWN 3")).toHaveCount(0);
    await lifts(all.board.page, "EX-1");
    await expect(all.cab.page.getByText("EVERY MACHINE")).toHaveCount(0);
    const lines = JSON.stringify(await crew.hub.get("/api/log?limit=200"));
    expect(lines).toContain("cut is empty, eyes met");
  });
}

test("STOP opens a near miss that knows what the hub knew; it stays open until the supervisor closes it", async ({
  crew,
}) => {
  const all = await everyone(crew);
  const board = all.board.page;
  await sendsReading(all.ground.page, "4.70");
  await expect(call(all.cab.page, "DOWN 3")).toBeVisible();
  await all.ground.page.getByRole("button", { name: STOP }).click();
  const needs = board.getByRole("region", { name: "Needs somebody" });
  await expect(needs).toContainText("NM-1: RT pressed ALL STOP. Say what happened.");
  await needs.getByRole("button", { name: "NEAR MISS" }).click();
  const panel = board.getByRole("dialog", { name: /^NM-1/ });
  await expect(panel).toContainText("EX-1");
  await expect(panel).toContainText("at E 300.0 N 300.0");
  await expect(panel).toContainText("DOWN 3");
  await expect(panel.getByRole("button", { name: "CLOSE IT" })).toBeDisabled();
  const ask = "What happened, and what was done about it?";
  await panel.getByLabel(ask).fill("driver on foot, sent behind the barricade");
  await panel.getByRole("button", { name: "ADD WORDS" }).click();
  await expect(needs).not.toContainText("NM-1");
  const open = board.getByRole("region", { name: "Near misses" });
  await expect(open).toContainText("NM-1");
  await open.getByRole("button", { name: "NEAR MISS NM-1" }).click();
  await expect(panel).toContainText("driver on foot, sent behind the barricade");
  await panel.getByLabel(ask).fill("drivers wait at the street");
  await panel.getByRole("button", { name: "CLOSE IT" }).click();
  await expect(open).toHaveCount(0);
});

test("a supervisor lifts one machine alone, or every one at once", async ({ crew }) => {
  const all = await everyone(crew);
  const board = all.board.page;
  const needs = board.getByRole("region", { name: "Needs somebody" });
  const press = async (by: Phone) => {
    await by.page.getByRole("button", { name: STOP }).click();
    await expect(needs).toContainText("EX-1 stopped by");
    await expect(needs).toContainText("EX-2 stopped by");
  };
  await press(all.ground);
  await lifts(board, "EX-2");
  await expect(needs).not.toContainText("EX-2 stopped");
  await expect(needs).toContainText("EX-1 stopped by RT");
  await expect(all.cab.page.getByRole("alert")).toContainText("EVERY MACHINE");
  await press(all.cab);
  await board.getByRole("button", { name: "LIFT STOP EX-1" }).click();
  const panel = board.getByRole("dialog", { name: "LIFT STOP: EX-1" });
  await panel.getByRole("button", { name: "ALL: EX-1, EX-2" }).click();
  await panel.getByLabel("What did you see before lifting it?").fill("both strips empty");
  await panel.getByRole("button", { name: "LIFT STOP", exact: true }).click();
  await expect(needs).not.toContainText("stopped by");
  await expect(all.cab.page.getByText("EVERY MACHINE")).toHaveCount(0);
});

test("a LIFT does not lift what was pressed while its words were typed", async ({ crew }) => {
  const all = await everyone(crew);
  const board = all.board.page;
  await all.ground.page.getByRole("button", { name: STOP }).click();
  await board.getByRole("button", { name: "LIFT STOP EX-1" }).click();
  const panel = board.getByRole("dialog", { name: "LIFT STOP: EX-1" });
  await panel.getByRole("button", { name: "ALL: EX-1, EX-2" }).click();
  await panel.getByLabel("What did you see before lifting it?").fill("cut is empty, eyes met");
  await all.cab.page.getByRole("button", { name: STOP }).click();
  await expect(board.getByRole("region", { name: "Needs somebody" })).toContainText("EX-1 stopped by OW");
  await panel.getByRole("button", { name: "LIFT STOP", exact: true }).click();
  await expect(board.getByText("OW pressed STOP after what this page showed.", { exact: false })).toBeVisible();
  await expect(all.cab.page.getByRole("alert")).toContainText("EVERY MACHINE");
});

test("STOP stands in the same corner of every page", async ({ crew }) => {
  const all = await everyone(crew);
  const places = [];
  for (const phone of [all.ground, all.cab, all.board]) {
    const box = await phone.page.getByRole("button", { name: STOP }).boundingBox();
    const size = phone.page.viewportSize();
    if (!box || !size) throw new Error("STOP stands nowhere");
    places.push({ right: size.width - box.x - box.width, bottom: size.height - box.y - box.height });
  }
  // A thumb finds it blind: the keys lie over one another, at the right edge and the lower edge.
  for (const place of places) {
    expect(place.right, JSON.stringify(places)).toBeLessThan(24);
    expect(place.bottom, JSON.stringify(places)).toBeLessThan(24);
  }
});

test("a check that fails pauses the cab until two benchmarks agree", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  // BM-2 must read 105.00 − 101.52 = 3.48; 3.40 is 0.08 off.
  const press = (name: string | RegExp) => ground.page.getByRole("button", { name }).click();
  await press("LASER");
  await press("CHECK SHOT");
  await press(/^BM-2/);
  const panel = ground.page.getByRole("dialog");
  for (const digit of "3.40") await panel.getByRole("button", { name: digit, exact: true }).click();
  await panel.getByRole("button", { name: "SEND", exact: true }).click();
  await expect(panel).toContainText("The laser is in doubt.");
  await expect(cab.page.getByText("PAUSE – LASER CHECK", { exact: true })).toBeVisible();
  await expect(call(cab.page, "DOWN 3")).toHaveCount(0);
  await panel.getByRole("button", { name: "CLOSE" }).click();
  await expect(ground.page.getByText("No calls until two benchmarks agree.")).toBeVisible();
});

test("a laser that was bumped pauses the cab; the key must be held", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await ground.page.getByRole("button", { name: "LASER" }).click();
  await hold(ground.page, /^IT WAS BUMPED/, async () => {
    await expect(cab.page.getByText("PAUSE – LASER CHECK", { exact: true })).toBeVisible();
  });
  await expect(ground.page.getByText("RT saw it move")).toBeVisible();
});

test("a revised target withdraws the number until the operator has seen it", async ({ crew }) => {
  const all = await everyone(crew);
  await sendsReading(all.ground.page, "4.70");
  await expect(call(all.cab.page, "DOWN 3")).toBeVisible();
  const board = all.board.page;
  await board.getByRole("button", { name: "TARGETS" }).click();
  await board.getByRole("button", { name: "REVISE PAD" }).click();
  await board.getByLabel("Elevation", { exact: true }).fill("100.30");
  await board.getByRole("button", { name: "LOOK AT IT FIRST" }).click();
  await board.getByLabel("Why? It goes into the log.").fill("engineer's sketch of this morning");
  await board.getByRole("button", { name: "PUT IN FORCE" }).click();
  await expect(all.cab.page.getByText("NEW TARGET", { exact: true })).toBeVisible();
  await expect(call(all.cab.page, "DOWN 3")).toHaveCount(0);
  await expect(all.ground.page.getByText("TARGET CHANGED – REMOVED", { exact: true })).toBeVisible();
  await all.ground.page.getByRole("button", { name: "READ AGAIN" }).click();
  await expect(all.ground.page.getByText("EX-1 has not seen the new PAD")).toBeVisible();
  await all.cab.page.getByRole("button", { name: "SEEN", exact: true }).click();
  await expect(all.cab.page.getByText("NEW TARGET", { exact: true })).toHaveCount(0);
  await expect(all.ground.page.getByText("EX-1 has not seen the new PAD")).toHaveCount(0);
});

test("STOP counts from the first moment of a page, as after a reload", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  // The page's own running clock stands at its beginning, however slow this machine is.
  await ground.page.addInitScript(() => {
    performance.now = () => 300;
  });
  await ground.page.reload();
  await ground.page.getByRole("button", { name: STOP }).click();
  await expect(cab.page.getByRole("alert")).toContainText("RT pressed STOP");
});

test("on the smallest phone BUCKET DOWN stands whole under STOP, in both languages, and is held", async ({ crew }) => {
  const { cab } = await crew.digs({ viewport: { width: 360, height: 740 } });
  await crew.hub.say({ kind: "stop_all", why: "somebody in the cut" });
  const down = cab.page.getByRole("button", { name: /^(BUCKET DOWN|CUCHARÓN ABAJO)/ });
  await expect(down).toBeInViewport({ ratio: 1 });
  await cab.page.getByRole("button", { name: "SCREEN" }).click();
  await cab.page.getByRole("button", { name: "Español" }).click();
  await cab.page.getByRole("button", { name: "CERRAR" }).click();
  await expect(down).toBeInViewport({ ratio: 1 });
  await expect(cab.page.getByRole("button", { name: "ENTENDIDO" })).toHaveCount(0);
  await hold(cab.page, /^CUCHARÓN ABAJO/, async () => {
    await expect(down).toHaveCount(0);
  });
});

test("STOP on a frozen link: the phone that pressed says that nobody has it, and what became of it when it is through", async ({
  crew,
}, info) => {
  const all = await everyone(crew);
  const { ground, cab, board } = all;
  const presses = async () => (await crew.hub.get("/api/log?kind=stopped")).lines.length;
  for (const [phone, who, told] of [
    [ground, "RT", board],
    [cab, "OW", ground],
  ] as const) {
    const before = await presses();
    // Both ends believe in the line: no error tells the page that its word went nowhere.
    phone.link.freeze();
    await phone.page.getByRole("button", { name: STOP }).first().click();
    const not = phone.page.getByRole("alert").filter({ hasText: "YOUR STOP IS NOT TAKEN – SHOUT – USE HANDS" });
    await expect(not).toBeInViewport({ ratio: 1 });
    await phone.page.screenshot({ path: info.outputPath(`frozen-${who}.png`) });
    expect(await presses()).toBe(before);
    phone.link.mend();
    await expect(not).toHaveCount(0);
    const stands = phone.page.getByRole("alert").filter({ hasText: `${who} pressed STOP` });
    await expect(stands.first()).toBeVisible();
    await expect(told.page.getByText(new RegExp(`EX-1 stopped by ${who}`, "i")).first()).toBeVisible();
    // Said again and again while nothing came back, it is one press.
    expect(await presses()).toBe(before + 1);
  }
});
