/** FROM PAPER: what was booked while the hub was away is typed in afterwards; it counts, is labelled, and no machine is told. */
import { call, expect, sendsReading, test, typeRod } from "./crew.ts";

test("a reading from paper stands under its own time and reader, and the cab is told nothing", async ({ crew }, info) => {
  const { ground, cab } = await crew.digs({ viewport: { width: 360, height: 740 } });
  const page = ground.page;
  // 105.00 − 4.70 = 100.30, 0.30 above the dig-to.
  await sendsReading(page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await page.getByRole("button", { name: "READ AGAIN", exact: true }).click();
  await page.getByRole("button", { name: "MORE", exact: true }).click();
  await page.getByRole("button", { name: "FROM PAPER", exact: true }).click();
  const panel = page.getByRole("dialog", { name: "FROM PAPER" });
  const type = panel.getByRole("button", { name: "TYPE THEM IN", exact: true });
  await expect(type).toBeDisabled();
  const minute = await page.evaluate(() => {
    const two = (n: number) => String(n).padStart(2, "0");
    const now = new Date();
    return `${two(now.getHours())}:${two(now.getMinutes())}`;
  });
  await panel.getByLabel("Read at").fill(minute);
  await panel.getByLabel("Read by").fill("JM");
  await page.screenshot({ path: info.outputPath("panel.png") });
  await type.click();
  const strip = page.getByRole("button", { name: `FROM PAPER ${minute} JM`, exact: true });
  await expect(strip).toBeVisible();
  await page.getByRole("button", { name: "Next mark" }).click();
  // Another mark: 105.00 − 4.50 = 100.50, and the page promises no call.
  await typeRod(page, "4.50");
  await expect(page.locator(".echo p")).toHaveText(["HIGH 0.50 ft", "From paper: kept, no call goes out."]);
  await page.screenshot({ path: info.outputPath("read.png") });
  await expect(strip).toBeInViewport({ ratio: 1 });
  // Nothing there looks as if a call went out.
  await expect(page.getByRole("button", { name: "SEND", exact: true })).toHaveCount(0);
  await page.getByRole("button", { name: "KEEP IT", exact: true }).click();
  await expect(page.getByText("Kept from paper. No call was sent.")).toBeVisible();
  await page.screenshot({ path: info.outputPath("kept.png") });
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await page.getByRole("button", { name: "READ AGAIN", exact: true }).click();
  await strip.click();
  await page.getByRole("button", { name: "DONE WITH THE PAPER", exact: true }).click();
  await expect(strip).toHaveCount(0);
});
