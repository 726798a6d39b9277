/** Nothing typed is dropped in silence: what waits is asked about, what is left is offered, what is open asks before it is left. */
import type { Page } from "@playwright/test";
import { type Crew, call, comeIn, expect, FOOT, type Phone, sendsReading, test, typeRod } from "./crew.ts";

const key = (page: Page, name: string | RegExp) =>
  page.getByRole("button", typeof name === "string" ? { name, exact: true } : { name });

/** A phone that has typed DOWN 3 for P-1 without a link. */
async function offline(crew: Crew): Promise<{ ground: Phone; cab: Phone }> {
  const { ground, cab } = await crew.digs();
  ground.link.cut();
  await sendsReading(ground.page, "4.70");
  await expect(ground.page.getByText("1 NOT SENT – USE HANDS")).toBeVisible();
  return { ground, cab };
}

test("a reading that comes back within its time is asked about, and is a call only on SEND", async ({
  crew,
}, info) => {
  const { ground, cab } = await offline(crew);
  ground.link.mend();
  const asks = ground.page.getByRole("alert").filter({ hasText: "Does it still hold?" });
  await expect(asks).toContainText("P-1 4.70");
  await ground.page.screenshot({ path: info.outputPath("asks.png") });
  await expect(call(cab.page, "DOWN 3")).toHaveCount(0);
  await asks.getByRole("button", { name: "SEND", exact: true }).click();
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await expect(asks).toHaveCount(0);
});

test("DROP tells no cab and leaves a line in the log", async ({ crew }) => {
  const { ground, cab } = await offline(crew);
  ground.link.mend();
  await key(ground.page, "DROP").click();
  await expect(ground.page.getByText("DROPPED. No cab was told.")).toBeVisible();
  await expect
    .poll(async () => {
      const { lines } = await crew.hub.get("/api/log?kind=unsent_dropped");
      return lines.map((line: { english: string }) => line.english);
    })
    .toEqual(["Not sent, thrown away on the phone: P-1 SETUP-1 A 4.70 rod coarse"]);
  await expect(cab.page.getByText("NO CALL", { exact: true })).toBeVisible();
});

test("a phone that is removed keeps what waits, and the next person sends it as from paper", async ({
  crew,
}, info) => {
  const { ground, cab } = await offline(crew);
  const { device } = await ground.page.evaluate(() => JSON.parse(localStorage["rodcall.last"] ?? "{}").me);
  await crew.hub.say({ kind: "remove_phone", device });
  ground.link.mend();
  await expect(ground.page.getByRole("heading", { name: "Come in" })).toBeVisible();
  await ground.page.goto(await crew.hub.code("ground"));
  await ground.page.getByLabel("Name or initials").fill("JM");
  await key(ground.page, "IN").click();
  const left = key(ground.page, "1 WORD OF THIS PHONE NOT SENT");
  await left.click();
  const card = ground.page.getByRole("region", { name: /READING P-1/ });
  await expect(card).toContainText("RT");
  await ground.page.screenshot({ path: info.outputPath("left.png") });
  await card.getByRole("button", { name: "SEND AS FROM PAPER" }).click();
  await expect(left).toHaveCount(0);
  // It waits in the phone's outbox from then on.
  await expect
    .poll(async () => (await crew.hub.get("/api/log?kind=reading_taken")).lines)
    .toMatchObject([{ english: expect.stringContaining("FROM PAPER, read by RT"), by: "JM" }]);
  await expect(cab.page.getByText("NO CALL", { exact: true })).toBeVisible();
});

