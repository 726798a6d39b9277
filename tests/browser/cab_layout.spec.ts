/** The cab's page in every state and hold: millimetres of its number, STOP in its corner, nothing over another, each key in reach. */
import { Altered } from "./altered.ts";
import { apart, faults, look, SIZES } from "./cab_look.ts";
import { STATES } from "./cab_states.ts";
import { call, expect, sendsReading, test } from "./crew.ts";
import { OTHERS } from "./languages.ts";

test("each state at each size", async ({ crew }) => {
  test.slow();
  const cab = await Altered.cab(crew, { width: 390, height: 844 });
  const wrong: string[] = [];
  const corners = new Map<number, string>();
  for (const size of SIZES) {
    await cab.page.setViewportSize(size);
    for (const [name, state] of Object.entries(STATES)) {
      await cab.show(state.view());
      const seen = await look(cab.page);
      wrong.push(...faults(state, seen, size).map((what) => `${name} ${size.width}×${size.height}: ${what}`));
      // The same corner and the same size in every state.
      const corner = JSON.stringify(seen.stop);
      const before = corners.get(size.width) ?? corner;
      corners.set(size.width, before);
      if (before !== corner) wrong.push(`${name} ${size.width}×${size.height}: STOP at ${corner}, elsewhere ${before}`);
    }
  }
  expect(wrong).toEqual([]);
});

test("UP is as large as DOWN, and what is said of it is smaller", async ({ crew }) => {
  const cab = await Altered.cab(crew, { width: 390, height: 844 });
  const cap = async (name: string, what: string) => {
    await cab.show(STATES[name]?.view() ?? {});
    return cab.page.locator(what).evaluate((one) => Number.parseFloat(getComputedStyle(one).fontSize));
  };
  for (const size of SIZES) {
    await cab.page.setViewportSize(size);
    const [down, up] = [await cap("hand-dig", ".number"), await cap("up-4", ".number")];
    expect(up, `${size.width}`).toBeGreaterThan(0.9 * down);
    expect(await cap("up-4", ".warn")).toBeLessThan((await cap("up-4", ".word")) / 1.2);
  }
});

for (const { folder, name: called } of OTHERS) {
  test(`the same in ${called}: nothing is cut, covered or out of reach`, async ({ crew }) => {
    test.slow();
    const cab = await Altered.cab(crew, { width: 360, height: 740 });
    await cab.page.getByRole("button", { name: "SCREEN", exact: true }).click();
    await cab.page.getByRole("button", { name: called }).click();
    await expect(cab.page.locator("html")).toHaveAttribute("lang", folder);
    const panel = cab.page.getByRole("dialog");
    // CLOSE in its own word: the key before STOP.
    await panel.getByRole("button").nth(-2).click();
    await expect(panel).toBeHidden();
    const wrong: string[] = [];
    for (const size of SIZES.filter((one) => one.width === 360 || one.height === 360)) {
      await cab.page.setViewportSize(size);
      for (const [name, state] of Object.entries(STATES)) {
        await cab.show(state.view());
        const seen = await look(cab.page);
        const { keys: _english, ...rest } = state;
        wrong.push(...faults(rest, seen, size).map((what) => `${name} ${size.width}: ${what}`));
      }
    }
    expect(wrong).toEqual([]);
  });
}

test("upside down a section shows which side is up: the ground's last edge is solid, the sky's is not", async ({
  crew,
}) => {
  const cab = await Altered.cab(crew, { width: 390, height: 844 });
  for (const name of ["down-3", "up-4", "grade"]) {
    await cab.show(STATES[name]?.view() ?? {});
    const edges = await cab.page.locator(".section").evaluate((section) => {
      const [first, last] = [section.firstElementChild, section.lastElementChild];
      const ink = (one: Element | null) => (one ? getComputedStyle(one).backgroundColor : "");
      const gap = section.getBoundingClientRect().bottom - (last?.getBoundingClientRect().bottom ?? 0);
      return { sky: ink(first), ground: ink(last), gap };
    });
    expect(edges, name).toEqual({ sky: "rgba(0, 0, 0, 0)", ground: "rgb(0, 0, 0)", gap: 0 });
  }
});

