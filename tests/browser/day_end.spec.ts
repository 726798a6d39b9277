/** The day's end on the supervisor's page: closed over what is missing with words, signed with a finger, the next opened. */
import type { Page } from "@playwright/test";
import { expect, sendsReading, test } from "./crew.ts";

/** Draws in the box as a finger does. */
async function signs(page: Page): Promise<void> {
  const box = page.getByRole("img", { name: "Sign here with a finger" });
  const at = await box.boundingBox();
  if (!at) throw new Error("No box to sign in");
  await page.mouse.move(at.x + 20, at.y + at.height / 2);
  await page.mouse.down();
  for (let i = 1; i <= 12; i++) {
    await page.mouse.move(at.x + 20 + i * 15, at.y + at.height / 2 + (i % 2 === 0 ? -20 : 20));
  }
  await page.mouse.up();
}

test("a day is closed over a missing check with words, signed, amended, and the next is opened", async ({ crew }) => {
  const { page } = await crew.joins("SUPERVISOR", "PN");
  const { ground } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  const press = (name: string) => page.getByRole("button", { name, exact: true }).click();
  await press("DAY");
  await expect(page.getByText("SETUP-1: no good benchmark shot after its last reading")).toBeVisible();
  await press("CLOSE THE DAY");
  const close = page.getByRole("dialog", { name: "CLOSE THE DAY" });
  const send = close.getByRole("button", { name: "CLOSE THE DAY", exact: true });
  await expect(send).toBeDisabled();
  await close.getByLabel("Close all the same, because").fill("the laser ran out of battery");
  await send.click();
  await expect(page.getByText(/CLOSED UNPROVEN: SETUP-1 has no closing check/)).toBeVisible();
  await expect(ground.page.getByText("DAY CLOSED – no calls go out")).toBeVisible();
  await press("SIGN THE DAY");
  const sign = page.getByRole("dialog", { name: "SIGN THE DAY" });
  await sign.getByLabel("Name of whoever signs").fill("P. N.");
  await expect(sign.getByRole("button", { name: "SIGN THE DAY", exact: true })).toBeDisabled();
  await signs(page);
  await sign.getByRole("button", { name: "SIGN THE DAY", exact: true }).click();
  await expect(page.getByRole("img", { name: "P. N." })).toBeVisible();
  await expect(page.getByText(/^Head code [0-9a-f]{4}( [0-9a-f]{4}){3}, entry \d+/)).toBeVisible();
  await press("AMEND");
  const amend = page.getByRole("dialog", { name: "AMEND" });
  await amend.getByLabel(/^Entry that is amended/).fill("3");
  await amend.getByLabel("What is to be read with it").fill("the rod was B");
  await amend.getByLabel("Name of whoever signs").fill("P. N.");
  await signs(page);
  await amend.getByRole("button", { name: "AMEND", exact: true }).click();
  await expect(page.getByText(/Entry 3 of .*: the rod was B \(P. N.\)/)).toBeVisible();
  await press("OPEN THE NEXT DAY");
  const next = page.getByRole("dialog", { name: "OPEN THE NEXT DAY" });
  await next.getByRole("button", { name: "OPEN THE NEXT DAY", exact: true }).click();
  // The page starts anew, still in; the crew scans again.
  await expect(page.getByRole("button", { name: "DAY", exact: true })).toBeVisible();
  await press("DAY");
  await expect(page.getByText(/closed, signed by P. N./)).toBeVisible();
  await expect(ground.page.getByText(/Scan|scan/).first()).toBeVisible();
});
