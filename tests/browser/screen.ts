/**
 * One phone in one engine: a display of its own, a browser on it, and what the scenarios ask of both. Chromium is driven by
 * Playwright, Firefox by WebDriver BiDi, which it speaks itself, WebKitGTK by its WebDriver; both are W3C standards, and what is
 * needed of them is little. A display of its own lets what is painted be looked at while the page's script is held.
 */
import { existsSync } from "node:fs";
import { networkInterfaces } from "node:os";
import { chromium } from "@playwright/test";
import { Display, PHONE, XVFB } from "./display.ts";
import { CHROMIUM } from "./playwright.config.ts";
import { FIREFOX, inFirefox, inWebKit, WEBKIT } from "./webdriver.ts";

export type Engine = "Chromium" | "Firefox" | "WebKitGTK";

/** What must be there for an engine, and the package of Debian that brings it. */
const NEEDS: Record<Engine, [string, string][]> = {
  Chromium: [
    [CHROMIUM, "chromium"],
    [XVFB, "xvfb"],
  ],
  Firefox: [
    [FIREFOX, "firefox-esr"],
    [XVFB, "xvfb"],
  ],
  WebKitGTK: [
    [WEBKIT, "webkit2gtk-driver"],
    [XVFB, "xvfb"],
  ],
};

/** What the browser and its display do for the scenarios. */
export interface Screen {
  open(url: string): Promise<void>;
  /** The body of a function, run in the page; what it returns. */
  run<T>(body: string): Promise<T>;
  /** Presses at this point of the page and keeps it pressed. */
  down(x: number, y: number): Promise<void>;
  up(): Promise<void>;
  /** Types into what has the focus. */
  type(text: string): Promise<void>;
  /** What is painted now: the bytes of the display. */
  look(): Buffer;
  close(): Promise<void>;
}

export type Browser = Omit<Screen, "look">;

/** How the browser finds the test's network: a plain http name or address, for 127.0.0.1 counts as secure. */
export function host(engine: Engine): string {
  if (engine !== "WebKitGTK") return "truck.test";
  // WebKitGTK takes no names from us: an address of this machine that is not its own loop, where it has one.
  const outside = Object.values(networkInterfaces())
    .flatMap((ones) => ones ?? [])
    .find((one) => one.family === "IPv4" && !one.internal);
  return outside?.address ?? "127.0.0.1";
}

export async function screen(engine: Engine): Promise<Screen> {
  for (const [path, name] of NEEDS[engine]) {
    if (!existsSync(path))
      throw new Error(`${path} is not there. Install it (Debian: apt-get install ${name}), or run tests/all --install.`);
  }
  const display = await Display.start();
  try {
    const browser = await { Chromium: inChromium, Firefox: inFirefox, WebKitGTK: inWebKit }[engine](display);
    return {
      ...browser,
      look: () => display.look(),
      close: async () => {
        await browser.close();
        await display.close();
      },
    };
  } catch (error) {
    await display.close();
    throw error;
  }
}

async function inChromium(display: Display): Promise<Browser> {
  const browser = await chromium.launch({
    executablePath: CHROMIUM,
    headless: false,
    env: display.env as Record<string, string>,
    args: ["--no-sandbox", "--disable-gpu", "--no-first-run", "--host-resolver-rules=MAP truck.test 127.0.0.1"],
  });
  const page = await browser.newPage({ viewport: PHONE });
  return {
    open: async (url) => {
      await page.goto(url);
    },
    run: (body) => page.evaluate(`(() => {${body}\n})()`),
    down: async (x, y) => {
      await page.mouse.move(x, y);
      await page.mouse.down();
    },
    up: () => page.mouse.up(),
    type: (text) => page.keyboard.type(text),
    close: () => browser.close(),
  };
}

