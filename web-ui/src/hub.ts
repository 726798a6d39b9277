/** The hub, as the pages speak with it: typed requests, the live link, the outbox. */
import { batch, effect } from "@preact/signals";
import { Assembled } from "./assembled";
import { lastSeen, rememberWhoIsIn } from "./last_seen";
import { Link } from "./link";
import { Outbox, type Reply, type Settled } from "./outbox";
import { said } from "./said";
import * as state from "./state";
import { noticeUpgrade, ownScript } from "./upgrade";
import type {
  Answer,
  Asked,
  Codes,
  Command,
  FromHub,
  Ground,
  HowToRead,
  ImportPreview,
  JoinOffer,
  LogPage,
  LogQuery,
  Me,
  Operator,
  PocketSheets,
  Refused,
  Restored,
  Sheet,
  SiteDraft,
  SiteDrafted,
  SiteSheet,
  SumDone,
  Supervisor,
  Visitor,
} from "./wire";
import { learn, witness } from "./witness";
import { t } from "./words";

/** A hub that answers nothing in this time counts as not there. */
const LIMIT = 6_000;

export async function ask(path: string, body?: unknown, limit = LIMIT): Promise<Response> {
  // A page that shows what was says nothing: it has no hub.
  if (state.replays) throw new Error(path);
  const stop = new AbortController();
  const timer = setTimeout(() => stop.abort(), limit);
  try {
    const sent = body === undefined ? {} : { method: "POST", body: JSON.stringify(body) };
    const headers = { "Content-Type": "application/json" };
    return await fetch(path, { ...sent, headers, signal: stop.signal, cache: "no-store" });
  } finally {
    clearTimeout(timer);
  }
}

/** What was asked for, or the hub's own words why not. */
export type Got<T> = { ok: true; value: T } | { ok: false; text: string };

export async function get<T>(path: string, body?: unknown, limit = LIMIT): Promise<Got<T>> {
  try {
    const response = await ask(path, body, limit);
    if (response.ok) return { ok: true, value: (await response.json()) as T };
    return { ok: false, text: await reason(response) };
  } catch {
    return { ok: false, text: t().noHub };
  }
}

/** The hub's own words why not. */
export async function reason(response: Response): Promise<string> {
  const text = await response.text();
  try {
    return own(JSON.parse(text));
  } catch {
    return text || `${response.status}`;
  }
}

export function own(refused: Partial<Refused>): string {
  return said(refused) || t().noHub;
}

export const offer = (code: string) => get<JoinOffer>(`/api/join/${encodeURIComponent(code)}`);
export const codes = () => get<Codes>("/api/codes");
/** Opens the next day; this phone is let in again by the cookie in the answer. */
export const openNextDay = () => get<Me>("/api/day/next", {});
export const compute = (computation: string, inputs: Record<string, string>) =>
  get<SumDone>("/api/compute", { computation, inputs });
export const pocketSheet = () => get<PocketSheets>("/api/pocket-sheet");
export const siteForm = () => get<SiteSheet>("/api/site/form");
export const draftSite = (draft: SiteDraft) => get<SiteDrafted>("/api/site/draft", draft);
export const changeSite = (draft: SiteDraft, why: string, seen: string) =>
  get<Answer>("/api/site/change", { key: freshKey("s"), made_at: state.clock.now(), draft, why, seen });

/** What a file would give; nothing is changed. A large file takes longer than other questions. */
export async function previewImport(file: Blob, how: HowToRead): Promise<Got<ImportPreview>> {
  const asked = new URLSearchParams();
  for (const [name, value] of Object.entries(how)) asked.set(name, String(value));
  try {
    const headers = { "Content-Type": "text/plain" };
    const response = await fetch(`/api/import/preview?${asked}`, { method: "POST", body: file, headers });
    if (response.ok) return { ok: true, value: await response.json() };
    return { ok: false, text: await reason(response) };
  } catch {
    return { ok: false, text: t().noHub };
  }
}

export const chooseAddress = (host: string) => get<unknown>("/api/address", { host });
/** A season's log takes its time. */
export const tryRestore = () => get<Restored>("/api/try-restore", {}, 600_000);

export function log(query: LogQuery): Promise<Got<LogPage>> {
  const asked = new URLSearchParams();
  for (const [name, value] of Object.entries(query)) {
    if (value !== undefined && value !== "") asked.set(name, String(value));
  }
  return get(`/api/log?${asked}`);
}

/** Asks who this phone is; null when the hub does not know it, nothing when the hub is not there. */
export async function whoAmI(): Promise<Me | null | undefined> {
  try {
    const response = await ask("/api/me");
    if (response.ok) return (await response.json()) as Me;
    return response.status === 401 ? null : undefined;
  } catch {
    return undefined;
  }
}

async function post(asked: Asked): Promise<Reply> {
  const response = await ask("/api/say", asked);
  if (response.ok) return { kind: "answer", answer: await response.json() };
  if (response.status === 401) return { kind: "unknown_phone" };
  if (response.status === 429 || response.status >= 500) return { kind: "again" };
  const text = await response.text();
  return { kind: "refused", refused: refusal(text) };
}

function refusal(text: string): Refused {
  try {
    const { refusal, ...why } = JSON.parse(text);
    if (why.english) return { kind: refusal?.kind ?? "refused", ...why };
  } catch {
    // Plain text stands for itself.
  }
  return { kind: "refused", english: text, spanish: text };
}

