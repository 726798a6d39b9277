/**
 * Measures how each page starts on a slow phone: a processor four times slower, 1.6 Mbit/s, 150 ms. Cold is a browser that has
 * fetched nothing and is known to the hub by its cookie; warm is its next start. Median and best of RUNS: a machine that does
 * other work besides lengthens all but the best. The page's own processor time is told apart, for that it does not lengthen.
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
  /** What the page's main thread has worked until then, ms of this machine's own processor, not slowed. */
  worked: number;
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
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  await session.send("Network.enable");
  await session.send("Network.emulateNetworkConditions", NETWORK);
  return session;
}

/** Opens the address and measures until its page can be used. */
async function start(page: Page, session: CDPSession, address: string, slower = SLOWER): Promise<Figures> {
  await session.send("Emulation.setCPUThrottlingRate", { rate: slower });
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
  const { metrics } = await session.send("Performance.getMetrics");
  const worked = 1_000 * (metrics.find((one) => one.name === "TaskDuration")?.value ?? 0);
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
    worked,
  };
}

const median = (of: number[]): number => [...of].sort((a, b) => a - b)[Math.floor(of.length / 2)] ?? 0;

function tells(name: string, kind: string, runs: Figures[], apart: Figures): void {
  const of = (pick: (one: Figures) => number) => Math.round(median(runs.map(pick)));
  const best = (pick: (one: Figures) => number) => Math.round(Math.min(...runs.map(pick)));
  const [useful, longest] = [(one: Figures) => one.useful, (one: Figures) => one.longest];
  console.log(
    `${name} ${kind}: ${of(useful)} ms (best ${best(useful)}), longest task ${of(longest)} ms (best ${best(longest)}), ` +
      `${of((one) => one.requests)} files, ${of((one) => one.bytes)} bytes; own processor time ${Math.round(apart.worked)} ms, not slowed`,
  );
}

/** A browser of its own: one start cold, then as many as it takes until it keeps the script ready to run (its third). */
async function phone(crew: Crew, name: Name, address: string, cookies: Cookies, slower = SLOWER): Promise<[Figures, Figures]> {
  const page = await crew.page();
  await page.context().addCookies(cookies);
  await page.addInitScript(note, USEFUL[name]);
  const session = await slow(page);
  const cold = await start(page, session, address, slower);
  let warm = cold;
  for (let again = 0; again < 3; again++) {
    await page.goto("about:blank");
    warm = await start(page, session, address, slower);
  }
  await page.context().close();
  return [cold, warm];
}

async function measures(crew: Crew, name: Name, address: string, cookies: Cookies): Promise<void> {
  const [cold, warm]: [Figures[], Figures[]] = [[], []];
  for (let run = 0; run < RUNS; run++) {
    const [first, later] = await phone(crew, name, address, cookies);
    cold.push(first);
    warm.push(later);
  }
  const [coldApart, warmApart] = await phone(crew, name, address, cookies, 1);
  tells(name, "cold", cold, coldApart);
  if (name !== "join") tells(name, "warm", warm, warmApart);
}

type Cookies = Awaited<ReturnType<BrowserContext["cookies"]>>;

test("how each page starts on a slow phone", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  const guest = await crew.joins("VISITOR", "VV");
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  const code = await crew.hub.code("ground");
  await measures(crew, "join", ground.link.base + code, []);
  for (const [name, phone] of [
    ["ground", ground],
    ["operator", cab],
    ["visitor", guest],
  ] as const) {
    const cookies = await phone.page.context().cookies();
    await phone.page.context().close();
    await measures(crew, name, `${phone.link.base}/`, cookies);
  }
});
