/** The browser tests: Debian's Chromium, pages as a phone on the truck's plain http network sees them. */
import { existsSync } from "node:fs";
import { defineConfig } from "@playwright/test";

export const CHROMIUM = process.env.CHROMIUM ?? "/usr/bin/chromium";
if (!existsSync(CHROMIUM)) {
  throw new Error(
    `${CHROMIUM} is not there. Install it (Debian: apt-get install chromium) or name it in CHROMIUM.`,
  );
}

/** A phone of the crew. */
export const PHONE = { width: 390, height: 844 };

export default defineConfig({
  testDir: ".",
  testMatch: "*.spec.ts",
  testIgnore: ["shots.spec.ts", "start.spec.ts"],
  outputDir: "test-results",
  fullyParallel: true,
  workers: 2,
  // Deadlines for a slow machine; nothing waits for them while it goes well.
  timeout: 180_000,
  expect: { timeout: 30_000 },
  reporter: [["list"]],
  use: {
    viewport: PHONE,
    hasTouch: true,
    actionTimeout: 30_000,
    launchOptions: {
      executablePath: CHROMIUM,
      args: [
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        // 127.0.0.1 counts as secure and would hide what a phone lacks on plain http.
        "--host-resolver-rules=MAP truck.test 127.0.0.1",
      ],
    },
  },
});
