/** Whatever dies, the number goes: link, hub, script, sight of the page. The ground person is told. */
import type { Page } from "@playwright/test";
import { type Crew, call, expect, type Phone, sendsReading, test } from "./crew.ts";
import { inkOf, Watch } from "./watch.ts";

/** A cab that shows DOWN 3, and the phone that called it. */
async function showing(crew: Crew): Promise<{ ground: Phone; cab: Phone }> {
  const { ground, cab } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await expect(ground.page.getByText("ON THE CAB'S SCREEN", { exact: true })).toBeVisible();
  return { ground, cab };
}

const NO_LINK = `
  - main:
    - paragraph:
      - strong: NO LINK
      - text: WATCH THE GROUND PERSON
`;

async function isGone(page: Page): Promise<void> {
  await expect(call(page, "DOWN 3")).toBeHidden();
  await expect(page.getByRole("main")).toMatchAriaSnapshot(NO_LINK);
}

async function isTold(page: Page): Promise<void> {
  await expect(page.getByText("NOT ON THE CAB'S SCREEN – USE HANDS", { exact: true })).toBeVisible();
}

test("link cut: the number goes, the ground is told, and what is still live comes back", async ({ crew }) => {
  const { ground, cab } = await showing(crew);
  cab.link.cut();
  await isGone(cab.page);
  await isTold(ground.page);
  cab.link.mend();
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await expect(ground.page.getByText("ON THE CAB'S SCREEN", { exact: true })).toBeVisible();
});

test("hub killed: the number goes and both phones say so, until it runs again", async ({ crew }) => {
  const { ground, cab } = await showing(crew);
  await crew.hub.kill();
  await isGone(cab.page);
  await expect(ground.page.getByText("No link to the hub. Use hands.")).toBeVisible();
  await isTold(ground.page);
  await crew.hub.start();
  await expect(cab.page.getByRole("main")).not.toMatchAriaSnapshot(NO_LINK);
  await expect(ground.page.getByText("No link to the hub. Use hands.")).toBeHidden();
});

test("the style engine alone removes the number, four seconds after the last heartbeat", async ({ crew }) => {
  const { cab } = await showing(crew);
  // What runs without any script: the number's own layer fades out at the end of at most four seconds.
  const runs = await call(cab.page, "DOWN 3").evaluate((told) => {
    const found: { ends: number; fill: string; opacity: string }[] = [];
    for (let at: Element | null = told; at; at = at.parentElement) {
      for (const one of at.getAnimations()) {
        const effect = one.effect as KeyframeEffect;
        const last = effect.getKeyframes().at(-1);
        const timing = effect.getComputedTiming();
        found.push({ ends: Number(timing.endTime), fill: String(timing.fill), opacity: String(last?.opacity) });
      }
    }
    return found;
  });
  const removes = runs.filter((one) => one.opacity === "0" && one.fill !== "none" && one.ends <= 4_000);
  expect(removes, JSON.stringify(runs)).not.toEqual([]);
});

test("script frozen: the picture hides the number by itself, and the ground is told", async ({ crew }) => {
  const { ground, cab } = await showing(crew);
  // On a short phone GOT IT takes no row of its own: with and without the number all else stands in one place.
  await cab.page.setViewportSize({ width: 390, height: 660 });
  const watch = await Watch.on(cab.page);
  const told = await cab.page.locator("[data-number]").boundingBox();
  if (!told) throw new Error("The number stands nowhere");
  const shown = await watch.look();
  // What the same place looks like without the number: the link is cut, then whole again.
  cab.link.cut();
  await isGone(cab.page);
  const without = await watch.look();
  cab.link.mend();
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await expect(ground.page.getByText("ON THE CAB'S SCREEN", { exact: true })).toBeVisible();
  const compare = await crew.page();
  const between = await inkOf(compare, shown, without, told);
  expect(between, "with and without the number look alike").toBeGreaterThan(0.05);
  // Held at its next statement: no line of this page's script runs from here on.
  const debug = await cab.page.context().newCDPSession(cab.page);
  await debug.send("Debugger.enable");
  const held = new Promise((resolve) => debug.once("Debugger.paused", resolve));
  await debug.send("Debugger.pause");
  await held;
  await expect
    .poll(async () => inkOf(compare, await watch.look(), without, told), { timeout: 30_000 })
    .toBeLessThan(between / 4);
  await isTold(ground.page);
  await debug.send("Debugger.resume");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
});

test("page hidden: the ground is told at once, and again when it is seen", async ({ crew }) => {
  const { ground, cab } = await showing(crew);
  const turn = (state: "hidden" | "visible") =>
    cab.page.evaluate((to) => {
      // Chromium without a window never hides a page by itself; the page is told as a phone's browser tells it.
      Object.defineProperty(document, "visibilityState", { configurable: true, get: () => to });
      document.dispatchEvent(new Event("visibilitychange"));
    }, state);
  await turn("hidden");
  await isTold(ground.page);
  await turn("visible");
  await expect(ground.page.getByText("ON THE CAB'S SCREEN", { exact: true })).toBeVisible();
});
