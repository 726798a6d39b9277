/** REVIEW on the laptop: lanes, moments and phones stand in view together; the lanes and the keyboard move the replay; the address holds it. */
import type { Page } from "@playwright/test";
import { call, type Crew, expect, sendsReading, test } from "./crew.ts";
import { crowded, DESKS, LAPTOP } from "./fits.ts";

/** A day with a call, a stop and a laser in doubt, looked at on a laptop. */
async function looksBack(crew: Crew): Promise<Page> {
  const { ground, cab } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await cab.page.getByRole("button", { name: "GOT IT", exact: true }).click();
  await expect(ground.page.getByText("GOT IT PRESSED IN THE CAB", { exact: true })).toBeVisible();
  await crew.hub.say({ kind: "stop_all", why: "a truck in the swing" });
  await crew.hub.say({ kind: "say_bumped", set_up: "S1" });
  const { page } = await crew.joins("SUPERVISOR", "PN", null, LAPTOP);
  await page.getByRole("button", { name: "REVIEW", exact: true }).click();
  await expect(page.getByRole("heading", { name: "Out of the ordinary" })).toBeVisible();
  return page;
}

const part = (page: Page, name: string) => page.getByRole("button", { name, exact: true }).click();
const slider = (page: Page) => page.getByLabel("Time of the replay");
const noted = async (crew: Crew): Promise<number[]> =>
  (await crew.hub.get("/api/review")).exceptions.map((one: { said: { at: number } }) => one.said.at);
/** The moment is the step at it or the one before. */
const isAt = async (page: Page, at: number) =>
  expect.poll(async () => Math.abs(Number(await slider(page).inputValue()) - at)).toBeLessThan(250);

test("a replay begins at the first thing that was out of the ordinary, with lanes and phones in view together", async ({
  crew,
}) => {
  const page = await looksBack(crew);
  await part(page, "REPLAY");
  const [first = 0] = await noted(crew);
  await isAt(page, first);
  const cab = page.frameLocator('iframe[src="/replayed/operator"]').first();
  await expect(cab.locator(".key.stop, .stop-screen, main").first()).toBeVisible();
  for (const size of DESKS) {
    await page.setViewportSize(size);
    for (const what of [".lanes-at", ".replay-phone", ".moments .lines", ".legend"]) {
      for (const one of await page.locator(what).all()) {
        const box = await one.boundingBox();
        expect(box?.y, `${what} at ${size.width}`).toBeGreaterThanOrEqual(0);
        expect((box?.y ?? 0) + (box?.height ?? 0), `${what} at ${size.width}`).toBeLessThanOrEqual(size.height);
      }
    }
    // Half a phone's own size, and less only where it has to share 1024 px.
    const phone = await page.locator(".replay-phone").first().boundingBox();
    expect(phone?.height, `${size.width}`).toBeGreaterThanOrEqual(size.width < 1366 ? 315 : 373);
  }
});

test("the lanes move the replay by a press, by a finger and by the arrows, and say what each lane said then", async ({ crew }) => {
  const page = await looksBack(crew);
  await part(page, "REPLAY");
  const lanes = await slider(page).boundingBox();
  if (!lanes) throw new Error("no lanes");
  const { from, to } = await crew.hub.get("/api/review");
  await page.mouse.move(lanes.x + lanes.width * 0.25, lanes.y + 30);
  await page.mouse.down();
  await page.mouse.move(lanes.x + lanes.width * 0.75, lanes.y + 30, { steps: 4 });
  await page.mouse.up();
  const share = async () => (Number(await slider(page).inputValue()) - from) / (to - from);
  await expect.poll(share).toBeGreaterThan(0.7);
  await expect.poll(share).toBeLessThan(0.8);
  const before = Number(await slider(page).inputValue());
  await slider(page).press("ArrowRight");
  await expect(slider(page)).toHaveValue(String(before + 250));
  await slider(page).press("End");
  // At the end the machines stand by the stop.
  await expect(page.locator(".lanes-say li").first()).toHaveText("STOP");
});

