/** A visitor's phone: what a supervisor chose for it, on and off site, the signature under their inspection, STOP. */
import { expect, sendsReading, test } from "./crew.ts";

test("a visitor says on site, sees the run they came for, and signs what they found", async ({ crew }) => {
  const { ground } = await crew.digs();
  const board = await crew.joins("SUPERVISOR", "PN");
  const { page } = await crew.joins("VISITOR", "HF");
  await sendsReading(ground.page, "5.02");
  await expect(page.getByText("The supervisor chooses what you see here.", { exact: false })).toBeVisible();
  await page.getByRole("button", { name: "I AM ON SITE", exact: true }).click();
  await expect(page.getByText(/^You are ON SITE since/)).toBeVisible();
  await board.page.getByRole("button", { name: "DAY", exact: true }).click();
  await expect(board.page.getByText("ON SITE since", { exact: false }).first()).toBeVisible();
  await board.page.getByRole("button", { name: "SHOW HF", exact: true }).click();
  const choice = board.page.getByRole("dialog", { name: "What HF came for" });
  await choice.getByRole("button", { name: "yard pad", exact: true }).click();
  await choice.getByRole("button", { name: "SHOW", exact: true }).click();
  const run = page.getByRole("region", { name: "yard pad" });
  await expect(run.getByText("NOT PROVEN", { exact: true })).toBeVisible();
  // The proof comes with the closing shot, on the same page.
  await crew.hub.say({ kind: "shoot_check", set_up: "S1", benchmark: "BM-2", rod: "A", text: "3.48" });
  await expect(run.getByText("PROVEN", { exact: true })).toBeVisible();
  await crew.hub.say({
    kind: "inspect",
    what: "pad",
    inspector: "HF",
    items: [{ what: "P-1", found: "on grade" }],
    result: "passed",
    words: "may be formed",
  });
  await page.getByRole("button", { name: "SIGN THE RESULT", exact: true }).click();
  const sign = page.getByRole("dialog", { name: "pad" });
  const box = await sign.getByRole("img", { name: "Sign here with a finger" }).boundingBox();
  if (!box) throw new Error("No box to sign in");
  await page.mouse.move(box.x + 20, box.y + 40);
  await page.mouse.down();
  await page.mouse.move(box.x + 80, box.y + 20);
  await page.mouse.move(box.x + 140, box.y + 60);
  await page.mouse.up();
  await sign.getByRole("button", { name: "SIGN THE RESULT", exact: true }).click();
  await expect(page.getByText("Signed.", { exact: true })).toBeVisible();
  await page.getByRole("button", { name: "I AM OFF SITE", exact: true }).click();
  await expect(page.getByText("You have not said that you are on site.")).toBeVisible();
  await page.getByRole("button", { name: "STOP: every machine" }).click();
  await expect(page.getByRole("alert")).toContainText("STOP");
});
