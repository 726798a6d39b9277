/** The supervisor's desk: its shell at 1024 px and wider, measured; phones and tablets keep what they had. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "@playwright/test";
import { expect, sendsReading, test } from "./crew.ts";

/** A laptop's screens: what lies under the hand is a pointer and no finger. */
const DESKS = [
  { width: 1024, height: 768 },
  { width: 1366, height: 768 },
  { width: 1920, height: 1080 },
];
const LAPTOP = { viewport: { width: 1366, height: 768 }, hasTouch: false };
/** 6 mm at 0.166 to 0.185 mm to the CSS pixel, as round STOP on a phone. */
const APART = 32;

const PAGES = ["NOW", "LOG", "CODES", "TARGETS", "ACCOUNT", "REVIEW", "SITE", "DAY"];

interface Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

/** The boxes of all that these words of CSS find and that has a size. */
async function boxes(page: Page, of: string): Promise<Box[]> {
  return page.evaluate(
    (which) =>
      [...document.querySelectorAll(which)]
        .map((one) => one.getBoundingClientRect())
        .filter(({ width, height }) => width > 0 && height > 0)
        .map(({ left, top, right, bottom }) => ({ left, top, right, bottom })),
    of,
  );
}

/** Keys that lie nearer to STOP than a hand may slip, by their words. */
async function nearStop(page: Page): Promise<string[]> {
  return page.evaluate((apart) => {
    const stop = document.querySelector(".frame > nav .key.stop")?.getBoundingClientRect();
    if (!stop) return ["no STOP"];
    return [...document.querySelectorAll<HTMLElement>(".key:not(.stop), input, select, a[href]")]
      .filter((one) => {
        const { left, top, right, bottom, width } = one.getBoundingClientRect();
        const x = Math.max(left - stop.right, stop.left - right, 0);
        const y = Math.max(top - stop.bottom, stop.top - bottom, 0);
        return width > 0 && Math.hypot(x, y) < apart;
      })
      .map((one) => one.textContent ?? "");
  }, APART);
}

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** The grave faults that axe finds. */
async function graveFaults(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: { run(): Promise<{ passes: unknown[]; violations: { id: string; impact: string; nodes: { html: string }[] }[] }> };
    };
    const { passes, violations } = await axe.run();
    // An axe that has looked at nothing finds nothing.
    if (passes.length < 5) return [`axe held only ${passes.length} rules against this page`];
    return violations
      .filter((one) => one.impact === "serious" || one.impact === "critical")
      .map((one) => `${one.id}: ${one.nodes.map((node) => node.html.slice(0, 200)).join(" ")}`);
  });
}

test("the desk has its names at the side, STOP in its corner with nothing round it, and the sign of life in sight, on every page", async ({
  crew,
}) => {
  test.slow();
  const { page } = await crew.joins("SUPERVISOR", "PN", null, LAPTOP);
  const { ground } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  for (const name of PAGES) {
    await page.getByRole("button", { name, exact: true }).click();
    await expect(page.getByText(/^(Asking the hub|Preguntando)/)).toHaveCount(0);
    for (const size of DESKS) {
      await page.setViewportSize(size);
      const where = `${name} at ${size.width}`;
      const [stop] = await boxes(page, ".frame > nav .key.stop");
      expect(stop && size.width - stop.right, where).toBe(10);
      expect(stop && size.height - stop.bottom, where).toBe(8);
      expect(stop && stop.right - stop.left, where).toBe(84);
      expect(stop && stop.bottom - stop.top, where).toBe(80);
      expect(await nearStop(page), where).toEqual([]);
      const [body] = await boxes(page, ".body");
      const tabs = await boxes(page, "nav .tab");
      expect(tabs.length, where).toBeGreaterThanOrEqual(PAGES.length);
      for (const tab of tabs) {
        expect(tab.left, where).toBeGreaterThanOrEqual(body?.right ?? 0);
        expect(tab.bottom - tab.top, where).toBeGreaterThanOrEqual(36);
        expect(tab.bottom - tab.top, where).toBeLessThanOrEqual(40);
        expect(tab.bottom, where).toBeLessThanOrEqual((stop?.top ?? 0) - APART);
      }
      const [tick] = await boxes(page, ".top > .tick");
      expect(tick && size.width - tick.right, where).toBeLessThanOrEqual(16);
      expect(tick?.top, where).toBeLessThanOrEqual(20);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(wide, where).toBeLessThanOrEqual(0);
    }
    await page.setViewportSize(LAPTOP.viewport);
  }
});