test("the keyboard goes from one thing out of the ordinary to the next, to a mark, and searches", async ({ crew }) => {
  const page = await looksBack(crew);
  await page.keyboard.press("n");
  const times = await noted(crew);
  await isAt(page, times[0] ?? 0);
  await page.keyboard.press("n");
  await isAt(page, times[1] ?? 0);
  await page.keyboard.press("p");
  await isAt(page, times[0] ?? 0);
  await page.keyboard.press("m");
  const choice = page.getByRole("combobox", { name: "Moments" });
  await expect(choice).toBeFocused();
  await choice.selectOption("P-1");
  await expect(page.locator(".moments li").first()).toContainText("P-1");
  await page.locator(".moments").getByRole("button", { name: /DOWN 3/ }).first().click();
  await expect(page.frameLocator('iframe[src="/replayed/operator"]').first().getByRole("group", { name: /^DOWN 3\./ })).toBeVisible();
  await page.keyboard.press("/");
  const search = page.getByRole("searchbox", { name: "Words" });
  await expect(search).toBeFocused();
  await search.fill("got it");
  await expect(page.locator(".moments li")).toHaveCount(1);
  await search.fill("nothing of the kind");
  await expect(page.getByText("No moment fits.")).toBeVisible();
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: /^KEYS/ }).click();
  await expect(page.getByRole("dialog", { name: "Keys of the keyboard" })).toContainText("jump to a mark");
});

test("a reload, back and forward find the moment again", async ({ crew }) => {
  const page = await looksBack(crew);
  const at = (await noted(crew)).at(-1) ?? 0;
  await page.getByRole("button", { name: /LASER SETUP-1 IN DOUBT/ }).click();
  await isAt(page, at);
  await page.reload();
  await isAt(page, at);
  await page.goBack();
  await expect(page.getByRole("heading", { name: "Out of the ordinary" })).toBeVisible();
  await page.goForward();
  await isAt(page, at);
});

test("an entry of the log replays from there", async ({ crew }) => {
  const page = await looksBack(crew);
  await part(page, "LOG");
  await page.getByRole("combobox", { name: "What" }).selectOption("call_got");
  await page.locator(".log-rows tbody tr[data-seq]").first().click();
  await page.getByRole("button", { name: "REPLAY FROM HERE" }).click();
  const { calls } = await crew.hub.get("/api/review");
  await isAt(page, calls[0].got_at);
});

test("charts fill their width on the desk and say what their signs mean", async ({ crew }) => {
  const page = await looksBack(crew);
  await page.setViewportSize({ width: 1920, height: 1080 });
  await part(page, "PICTURES");
  const differences = page.getByRole("img", { name: "Final differences" });
  await expect(differences).toBeVisible();
  const room = (await page.locator(".pictures").boundingBox())?.width ?? 0;
  await expect.poll(async () => (await differences.boundingBox())?.width).toBeGreaterThan(room - 4);
  await expect(page.getByText("until GOT IT")).toBeVisible();
  // On paper it is as wide as its words can be read there.
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  expect((await differences.boundingBox())?.width).toBeLessThanOrEqual(900);
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  await expect.poll(async () => (await differences.boundingBox())?.width).toBeGreaterThan(room - 4);
});

test("nothing lies on anything else and nothing is cut off in any part", async ({ crew }) => {
  const page = await looksBack(crew);
  for (const language of ["English", "Español"]) {
    const names =
      language === "English"
        ? ["THE DAY", "REPLAY", "PICTURES", "HISTORIES", "WHO TOLD", "PAPER"]
        : ["EL DÍA", "REPETIR", "DIBUJOS", "HISTORIAS", "QUIÉN MANDÓ", "PAPEL"];
    for (const name of names) {
      await part(page, name);
      await expect(page.locator(".review .empty")).toHaveCount(0);
      for (const size of DESKS) {
        await page.setViewportSize(size);
        await expect.poll(() => crowded(page, ".review"), `${name} at ${size.width} px`).toEqual([]);
      }
    }
    await page.setViewportSize(LAPTOP.viewport);
    if (language === "Español") break;
    await page.getByRole("button", { name: "SCREEN", exact: true }).click();
    await page.getByRole("button", { name: "Español" }).click();
    await page.getByRole("button", { name: "CERRAR", exact: true }).click();
  }
});
