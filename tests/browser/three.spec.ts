/** Ground, cab and laptop held open together through one way in, while one link after another is cut: no page is ever empty. */
import type { Page } from "@playwright/test";
import { call, expect, FOOT, hold, sendsReading, test } from "./crew.ts";

const LAPTOP = { viewport: { width: 1366, height: 850 } };
const DOWN = "BUCKET DOWN · LEVER LOCKED";

const text = (page: Page, words: string) => page.getByText(words, { exact: false }).first();

test("three pages say the same of whoever is in, with the cab cut, the phone cut, and a stop in between", async ({
  crew,
}) => {
  const { ground, cab } = await crew.digs();
  const board = await crew.joins("SUPERVISOR", "PN", null, LAPTOP);
  const inside = board.page.getByRole("region", { name: "In a keep-out" });
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();

  // The machine comes near the mark: the keypad gives way, and the three pages say who asks.
  await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 20 * FOOT, y: 30 * FOOT } });
  await ground.page.getByRole("button", { name: /^NEXT MARK/ }).click();
  await ground.page.getByRole("button", { name: "ASK EX-1 TO COME IN" }).click();
  await expect(text(cab.page, "RT ASKS TO COME IN")).toBeVisible();
  await expect(cab.page.locator(".number")).toHaveCount(0);
  await expect(text(ground.page, "STAY OUT")).toBeVisible();
  await expect(text(board.page, "EX-1: RT asks")).toBeVisible();

  await hold(cab.page, DOWN, async () => {
    await expect(text(ground.page, "BUCKET IS DOWN")).toBeVisible();
  });
  await ground.page.getByRole("button", { name: "I GO IN", exact: true }).click();
  await expect(text(ground.page, "YOU ARE IN AT EX-1")).toBeVisible();
  await expect(text(cab.page, "RT IS IN")).toBeVisible();
  await expect(inside).toContainText("IN");

  // The cab's link is cut: it keeps the name by itself, and both others are told.
  cab.link.cut();
  await expect(text(cab.page, "RT IN. STAND STILL.")).toBeVisible();
  await expect(text(ground.page, "EX-1 SCREEN LOST – GET EYE CONTACT OR GET OUT")).toBeVisible();
  await expect(text(board.page, "EX-1: link lost. Use hands.")).toBeVisible();
  await expect(inside).toContainText("RT");
  cab.link.mend();
  await expect(text(cab.page, "RT IS IN")).toBeVisible();
  await expect(text(ground.page, "YOU ARE IN AT EX-1")).toBeVisible();

  // The phone's link is cut: nobody is let go, and the laptop is told to look.
  ground.link.cut();
  await expect(text(board.page, "RT is IN at EX-1, no link. Look.")).toBeVisible();
  await expect(text(cab.page, "NO LINK")).toBeVisible();
  await hold(cab.page, "RELEASE", async () => {
    await expect(text(cab.page, "NOT RELEASED: RT IN. Look, and wait for OUT.")).toBeVisible();
  });

  // A stop from the laptop meanwhile keeps the name, and is not lifted over it.
  await board.page.getByRole("button", { name: "STOP: every machine" }).first().click();
  await expect(text(cab.page, "PN pressed STOP")).toBeVisible();
  await expect(text(cab.page, "RT IS IN")).toBeVisible();
  // The word about the release is still there, and lies over neither STOP nor its key.
  const [word, key, notice] = await Promise.all(
    [cab.page.locator(".stop-word"), cab.page.getByRole("button", { name: "STOP: every machine" }), cab.page.getByRole("alertdialog")].map(
      (one) => one.boundingBox(),
    ),
  );
  if (!word || !key || !notice) throw new Error("One of the three stands nowhere");
  expect(notice.y).toBeGreaterThan(word.y + word.height);
  expect(notice.y + notice.height).toBeLessThanOrEqual(key.y);
  ground.link.mend();
  await expect(text(ground.page, "YOU ARE IN AT EX-1")).toBeVisible();
  await hold(ground.page, "I AM OUT", async () => {
    await expect(inside).toContainText("Nobody has said that they are in. Look anyway.");
  });
  await expect(text(cab.page, "PN pressed STOP")).toBeVisible();
  await crew.hub.say({ kind: "lift_stop", press: Number.MAX_SAFE_INTEGER, why: "everybody stands at the truck" });
  await expect(text(cab.page, "NOBODY SAYS THEY ARE IN – LOOK BEFORE YOU HOLD RELEASE")).toBeVisible();
  await hold(cab.page, "RELEASE", async () => {
    await expect(text(cab.page, "NOBODY HAS ASKED TO COME IN – LOOK ANYWAY")).toBeVisible();
  });
});