/** The one outbox of this page. */
export const outbox = new Outbox(
  post,
  () => state.me.value ?? lastSeen()?.me ?? { device: "", person: "" },
  () => state.clock.now(),
  () => {
    state.me.value = null;
  },
);

/** A newer page is looked for so long after the link has come, ms. */
const UPGRADE_LATER = 2_000;

/** Says something to the hub, now or of an earlier moment. A refusal is shown on the page unless `quiet`. */
export async function say(command: Command, quiet = false, madeAt?: number): Promise<Settled> {
  const reply = await outbox.say(command, madeAt);
  if (reply.kind === "refused" && !quiet) state.notice.value = own(reply.refused);
  return reply;
}

/** A receipt: worth nothing later, so it is never kept; whether it got through. */
export async function receipt(command: Command): Promise<boolean> {
  try {
    const reply = await post({ key: freshKey("r"), made_at: state.clock.now(), command });
    return reply.kind !== "again";
  } catch {
    return false;
  }
}

function freshKey(kind: string): string {
  return `${kind}-${crypto.getRandomValues(new Uint32Array(3)).join("-")}`;
}

let link: Link | null = null;
/** What the hub said before it was known who this phone is; nothing waits any more once that is known. */
let early: FromHub[] | null = null;

/**
 * Opens the socket while the hub is still asked who this phone is: on a slow link that saves a way there and back. What it says
 * is heard once the phone is known, in `connect`; until then the hub hears no word that this page's script lives.
 */
export function reach(): void {
  if (link) return;
  early = [];
  open();
}

/** The hub does not know this phone, or did not answer: its socket is given up. */
export function turnAway(): void {
  if (!early) return;
  early = null;
  link?.end();
  link = null;
}

/** Opens the live link for a phone that has joined. */
export function connect(): void {
  // Whoever has come in now: what an earlier person left is left in sight, not sent.
  void outbox.load();
  if (link && !early) return;
  const heardEarly = early ?? [];
  early = null;
  if (!link) open();
  // At once when it changes, and again with each heartbeat: a word into a broken link is lost.
  effect(alive);
  setInterval(() => {
    state.now.value = state.clock.now();
    outbox.tick();
  }, 500);
  setInterval(() => link?.say({ kind: "clock", t0: performance.now() }), 10_000);
  batch(() => {
    for (const message of heardEarly) heard(message);
  });
}

function open(): void {
  const scheme = location.protocol === "https:" ? "wss" : "ws";
  // Which build this page is: one that the hub does not serve gets whole views.
  link = new Link(`${scheme}://${location.host}/api/live?page=${encodeURIComponent(ownScript() ?? "")}`, {
    said: (message) => {
      // What the clock learns from a message is true at the moment when it comes, and not later.
      tellsTime(message);
      if (early) early.push(message);
      else heard(message);
    },
    lost: () => {
      state.linked.value = false;
    },
    notLetIn: () => void stillKnown(),
  });
  link.start();
}

/** A hub that is there and does not know the phone says so to whoever holds it; what waits on the phone stays there. */
async function stillKnown(): Promise<void> {
  if (state.me.value && (await whoAmI()) === null) state.me.value = null;
}

/** Tells the hub over the socket that a call is on this phone. */
export function have(call: number): void {
  link?.say({ kind: "have", call });
}

function tellsTime(message: FromHub): void {
  if (message.kind === "clock") state.clock.answered(message.t0, message.at);
  if (message.kind === "hello" || message.kind === "beat") state.clock.heard(message.at, message.speed);
}

function heard(message: FromHub): void {
  switch (message.kind) {
    case "hello":
      // A fetch of its own: after what the first page needs.
      setTimeout(() => void noticeUpgrade(message.build), UPGRADE_LATER);
      witness(message.log, (saw) => link?.say(saw));
      outbox.hurry();
      break;
    case "clock":
      break;
    case "beat":
      beat(message);
      break;
    case "view":
      view(message);
      break;
    case "bye":
      if (message.why === "closing") break;
      // It stays in over the night: the page that comes asks who holds it.
      if (message.why === "ask_who") {
        location.reload();
        break;
      }
      state.bye.value = message.why;
      link?.end();
      break;
  }
}

function beat(message: Extract<FromHub, { kind: "beat" }>): void {
  // A beat that lay in a sleeping phone says nothing of now.
  if (!state.clock.fresh(message.at)) return;
  batch(() => {
    state.linked.value = true;
    state.beats.value++;
    state.halted.value = message.halted;
    state.unkept.value = message.stop ?? null;
    state.head.value = message.head;
    state.now.value = state.clock.now();
  });
  learn(message.head, message.hash);
  alive();
}

/** This page's script runs; a cab's page says with it what it can't give. */
function alive(): void {
  link?.say({ kind: "alive", page: state.cabPage.value });
}

function view(message: Extract<FromHub, { kind: "view" }>): void {
  take(message);
  rememberWhoIsIn();
}

const views = new Assembled();

function take(message: Extract<FromHub, { kind: "view" }>): void {
  const view: unknown = views.take(message.topic, message);
  switch (message.topic) {
    case "operator":
      state.operator.value = view as Operator;
      break;
    case "ground":
      state.ground.value = view as Ground;
      break;
    case "supervisor":
      state.supervisor.value = view as Supervisor;
      break;
    case "sheet":
      state.sheet.value = view as Sheet;
      break;
    case "visitor":
      state.visitor.value = view as Visitor;
      break;
  }
}