test("WRONG NUMBER takes the call away before the right one is typed, and another mark asks first", async ({
  crew,
}, info) => {
  const { ground, cab } = await crew.digs();
  const page = ground.page;
  await sendsReading(page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await key(page, "WRONG NUMBER").click();
  await expect(call(cab.page, "DOWN 3")).toHaveCount(0);
  await key(page, "Next mark").click();
  const asks = page.getByRole("dialog", { name: "P-1: not settled" });
  await expect(asks).toContainText("The cab has no number for this mark.");
  await page.screenshot({ path: info.outputPath("leaving.png") });
  await asks.getByRole("button", { name: "STAY AT THIS MARK" }).click();
  // Far from the first, and not compared with it: 105.00 − 5.00 is on grade.
  await sendsReading(page, "5.00");
  await expect(call(cab.page, "GRADE")).toBeVisible();
});

test("a question is still there after a look at another page, and another mark asks before it is left", async ({
  crew,
}) => {
  const { ground } = await crew.digs();
  const page = ground.page;
  await sendsReading(page, "5.00");
  await key(page, "READ AGAIN").click();
  await sendsReading(page, "3.90");
  const question = page.getByRole("alertdialog");
  await expect(question).toBeVisible();
  await key(page, "LASER").click();
  await key(page, "READ").click();
  await expect(question).toBeVisible();
  await key(page, "MARKS").click();
  await key(page, /^P-2/).click();
  const asks = page.getByRole("dialog", { name: "P-1: not settled" });
  await expect(asks).toContainText("has no answer");
  await asks.getByRole("button", { name: "LEAVE IT OPEN" }).click();
  await expect(question).toHaveCount(0);
  await expect(key(page, /^P-2/)).toBeVisible();
});

test("a dead SEND says what it waits for", async ({ crew }) => {
  const { ground } = await crew.digs();
  const page = ground.page;
  const send = key(page, "SEND");
  await expect(send).toBeDisabled();
  await expect(send).toContainText("Type the rod first.");
  await typeRod(page, "4.70");
  await expect(send).toBeEnabled();
  await expect(send).not.toContainText("Type");
});

test("a STOP that no hub takes says so on the phone and in the cab, and goes when the link is back", async ({
  crew,
}, info) => {
  const { ground, cab } = await crew.digs();
  for (const phone of [ground, cab]) {
    phone.link.cut();
    await phone.page.getByRole("button", { name: "STOP: every machine" }).first().click();
    await expect(phone.page.getByText("YOUR STOP IS NOT TAKEN")).toBeVisible();
    await phone.page.screenshot({ path: info.outputPath(`stop-${phone === cab ? "cab" : "ground"}.png`) });
  }
  ground.link.mend();
  cab.link.mend();
  await expect(ground.page.getByText("YOUR STOP IS NOT TAKEN")).toHaveCount(0);
  await expect(cab.page.getByText("YOUR STOP IS NOT TAKEN")).toHaveCount(0);
  await expect(cab.page.locator(".stop-screen")).toBeVisible();
});

test("a page that is loaded without a hub says STAY OUT and who was in", async ({ crew }, info) => {
  const { ground, cab } = await crew.digs();
  await crew.hub.say({ kind: "ask_in", machine: "EX-1", visit: "visit-of-truck" });
  const down = cab.page.getByRole("button", { name: /BUCKET DOWN/ });
  await down.hover();
  await cab.page.mouse.down();
  await expect(cab.page.getByText("TOLD TO COME IN").first()).toBeVisible();
  await cab.page.mouse.up();
  await crew.hub.say({ kind: "go_in", machine: "EX-1", visit: "visit-of-truck" });
  const remembers = (page: Page) =>
    page.evaluate(() => JSON.parse(localStorage["rodcall.last"] ?? "{}").inside?.length ?? 0);
  await expect.poll(() => remembers(ground.page)).toBe(1);
  await expect.poll(() => remembers(cab.page)).toBe(1);
  // The page's own files come from the browser's store, as they do on a phone; the hub answers nothing.
  for (const phone of [ground, cab]) {
    await phone.page.route("**/api/**", (route) => route.abort());
    await phone.page.reload();
  }
  await expect(ground.page.getByText("STAY OUT – USE HANDS")).toBeVisible();
  await expect(ground.page.getByText("truck IN AT EX-1")).toBeVisible();
  await expect(cab.page.getByText("truck IN. STAND STILL.")).toBeVisible();
  await ground.page.screenshot({ path: info.outputPath("no-hub.png") });
  await expect(ground.page.getByText("Asking the hub…")).toHaveCount(0);
});

test("an older page loads the newer one by itself, when nobody is in the middle of anything", async ({
  crew,
}) => {
  const { page } = await crew.scans("GROUND");
  let loads = 0;
  // The hub's page names another script than the one that runs here, until this page has been loaded anew.
  const newer = '<!doctype html><script type="module" src="/assets/index-newer.js"></script>';
  await page.route(
    (url) => url.pathname === "/",
    (route) => {
      if (route.request().isNavigationRequest()) loads++;
      return loads === 0 ? route.fulfill({ body: newer, contentType: "text/html" }) : route.continue();
    },
  );
  await comeIn(page, "GROUND", "RT");
  await page.evaluate(() => {
    // Chromium without a window never hides a page by itself; a page in a pocket is a good moment.
    Object.defineProperty(document, "visibilityState", { configurable: true, get: () => "hidden" });
  });
  await expect.poll(() => loads).toBe(1);
  await expect(page.getByRole("button", { name: "STOP: every machine" }).first()).toBeVisible();
});

test("a page of another build with a reading that waits asks before it sends, and is not loaded anew meanwhile", async ({
  crew,
}) => {
  const cab = await crew.joins("OPERATOR", "OW", "EX-1");
  const ground = await crew.scans("GROUND");
  const { page } = ground;
  let loads = 0;
  let upgraded = false;
  const newer = '<!doctype html><script type="module" src="/assets/index-newer.js"></script>';
  await page.route(
    (url) => url.pathname === "/",
    (route) => {
      if (route.request().isNavigationRequest()) loads++;
      if (loads > 0) return route.continue();
      return upgraded ? route.fulfill({ body: newer, contentType: "text/html" }) : route.abort();
    },
  );
  await comeIn(page, "GROUND", "RT");
  await crew.provesLaser();
  await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 300 * FOOT, y: 300 * FOOT } });
  await expect(page.getByText("ROD MUST READ")).toBeVisible();
  ground.link.cut();
  await sendsReading(page, "4.70");
  await expect(page.getByText("1 NOT SENT – USE HANDS")).toBeVisible();
  // The laptop comes back with newer pages.
  upgraded = true;
  ground.link.mend();
  const asks = page.getByRole("alert").filter({ hasText: "Does it still hold?" });
  await expect(asks).toContainText("P-1 4.70");
  // A page in a pocket would be loaded now, were nothing asked on it.
  await page.evaluate(() => {
    Object.defineProperty(document, "visibilityState", { configurable: true, get: () => "hidden" });
  });
  await expect(asks).toBeVisible();
  expect(loads).toBe(0);
  // Its person loads it: the newer page finds what waits, and asks as the older one did.
  await page.reload();
  await expect(asks).toContainText("P-1 4.70");
  await expect(cab.page.getByText("NO CALL", { exact: true })).toBeVisible();
  await asks.getByRole("button", { name: "SEND", exact: true }).click();
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
});
