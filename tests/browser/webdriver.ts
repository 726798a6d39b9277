/** Firefox by WebDriver BiDi, which it speaks itself, and WebKitGTK by its WebDriver: both W3C standards, and little is needed of them. */
import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { join } from "node:path";
import WebSocket from "ws";
import { type Display, PHONE, says, until } from "./display.ts";
import type { Browser } from "./screen.ts";

export const FIREFOX = process.env.FIREFOX ?? "/usr/bin/firefox-esr";
export const WEBKIT = process.env.WEBKIT_DRIVER ?? "/usr/bin/WebKitWebDriver";
const MINI_BROWSERS = ["x86_64", "aarch64"].map(
  (machine) => `/usr/lib/${machine}-linux-gnu/webkit2gtk-4.1/MiniBrowser`,
);

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

export async function inFirefox(display: Display): Promise<Browser> {
  const profile = join(display.home, "profile");
  prepares(profile);
  const args = ["--no-remote", "--profile", profile, "--remote-debugging-port", "0", "about:blank"];
  const [, address] = await starts(() => display.runs(FIREFOX, args));
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
    close: async () => bidi.close(),
  };
}

/** A browser that dies before it shows a page has said nothing of the page: it is started again, twice at most. */
async function starts(run: () => ReturnType<Display["runs"]>, again = 2): Promise<RegExpExecArray> {
  try {
    return await says(run(), /WebDriver BiDi listening on (ws:\S+)/);
  } catch (died) {
    if (again === 0) throw died;
    return starts(run, again - 1);
  }
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

export async function inWebKit(display: Display): Promise<Browser> {
  const binary = MINI_BROWSERS.find((path) => existsSync(path));
  if (!binary) throw new Error(`${MINI_BROWSERS[0]} is not there: it comes with Debian's webkit2gtk-driver.`);
  const port = await freePort();
  // Its own sandbox needs rights that a container seldom has; the page is ours. Without its compositor it works an animation off
  // in the thread of the page's script, as no phone does.
  display.runs(WEBKIT, [`--port=${port}`, "--host=127.0.0.1"], {
    WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: "1",
    WEBKIT_DISABLE_COMPOSITING_MODE: undefined,
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
      // One that has gone already has closed its browser, too.
      await ask(path, undefined, "DELETE").catch(() => undefined);
    },
  };
}

