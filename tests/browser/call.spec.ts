/** A reading's way: typed, sent, on the cab's screen, seen; asked about when it does not fit; taken back. */
import type { Page } from "@playwright/test";
import { call, expect, sendsReading, test, typeRod } from "./crew.ts";

/** Where a piece of text stands against the drawing of the soil: wholly below it, or wholly above it. */
async function side(page: Page, text: string): Promise<"below" | "above" | "across"> {
  const main = page.getByRole("main");
  const [told, soil] = await Promise.all([
    main.getByText(text, { exact: true }).boundingBox(),
    main.locator("svg polyline").boundingBox(),
  ]);
  if (!told || !soil) throw new Error(`${text} or the soil stands nowhere`);
  if (told.y >= soil.y + soil.height) return "below";
  return told.y + told.height <= soil.y ? "above" : "across";
}

/** Presses READ AGAIN, or NEXT MARK, and waits for the keypad. */
async function goesOn(page: Page, key: RegExp): Promise<void> {
  await page.getByRole("button", { name: key }).click();
  await expect(page.getByRole("textbox", { name: "Type the rod" })).toBeVisible();
}

test("what will be said stands in words before it is sent", async ({ crew }) => {
  const { ground } = await crew.digs();
  // 105.00 − 4.70 = 100.30 ft, 0.30 over 100.00 (derived by hand).
  // The rod at grade: 105.00 − 100.00.
  await expect(ground.page.getByText("ROD MUST READ").locator("..")).toContainText("5.00");
  await typeRod(ground.page, "4.70");
  const said = ground.page.locator(".echo p");
  await expect(said).toHaveText(["HIGH 0.30 ft", "→ EX-1: DOWN 3"]);
});

test("a high spot says DOWN below the line, and GOT IT comes back to the ground", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  expect(await side(cab.page, "3")).toBe("below");
  expect(await side(cab.page, "DOWN")).toBe("below");
  await expect(ground.page.getByText("ON THE CAB'S SCREEN", { exact: true })).toBeVisible();
  await cab.page.getByRole("button", { name: "GOT IT" }).click();
  await expect(cab.page.getByRole("button", { name: "YOU HAVE IT" })).toBeVisible();
  await expect(ground.page.getByText("GOT IT PRESSED IN THE CAB", { exact: true })).toBeVisible();
});

test("a low spot says UP above the line, and grade stands between", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  // 105.00 − 5.40 = 99.60 ft, 0.40 under.
  await sendsReading(ground.page, "5.40");
  await expect(call(cab.page, "UP 4")).toBeVisible();
  expect(await side(cab.page, "4")).toBe("above");
  expect(await side(cab.page, "UP")).toBe("above");
  await goesOn(ground.page, /^NEXT MARK/);
  // 105.00 − 5.02 = 99.98 ft: within a tenth high and two tenths low.
  await sendsReading(ground.page, "5.02");
  await expect(call(cab.page, "GRADE")).toBeVisible();
  await expect(cab.page.getByText("UP", { exact: true })).toHaveCount(0);
});

test("from a foot on the number says FEET", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  // 105.00 − 3.60 = 101.40 ft, 1.40 over.
  await sendsReading(ground.page, "3.60");
  await expect(call(cab.page, "DOWN 1.4 FEET")).toBeVisible();
  await expect(cab.page.getByText("FEET", { exact: true })).toBeVisible();
});

