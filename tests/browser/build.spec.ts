/** Which build a page is: it says so to the hub, which talks to its own in parts, and to another's in whole views. */
import type { Page } from "@playwright/test";
import { call, comeIn, expect, FOOT, sendsReading, test } from "./crew.ts";

/** The views that come over a page's sockets from now on, and where those lead. */
function listens(page: Page) {
  const heard = { views: [] as { whole: boolean; items?: unknown; changed?: unknown }[], urls: [] as string[] };
  page.on("websocket", (socket) => {
    heard.urls.push(socket.url());
    socket.on("framereceived", ({ payload }) => {
      const word = JSON.parse(payload.toString());
      if (word.kind === "view") heard.views.push(word);
    });
  });
  return heard;
}

test("a page of this build gets parts, one that was left open from another gets whole views and shows the same", async ({
  crew,
}) => {
  const { ground, cab } = await crew.digs();
  const parts = listens(cab.page);
  await cab.page.reload();
  await expect(cab.page.getByText("NO CALL", { exact: true })).toBeVisible();
  const other = await crew.scans("SUPERVISOR");
  const whole = listens(other.page);
  await other.page.addInitScript(() => {
    const Plain = window.WebSocket;
    window.WebSocket = class extends Plain {
      constructor(url: string | URL, protocols?: string | string[]) {
        super(String(url).replace(/page=.*$/, "page=%2Fassets%2Findex-older.js"), protocols);
      }
    };
  });
  await other.page.reload();
  await comeIn(other.page, "SUPERVISOR", "PN");
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await expect(other.page.getByText("DOWN 3").first()).toBeVisible();
  await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 310 * FOOT, y: 300 * FOOT } });
  expect(parts.urls[0]).toMatch(/page=%2Fassets%2Findex-.*\.js$/);
  expect(whole.urls[0]).toMatch(/older\.js$/);
  await expect.poll(() => parts.views.some((view) => !view.whole)).toBe(true);
  await expect.poll(() => whole.views.length).toBeGreaterThan(4);
  expect(whole.views.filter((view) => !view.whole || view.items || view.changed)).toEqual([]);
});
