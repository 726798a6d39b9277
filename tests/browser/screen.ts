/**
 * One phone in one engine: a display of its own, a browser on it, and what the scenarios ask of both. Chromium is driven by
 * Playwright, Firefox by WebDriver BiDi, which it speaks itself, WebKitGTK by its WebDriver; both are W3C standards, and what is
 * needed of them is little. A display of its own lets what is painted be looked at while the page's script is held.
 */
import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { networkInterfaces, tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "@playwright/test";
import WebSocket from "ws";
import { CHROMIUM } from "./playwright.config.ts";

export type Engine = "Chromium" | "Firefox" | "WebKitGTK";

/** A short phone: in the cab GOT IT takes no row of its own, so that all else stands in one place with and without a number. */
const PHONE = { width: 390, height: 660 };

const FIREFOX = process.env.FIREFOX ?? "/usr/bin/firefox-esr";
const WEBKIT = process.env.WEBKIT_DRIVER ?? "/usr/bin/WebKitWebDriver";
const XVFB = "/usr/bin/Xvfb";
const MINI_BROWSERS = ["x86_64", "aarch64"].map(
  (machine) => `/usr/lib/${machine}-linux-gnu/webkit2gtk-4.1/MiniBrowser`,
);

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

type Browser = Omit<Screen, "look">;

/** Waits for a line of a program that says that it is ready. */
function says(child: ChildProcess, ready: RegExp): Promise<RegExpExecArray> {
  let said = "";
  return new Promise((resolve, reject) => {
    const hear = (bytes: Buffer) => {
      said += bytes.toString();
      const found = ready.exec(said);
      if (found) resolve(found);
    };
    for (const stream of child.stdio.slice(1)) stream?.on("data", hear);
    child.on("error", reject);
    child.on("exit", (code) => reject(new Error(`${child.spawnfile} ended with ${code}:\n${said}`)));
  });
}

async function ends(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const over = new Promise((resolve) => child.once("exit", resolve));
  child.kill("SIGKILL");
  await over;
}

/** A display in memory: a file holds what is painted on it. */
class Display {
  private constructor(
    private readonly child: ChildProcess,
    private readonly folder: string,
    readonly env: NodeJS.ProcessEnv,
  ) {}

  static async start(): Promise<Display> {
    const folder = mkdtempSync(join(tmpdir(), "rodcall-display-"));
    const size = `${PHONE.width + 110}x${PHONE.height + 160}x24`;
    const child = spawn(XVFB, ["-displayfd", "3", "-screen", "0", size, "-fbdir", folder, "-nolisten", "tcp"], {
      stdio: ["ignore", "ignore", "pipe", "pipe"],
    });
    const [, number] = await says(child, /^(\d+)\n/m);
    return new Display(child, folder, { ...process.env, DISPLAY: `:${number}`, HOME: folder, WAYLAND_DISPLAY: "" });
  }

  look(): Buffer {
    return readFileSync(join(this.folder, "Xvfb_screen0"));
  }

  get home(): string {
    return this.folder;
  }

  async close(): Promise<void> {
    await ends(this.child);
    rmSync(this.folder, { recursive: true, force: true });
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

/** The actions of WebDriver, which BiDi has too: a press at a point, its end, keys. */
const MOUSE = { type: "pointer", id: "mouse", parameters: { pointerType: "mouse" } };
const actions = {
  down: (x: number, y: number) => [
    {
      ...MOUSE,
      actions: [
        { type: "pointerMove", duration: 0, x: Math.round(x), y: Math.round(y), origin: "viewport" },
        { type: "pointerDown", button: 0 },
      ],
    },
  ],
  up: () => [{ ...MOUSE, actions: [{ type: "pointerUp", button: 0 }] }],
  type: (text: string) => [
    {
      type: "key",
      id: "keys",
      actions: [...text].flatMap((value) => [
        { type: "keyDown", value },
        { type: "keyUp", value },
      ]),
    },
  ],
};

const PREFERENCES = {
  "network.dns.localDomains": "truck.test",
  "browser.shell.checkDefaultBrowser": false,
  "browser.startup.homepage_override.mstone": "ignore",
  "datareporting.policy.dataSubmissionEnabled": false,
  "app.update.disabledForTesting": true,
  "toolkit.cosmeticAnimations.enabled": false,
};

async function inFirefox(display: Display): Promise<Browser> {
  const profile = join(display.home, "profile");
  prepares(profile);
  const child = spawn(FIREFOX, ["--no-remote", "--profile", profile, "--remote-debugging-port", "0", "about:blank"], {
    env: display.env,
    stdio: ["ignore", "pipe", "pipe"],
  });
  const [, address] = await says(child, /WebDriver BiDi listening on (ws:\S+)/);
  const bidi = await BiDi.to(`${address}/session`);
  await bidi.send("session.new", { capabilities: {} });
  const { contexts } = await bidi.send<{ contexts: { context: string }[] }>("browsingContext.getTree", {});
  const context = contexts[0]?.context ?? "";
  await bidi.send("browsingContext.setViewport", { context, viewport: PHONE });
  const act = async (list: unknown) => {
    await bidi.send("input.performActions", { context, actions: list });
  };
  return {
    open: async (url) => {
      await bidi.send("browsingContext.navigate", { context, url, wait: "complete" });
    },
    run: async <T>(body: string) => {
      const expression = `JSON.stringify((() => {${body}\n})() ?? null)`;
      const target = { context };
      const got = await bidi.send<{ type: string; result: { value: string }; exceptionDetails: { text: string } }>(
        "script.evaluate",
        { expression, target, awaitPromise: false },
      );
      if (got.type === "exception") throw new Error(got.exceptionDetails.text);
      return JSON.parse(got.result.value) as T;
    },
    down: (x, y) => act(actions.down(x, y)),
    up: () => act(actions.up()),
    type: (text) => act(actions.type(text)),
    close: async () => {
      bidi.close();
      await ends(child);
    },
  };
}

function prepares(profile: string): void {
  const lines = Object.entries(PREFERENCES).map(([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});`);
  mkdirSync(profile, { recursive: true });
  writeFileSync(join(profile, "user.js"), lines.join("\n"));
}

/** Requests and their answers over one socket. */
class BiDi {
  private last = 0;
  private readonly open = new Map<number, { resolve: (result: never) => void; reject: (error: Error) => void }>();

  private constructor(private readonly socket: WebSocket) {
    socket.on("message", (text) => {
      const said = JSON.parse(String(text));
      const asked = this.open.get(said.id);
      if (!asked) return;
      this.open.delete(said.id);
      if (said.type === "error") asked.reject(new Error(`${said.error}: ${said.message}`));
      else asked.resolve(said.result as never);
    });
  }

  static to(address: string): Promise<BiDi> {
    const socket = new WebSocket(address);
    return new Promise((resolve, reject) => {
      socket.once("open", () => resolve(new BiDi(socket)));
      socket.once("error", reject);
    });
  }

  send<T>(method: string, params: object): Promise<T> {
    this.last++;
    this.socket.send(JSON.stringify({ id: this.last, method, params }));
    return new Promise((resolve, reject) => this.open.set(this.last, { resolve, reject }));
  }

  close(): void {
    this.socket.close();
  }
}

/** A port that nobody has now. */
function freePort(): Promise<number> {
  const server = createServer();
  return new Promise((resolve) =>
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      server.close(() => resolve(typeof address === "object" && address ? address.port : 0));
    }),
  );
}

async function inWebKit(display: Display): Promise<Browser> {
  const binary = MINI_BROWSERS.find((path) => existsSync(path));
  if (!binary) throw new Error(`${MINI_BROWSERS[0]} is not there: it comes with Debian's webkit2gtk-driver.`);
  const port = await freePort();
  const child = spawn(WEBKIT, [`--port=${port}`, "--host=127.0.0.1"], {
    // Its own sandbox needs rights that a container seldom has; the page is ours. Without its compositor it works an animation off
    // in the thread of the page's script, as no phone does.
    env: {
      ...display.env,
      WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: "1",
      WEBKIT_DISABLE_COMPOSITING_MODE: undefined,
    },
    stdio: ["ignore", "ignore", "ignore"],
  });
  const base = `http://127.0.0.1:${port}`;
  const ask = async <T>(path: string, body?: object, method = body ? "POST" : "GET"): Promise<T> => {
    const sent = body ? { body: JSON.stringify(body), headers: { "content-type": "application/json" } } : {};
    const answer = await fetch(`${base}${path}`, { method, ...sent });
    const { value } = (await answer.json()) as { value: T & { error?: string; message?: string } };
    if (!answer.ok) throw new Error(`${path}: ${value.error}: ${value.message}`);
    return value;
  };
  await until(async () => (await ask<{ ready: boolean }>("/status").catch(() => null))?.ready === true);
  const always = { "webkitgtk:browserOptions": { binary, args: ["--automation"] } };
  const { sessionId } = await ask<{ sessionId: string }>("/session", { capabilities: { alwaysMatch: always } });
  const path = `/session/${sessionId}`;
  await ask(`${path}/window/rect`, { x: 0, y: 0, width: PHONE.width, height: PHONE.height });
  const act = async (list: unknown) => {
    await ask(`${path}/actions`, { actions: list });
  };
  return {
    open: async (url) => {
      await ask(`${path}/url`, { url });
    },
    run: (body) => ask(`${path}/execute/sync`, { script: body, args: [] }),
    down: (x, y) => act(actions.down(x, y)),
    up: () => act(actions.up()),
    type: (text) => act(actions.type(text)),
    close: async () => {
      await ask(path, undefined, "DELETE").catch(() => undefined);
      await ends(child);
    },
  };
}

/** Waits for something to hold; says what it waited for when it never does. */
export async function until(holds: () => Promise<boolean>, what = "the browser to be ready", limit = 60_000): Promise<void> {
  const end = Date.now() + limit;
  while (!(await holds())) {
    if (Date.now() > end) throw new Error(`Waited in vain for ${what}`);
    await new Promise((next) => setTimeout(next, 100));
  }
}
