/** A press that slides: glove and vibration move a finger by 10 mm, and the key that took it keeps it. */
import type { CDPSession, Locator, Page } from "@playwright/test";
import { call, expect, sendsReading, test } from "./crew.ts";

/** Such a phone: 0.185 mm to the CSS pixel, so that 50 px are 9.3 mm and 70 px are 13 mm. */
const PHONE = { viewport: { width: 360, height: 740 } };

const key = (page: Page, name: string | RegExp) => page.getByRole("button", { name, exact: true });

interface Finger {
  slide(px: number): Promise<void>;
  lift(): Promise<void>;
}

const inputs = new WeakMap<Page, Promise<CDPSession>>();

/** A finger as the browser's own input has it: it makes gestures of it, pans and cancels. */
async function lays(page: Page, on: Locator): Promise<Finger> {
  await expect(on).toBeVisible();
  const box = await on.boundingBox();
  if (!box) throw new Error("The key stands nowhere");
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const known = inputs.get(page) ?? page.context().newCDPSession(page);
  inputs.set(page, known);
  const input = await known;
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", points: { x: number; y: number }[]) =>
    input.send("Input.dispatchTouchEvent", { type, touchPoints: points });
  await touch("touchStart", [at]);
  return {
    async slide(px) {
      // Little by little, as a hand that shakes: the browser looks at each step.
      for (let step = 1; step <= 4; step++) await touch("touchMove", [{ x: at.x, y: at.y - (px * step) / 4 }]);
    },
    async lift() {
      await touch("touchEnd", []);
    },
  };
}

test("GOT IT, a digit and SEND count though the finger slides by 9 mm; by 13 mm they don't", async ({ crew }) => {
  const { ground, cab } = await crew.digs(PHONE);
  const typed = ground.page.getByRole("textbox", { name: "Type the rod" });
  let finger = await lays(ground.page, key(ground.page, "4"));
  await finger.slide(70);
  await finger.lift();
  for (const [digit, stands] of [
    ["4", /^(0\.0)?4$/],
    [".", /^4\.$/],
    ["7", /^4\.7$/],
    ["0", /^4\.70$/],
  ] as const) {
    finger = await lays(ground.page, key(ground.page, digit));
    await finger.slide(50);
    await finger.lift();
    await expect(typed).toHaveValue(stands);
  }
  finger = await lays(ground.page, key(ground.page, "SEND"));
  await finger.slide(50);
  await finger.lift();
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  finger = await lays(cab.page, key(cab.page, "GOT IT"));
  await finger.slide(50);
  await finger.lift();
  await expect(ground.page.getByText("GOT IT PRESSED IN THE CAB", { exact: true })).toBeVisible();
});

test("a held key keeps a finger that slides, and says so when it was let go too soon", async ({ crew }) => {
  const { ground, cab } = await crew.digs(PHONE);
  await key(ground.page, "STOP: every machine").click();
  const down = cab.page.getByRole("button", { name: /^BUCKET DOWN/ });
  await expect(down).toBeVisible();
  let finger = await lays(cab.page, down);
  await finger.lift();
  await expect(down).toContainText("LET GO TOO SOON");
  finger = await lays(cab.page, down);
  await finger.slide(70);
  await expect(down).toContainText("LET GO TOO SOON");
  await finger.lift();
  finger = await lays(cab.page, down);
  await finger.slide(50);
  await expect(down).toHaveCount(0);
  await finger.lift();
});

test("what a key opens or closes takes no second press from the same finger", async ({ crew }) => {
  const { ground, cab } = await crew.digs(PHONE);
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  // CANCEL stands over CHECK ME and CAN'T of the page under it.
  for (const closes of ["CANCEL", "CANCEL"]) {
    const opens = await lays(cab.page, key(cab.page, "CAN'T"));
    await opens.lift();
    const cancel = key(cab.page, closes);
    await expect(cancel).toBeVisible();
    const finger = await lays(cab.page, cancel);
    await finger.lift();
    await expect(cab.page.getByRole("dialog")).toHaveCount(0);
  }
  await expect(key(cab.page, "CHECK ME")).toBeVisible();
  const { lines } = await crew.hub.get("/api/log?kind=look_asked&limit=10");
  expect(lines).toEqual([]);
});
