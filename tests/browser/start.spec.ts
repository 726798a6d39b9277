/**
 * Measures how each page starts on a slow phone: a processor four times slower, 1.6 Mbit/s, 150 ms. Cold is a browser that has
 * fetched nothing and is known to the hub by its cookie; warm is its next start. Medians of RUNS; the machine that runs it counts too.
 */
import type { BrowserContext, CDPSession, Page } from "@playwright/test";
import { call, type Crew, expect, sendsReading, test } from "./crew.ts";
import { FULL_YARD } from "./ground_states.ts";

test.use({ more: FULL_YARD });

const RUNS = Number(process.env.RUNS ?? 5);
const SLOWER = 4;
const NETWORK = { offline: false, latency: 150, downloadThroughput: 1_600_000 / 8, uploadThroughput: 750_000 / 8 };

/** What can first be used on a page. */
const USEFUL = {
  join: ".join input",
  ground: ".read .pad .key",
  operator: ".cab.shows-call [data-number]",
  visitor: ".visitor .key.large",
};
type Name = keyof typeof USEFUL;

interface Figures {
  /** From the start of the navigation until what can be used was painted, ms. */
  useful: number;
  /** The longest task until two seconds after that, ms. */
  longest: number;
  /** Files fetched until then, and their bytes as they came over the air. */
  requests: number;
  bytes: number;
}

/** Runs in the page before anything else: notes when what can be used is painted, and every long task. */
function note(useful: string): void {
  const noted = { useful: 0, longest: 0 };
  Object.assign(window, { noted });
  new PerformanceObserver((list) => {
    for (const task of list.getEntries()) noted.longest = Math.max(noted.longest, task.duration);
  }).observe({ type: "longtask", buffered: true });
  const look = () => {
    const found = document.querySelector(useful);
    if (!found || found.getBoundingClientRect().width === 0) return void requestAnimationFrame(look);
    // The frame that shows it is painted before this one begins.
    requestAnimationFrame(() => {
      noted.useful = performance.now();
    });
  };
  requestAnimationFrame(look);
}

async function slow(page: Page): Promise<CDPSession> {
  const session = await page.context().newCDPSession(page);
  await session.send("Network.enable");
  await session.send("Network.emulateNetworkConditions", NETWORK);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  return session;
}

/** Opens the address and measures until its page can be used. */
async function start(page: Page, session: CDPSession, address: string): Promise<Figures> {
  const files: number[] = [];
  const paths = new Map<string, string>();
  const asks = ({ requestId, request }: { requestId: string; request: { url: string } }) => {
    paths.set(requestId, new URL(request.url).pathname);
  };
  const came = ({ requestId, encodedDataLength }: { requestId: string; encodedDataLength: number }) => {
    const path = paths.get(requestId) ?? "";
    // What came out of the browser's own store took nothing; what is asked of the hub is no file, and a phone asks for no icon.
    if (encodedDataLength > 0 && !/^\/api\/|icon/.test(path)) files.push(encodedDataLength);
  };
  session.on("Network.requestWillBeSent", asks);
  session.on("Network.loadingFinished", came);
  await page.goto(address, { waitUntil: "commit" });
  await page.waitForFunction(() => (window as never as { noted: { useful: number } }).noted.useful > 0);
  const before = [...files];
  await page.waitForTimeout(2_000);
  const { useful, longest } = await page.evaluate(
    () => (window as never as { noted: { useful: number; longest: number } }).noted,
  );
  session.off("Network.requestWillBeSent", asks);
  session.off("Network.loadingFinished", came);
  return {
    useful,
    longest,
    requests: before.length,
    bytes: before.reduce((sum, one) => sum + one, 0),
  };
}

const median = (of: number[]): number => [...of].sort((a, b) => a - b)[Math.floor(of.length / 2)] ?? 0;

function tells(name: string, kind: string, runs: Figures[]): void {
  const of = (pick: (one: Figures) => number) => Math.round(median(runs.map(pick)));
  console.log(
    `${name} ${kind}: ${of((one) => one.useful)} ms, longest task ${of((one) => one.longest)} ms ` +
      `(worst ${Math.round(Math.max(...runs.map((one) => one.longest)))}), ` +
      `${of((one) => one.requests)} files, ${of((one) => one.bytes)} bytes`,
  );
}

async function measures(crew: Crew, name: Name, base: string, path: string, cookies: Cookies): Promise<void> {
  const cold: Figures[] = [];
  const warm: Figures[] = [];
  for (let run = 0; run < RUNS; run++) {
    const page = await crew.page();
    const context = page.context();
    await context.addCookies(cookies);
    await page.addInitScript(note, USEFUL[name]);
    const session = await slow(page);
    cold.push(await start(page, session, base + path));
    // A browser keeps a script ready to run from its third start on.
    for (let again = 0; again < 3; again++) {
      await page.goto("about:blank");
      const figures = await start(page, session, base + path);
      if (again === 2) warm.push(figures);
    }
    await context.close();
  }
  tells(name, "cold", cold);
  if (name !== "join") tells(name, "warm", warm);
}

type Cookies = Awaited<ReturnType<BrowserContext["cookies"]>>;

test("how each page starts on a slow phone", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  const guest = await crew.joins("VISITOR", "VV");
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  const code = await crew.hub.code("ground");
  await measures(crew, "join", ground.link.base, code, []);
  for (const [name, phone] of [
    ["ground", ground],
    ["operator", cab],
    ["visitor", guest],
  ] as const) {
    const cookies = await phone.page.context().cookies();
    await phone.page.context().close();
    await measures(crew, name, phone.link.base, "/", cookies);
  }
});