/** Keys whose words run over their edge, and keys that lie on each other, by their words. */
async function cutOrOver(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    const keys = [...document.querySelectorAll<HTMLElement>(".key, .site-row")].filter((one) => one.offsetWidth > 0);
    const inSight = (box: DOMRect, one: HTMLElement) => {
      // What is pushed out of its list's sight lies on nothing.
      for (let at = one.parentElement; at; at = at.parentElement) {
        if (getComputedStyle(at).overflowY === "visible") continue;
        const room = at.getBoundingClientRect();
        if (box.bottom <= room.top + 1 || box.top >= room.bottom - 1) return false;
      }
      return true;
    };
    for (const key of keys) {
      if (key.scrollWidth > key.clientWidth + 1) found.push(`cut: ${key.textContent}`);
    }
    const boxes = keys.map((one) => ({ one, box: one.getBoundingClientRect() })).filter(({ one, box }) => inSight(box, one));
    boxes.forEach(({ one, box }, i) => {
      for (const other of boxes.slice(i + 1)) {
        if (one.contains(other.one) || other.one.contains(one)) continue;
        const b = other.box;
        // The head of a list lies over what is pushed under it.
        if (one.closest("header, h2") || other.one.closest("header, h2")) continue;
        const over = box.left < b.right - 1 && b.left < box.right - 1 && box.top < b.bottom - 1 && b.top < box.bottom - 1;
        if (over) found.push(`${one.textContent} on ${other.one.textContent}`);
      }
    });
    return found;
  });
}

for (const [tongue, pages] of [
  ["English", PAGES],
  ["Español", ["AHORA", "REGISTRO", "CÓDIGOS", "RASANTES", "CUENTAS", "REVISAR", "OBRA"]],
] as const) {
  test(`on the desk no key is cut and none lies on another, and axe finds nothing grave, ${tongue}`, async ({ crew }) => {
    test.slow();
    const { page } = await crew.joins("SUPERVISOR", "PN", null, LAPTOP);
    const { ground } = await crew.digs();
    await sendsReading(ground.page, "4.70");
    if (tongue === "Español") {
      await page.getByRole("button", { name: "SCREEN", exact: true }).click();
      await page.getByRole("button", { name: tongue }).click();
      await page.getByRole("button", { name: "CERRAR", exact: true }).click();
    }
    for (const name of pages) {
      await page.getByRole("button", { name, exact: true }).click();
      await expect(page.getByText(/^(Asking the hub|Preguntando)/)).toHaveCount(0);
      for (const size of DESKS) {
        await page.setViewportSize(size);
        expect(await cutOrOver(page), `${name} at ${size.width}`).toEqual([]);
      }
      await page.setViewportSize(LAPTOP.viewport);
      expect(await graveFaults(page), name).toEqual([]);
    }
  });
}

test("on the desk what must be seen lies over an open panel, whose veil lets no press through", async ({ crew }) => {
  const { page } = await crew.joins("SUPERVISOR", "PN", null, LAPTOP);
  await crew.digs();
  await page.getByRole("button", { name: "SCREEN", exact: true }).click();
  const panel = page.getByRole("dialog", { name: "SCREEN" });
  await expect(panel).toBeVisible();
  await crew.hub.say({ kind: "stop_all", why: "somebody in the cut" });
  await expect(panel.getByRole("alert")).toContainText("STOP");
  // Behind the veil stands NOW; a press on it reaches the sheet and nothing else.
  for (const [x, y] of [
    [60, 60],
    [300, 400],
    [580, 740],
  ] as const) {
    const hit = await page.evaluate(([x, y]) => document.elementFromPoint(x, y)?.className, [x, y] as const);
    expect(hit, `${x}, ${y}`).toBe("panel");
  }
  const [sheet] = await boxes(page, ".panel");
  const [stop] = await boxes(page, ".panel .key.stop");
  const [tick] = await boxes(page, ".panel .tick");
  expect(stop && LAPTOP.viewport.width - stop.right).toBe(10);
  expect(stop && LAPTOP.viewport.height - stop.bottom).toBe(8);
  expect(sheet?.right).toBe(LAPTOP.viewport.width);
  expect(tick && LAPTOP.viewport.width - tick.right).toBeLessThanOrEqual(16);
  await page.keyboard.press("Escape");
  await expect(panel).toHaveCount(0);
});

test("a tablet and a phone keep the row of names at the foot", async ({ crew }) => {
  const { page } = await crew.joins("SUPERVISOR", "PN", null, { viewport: { width: 820, height: 1180 } });
  for (const size of [
    { width: 1023, height: 768 },
    { width: 820, height: 1180 },
    { width: 390, height: 844 },
  ]) {
    await page.setViewportSize(size);
    const [body] = await boxes(page, ".body");
    const [tab] = await boxes(page, "nav .tab");
    expect(tab?.top, `${size.width}`).toBeGreaterThanOrEqual(body?.bottom ?? size.height);
    expect((tab?.bottom ?? 0) - (tab?.top ?? 0), `${size.width}`).toBeGreaterThanOrEqual(80);
  }
});