test("DOWN, UP and GRADE are told apart by the picture's geometry, not by a hue", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  const pictures: Record<string, string> = {};
  for (const [reading, line] of [
    ["4.70", "DOWN 3"],
    ["5.40", "UP 4"],
    ["5.02", "GRADE"],
  ] as const) {
    await sendsReading(ground.page, reading);
    await expect(call(cab.page, line)).toBeVisible();
    const outlines = cab.page.getByRole("main").locator("svg polyline");
    const drawn = await outlines.evaluateAll((all) => all.map((one) => one.getAttribute("points")));
    pictures[line] = drawn.join(" ");
    // No colour but black, white and grey in what the operator reads: every hue on a dig means a buried line.
    const hues = await cab.page.getByRole("main").evaluate((main) => {
      const said = [...main.querySelectorAll("*")].flatMap((one) => {
        const style = getComputedStyle(one);
        return [style.color, style.backgroundColor, style.borderTopColor, style.stroke, style.fill];
      });
      return said.filter((one) => {
        const found = /^rgba?\((\d+), (\d+), (\d+)(?:, ([\d.]+))?\)$/.exec(one);
        if (!found || found[4] === "0") return false;
        const [red, green, blue] = found.slice(1, 4).map(Number) as [number, number, number];
        return Math.max(red, green, blue) - Math.min(red, green, blue) > 24;
      });
    });
    expect(hues, line).toEqual([]);
    if (line !== "GRADE") await goesOn(ground.page, /^NEXT MARK/);
  }
  expect(new Set(Object.values(pictures)).size).toBe(3);
  expect(pictures["DOWN 3"]).not.toBe("");
  expect(pictures["UP 4"]).not.toBe("");
  expect(pictures.GRADE).toBe("");
});

test("low after high on a receiver is asked about, and the answer is called", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  const press = (name: string) => ground.page.getByRole("button", { name, exact: true }).click();
  await ground.page.getByRole("button", { name: /^EX-1/ }).click();
  await press("RECEIVER");
  await press("CLOSE");
  for (const key of ["HIGH", "3", "SEND"]) await press(key);
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await goesOn(ground.page, /^READ AGAIN/);
  for (const key of ["LOW", "4", "SEND"]) await press(key);
  const card = ground.page.getByRole("alertdialog");
  await expect(card).toContainText("It was HIGH here and now it is LOW.");
  // Nothing has gone to the cab meanwhile: the number stands as it was called.
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await card.getByRole("button", { name: "LOW 4 is right" }).click();
  await expect(call(cab.page, "UP 4")).toBeVisible();
});

test("a foot read wrong is asked about as two tiles alike in size", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await goesOn(ground.page, /^READ AGAIN/);
  await sendsReading(ground.page, "3.70");
  const card = ground.page.getByRole("alertdialog");
  await expect(card).toContainText("3.70 would mean the ground rose 1.00 ft.");
  const tiles = card.getByRole("button", { name: /^It was|is right$/ });
  await expect(tiles.first()).toBeVisible();
  const boxes = await tiles.evaluateAll((all) =>
    all.map((one) => [one.clientWidth, one.clientHeight].join("×")),
  );
  expect(boxes.length).toBeGreaterThan(1);
  expect(new Set(boxes).size, boxes.join(" ")).toBe(1);
  await card.getByRole("button", { name: "It was 4.70" }).click();
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await expect(ground.page.getByText("ON THE CAB'S SCREEN", { exact: true })).toBeVisible();
});

test("a call that is taken back is removed from the cab", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await ground.page.getByRole("button", { name: "WITHDRAW" }).click();
  await expect(cab.page.getByText("WITHDRAWN", { exact: true })).toBeVisible();
  await expect(call(cab.page, "DOWN 3")).toHaveCount(0);
});

test("the operator can't: the ground person reads why", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await cab.page.getByRole("button", { name: "CAN'T" }).click();
  await cab.page.getByRole("button", { name: "HARD GROUND" }).click();
  await expect(ground.page.getByText("EX-1 CAN'T: HARD GROUND")).toBeVisible();
});

test("while nobody has said where the machine stands, LOOK stands beside the number", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await crew.hub.say({ kind: "say_moved", machine: "EX-1" });
  await expect(ground.page.getByText("Nobody has said lately where EX-1 stands", { exact: false })).toBeVisible();
  await ground.page.getByRole("button", { name: "NOT ENTERING – SHOOTING FROM OUTSIDE" }).click();
  await sendsReading(ground.page, "4.70");
  await expect(cab.page.getByRole("note")).toContainText("LOOKRT AT P-1");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await expect(cab.page.getByRole("alert")).toHaveCount(0);
  await expect(ground.page.getByText("ON THE CAB'S SCREEN", { exact: true })).toBeVisible();
  await expect(cab.page.getByRole("button", { name: "GOT IT" })).toBeVisible();
  await expect(cab.page.getByRole("note")).toContainText("it senses nobody");
});