test("text spacing, a text of twice the size, forced colours and no motion lose nothing", async ({ crew }) => {
  const cab = await Altered.cab(crew, { width: 390, height: 844 });
  const { page } = cab;
  const size = SIZES.find((one) => one.width === 390);
  if (!size) throw new Error("no such size");
  // WCAG 2.2, 1.4.12.
  await page.evaluate(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(
      "* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; } p { margin-bottom: 2em !important; }",
    );
    document.adoptedStyleSheets = [sheet];
  });
  for (const name of ["down-3", "down-3half", "up-4", "inches", "look-strip"]) {
    await cab.show(STATES[name]?.view() ?? {});
    const seen = await look(page);
    expect(seen.number?.whole, `${name} with spaced text`).toBe(true);
    expect([seen.stopCovered, seen.tickCovered, seen.over]).toEqual([false, false, 0]);
  }
  await page.evaluate(() => {
    document.adoptedStyleSheets = [];
  });
  // A page that is drawn twice as large has half the pixels (1.4.4); 320 px stand in the table above (1.4.10).
  await page.setViewportSize({ width: 195, height: 422 });
  for (const name of ["down-3", "up-4", "stop", "asks"]) {
    await cab.show(STATES[name]?.view() ?? {});
    const seen = await look(page);
    expect([seen.stopCovered, seen.tickCovered, seen.over], name).toEqual([false, false, 0]);
    if (seen.number) expect(seen.number.cap * 2 * size.mm, name).toBeGreaterThan(20);
    for (const key of STATES[name]?.keys ?? []) {
      const found = page.getByRole("button", { name: key }).first();
      await found.scrollIntoViewIfNeeded();
      await expect(found).toBeInViewport({ ratio: 0.9 });
    }
  }
  await page.setViewportSize(size);
  await page.emulateMedia({ forcedColors: "active" });
  await cab.show(STATES["up-4"]?.view() ?? {});
  const kept = await page.evaluate(() => {
    const of = (name: string) => {
      const one = document.querySelector(name);
      return one ? getComputedStyle(one) : null;
    };
    const paper = of("body")?.backgroundColor;
    return {
      stop: of(".key.stop")?.backgroundColor !== paper && of(".key.stop")?.clipPath !== "none",
      line: of(".target-line")?.backgroundColor !== paper,
      hatch: of(".soil .hatch")?.backgroundImage !== "none",
      tick: of(".tick i")?.backgroundColor !== paper,
    };
  });
  expect(kept).toEqual({ stop: true, line: true, hatch: true, tick: true });
  await page.emulateMedia({ forcedColors: "none", reducedMotion: "reduce" });
  await cab.show(STATES.stop?.view() ?? {});
  const moves = await page.evaluate(() => ({
    hatch: getComputedStyle(document.querySelector(".stop-screen") as Element, "::before").animationName,
    // What takes an old number away is no decoration: it runs.
    living: getComputedStyle(document.querySelector(".living") as Element).animationName.startsWith("gone-"),
  }));
  expect(moves).toEqual({ hatch: "none", living: true });
});

test("one place tells a reader each call, and the title says what stands without its number", async ({ crew }) => {
  const cab = await Altered.cab(crew, { width: 390, height: 844 });
  const heard = cab.page.locator(".cab > [role=status]");
  await cab.show(STATES["down-3"]?.view() ?? {});
  const place = await heard.elementHandle();
  await expect(heard).toContainText("DOWN 3");
  await expect(cab.page).toHaveTitle("CALL · EX-1 · OPERATOR · Rodcall");
  await cab.show(STATES["up-4"]?.view() ?? {});
  await expect(heard).toContainText("UP 4");
  expect(await heard.evaluate((now, before) => now === before, place)).toBe(true);
  await cab.show(STATES.stop?.view() ?? {});
  await expect(heard).toContainText("STOP");
  await expect(cab.page).toHaveTitle("STOP · EX-1 · OPERATOR · Rodcall");
});

test("all of CAN'T, and BUCKET DOWN before anybody gets out, is in reach without scrolling, in both holds", async ({
  crew,
}) => {
  const cab = await Altered.cab(crew, { width: 360, height: 740 });
  await cab.show(STATES["down-3"]?.view() ?? {});
  const dialog = cab.page.getByRole("dialog");
  for (const size of SIZES.filter((one) => one.width === 360 || one.height === 360)) {
    await cab.page.setViewportSize(size);
    await cab.page.getByRole("button", { name: "CAN'T", exact: true }).click();
    await expect(dialog.getByRole("button", { name: "PIPE", exact: true })).toBeVisible();
    const keys = await dialog.getByRole("button").all();
    expect(keys.length).toBeGreaterThan(12);
    for (const one of keys) await expect(one).toBeInViewport({ ratio: 1 });
    expect((await look(cab.page)).keys.filter((one) => one.cut).map((one) => one.name)).toEqual([]);
    const { keys: seen } = await look(cab.page);
    const stop = await dialog.locator(".key.stop").boundingBox();
    if (!stop) throw new Error("STOP stands nowhere");
    const box = { left: stop.x, top: stop.y, right: stop.x + stop.width, bottom: stop.y + stop.height };
    const inside = seen.filter((one) => !one.covered);
    for (const one of inside) expect(apart(one.box, box) * size.mm, one.name).toBeGreaterThan(5.9);
    await dialog.getByRole("button", { name: "CANCEL" }).click();
    await cab.page.getByRole("button", { name: "SCREEN", exact: true }).click();
    await expect(dialog.getByRole("button", { name: /^BUCKET DOWN/ })).toBeInViewport({ ratio: 1 });
    await cab.page.keyboard.press("Escape");
  }
});

test("on a short phone that nobody has tapped, TAP ONCE stands in the row of keys and no word runs over its key", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await cab.page.setViewportSize({ width: 390, height: 660 });
  await sendsReading(ground.page, "4.70");
  await cab.page.reload();
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await expect(cab.page.getByRole("button", { name: "NO SOUND YET: TAP ONCE" })).toBeVisible();
  const keys = cab.page.locator(".cab-keys .key");
  await expect(keys).toHaveCount(5);
  const over = await keys.evaluateAll((all) =>
    all.filter((key) => key.scrollWidth > key.clientWidth + 1).map((key) => key.textContent),
  );
  expect(over).toEqual([]);
});
