/**
 * What was said on this phone, kept until the hub has answered for its key. A reload loses nothing;
 * the same key again gets the same answer, so sending once more never says it twice.
 */
import { computed, signal } from "@preact/signals";
import { type IDBPDatabase, openDB } from "idb";
import type { Answer, Asked, Command, Refused } from "./wire";

/** What came of one request. `again` is a hub that could not take it now: keep it. */
export type Reply =
  | { kind: "answer"; answer: Answer }
  | { kind: "refused"; refused: Refused }
  | { kind: "unknown_phone" }
  | { kind: "again" };

export type Settled = Exclude<Reply, { kind: "again" }>;

interface Kept extends Asked {
  /** The device that said it; another device's words are never sent in its name. */
  device: string;
  /** Counts up, so that things go out in the order in which they were said. */
  order: number;
}

export interface Waiting extends Kept {
  /** True once an attempt has failed: the person must use hands. */
  failed: boolean;
}

/** Everything that has no answer yet. */
export const waiting = signal<Waiting[]>([]);
/** Those that the hub has not taken: NOT SENT. */
export const notSent = computed(() => waiting.value.filter((item) => item.failed));

const DATABASE = "rodcall";
const TABLE = "outbox";
const FIRST_PAUSE = 500;
const LONGEST_PAUSE = 4_000;

/** A phone without a database keeps what was said for as long as the page lives. */
async function open(): Promise<IDBPDatabase | null> {
  try {
    return await openDB(DATABASE, 1, {
      upgrade(db) {
        db.createObjectStore(TABLE, { keyPath: "key" });
      },
    });
  } catch {
    return null;
  }
}

export type Send = (asked: Asked) => Promise<Reply>;

export class Outbox {
  private db: Promise<IDBPDatabase | null>;
  private readonly heard = new Map<string, (reply: Settled) => void>();
  private busy = false;
  private pause = FIRST_PAUSE;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private order = Date.now();

  constructor(
    private readonly send: Send,
    private readonly device: () => string,
    private readonly time: () => number,
  ) {
    this.db = open();
  }

  /** Takes up what an earlier page left. Words of another device are dropped; their number is returned. */
  async load(): Promise<number> {
    const db = await this.db;
    const kept: Kept[] = db ? await db.getAll(TABLE) : [];
    const own = kept.filter((item) => item.device === this.device());
    for (const item of kept) if (!own.includes(item)) await db?.delete(TABLE, item.key);
    const known = new Set(waiting.value.map((item) => item.key));
    const taken = own.filter((item) => !known.has(item.key)).map((item) => ({ ...item, failed: true }));
    waiting.value = [...taken, ...waiting.value].sort((a, b) => a.order - b.order);
    void this.flush();
    return kept.length - own.length;
  }

  /** Says something, now or of an earlier moment. Resolves when the hub has answered, however long that takes. */
  async say(command: Command, madeAt?: number): Promise<Settled> {
    const item: Waiting = {
      key: newKey(),
      made_at: madeAt ?? this.time(),
      command,
      device: this.device(),
      order: this.order++,
      failed: false,
    };
    waiting.value = [...waiting.value, item];
    const settled = new Promise<Settled>((resolve) => this.heard.set(item.key, resolve));
    const { failed: _shown, ...kept } = item;
    const written = this.db.then((db) => db?.put(TABLE, kept)).catch(() => undefined);
    // A stop goes at once, past everything that waits; it is written down meanwhile.
    if (command.kind === "stop_all") void this.attempt(item);
    else void written.then(() => this.flush());
    return settled;
  }

  /** Sends what waits, oldest first; stops at the first that the hub can't take now. */
  async flush(): Promise<void> {
    if (this.busy) return;
    this.busy = true;
    clearTimeout(this.timer);
    try {
      for (let next = waiting.value[0]; next; next = waiting.value[0]) {
        if (!(await this.attempt(next))) return;
      }
    } finally {
      this.busy = false;
    }
  }

  /** The link is back: do not wait for the pause to end. */
  hurry(): void {
    this.pause = FIRST_PAUSE;
    void this.flush();
  }

  private async attempt(item: Waiting): Promise<boolean> {
    const reply = await this.send({
      key: item.key,
      made_at: item.made_at,
      command: item.command,
    }).catch((): Reply => ({ kind: "again" }));
    if (reply.kind === "again") {
      waiting.value = waiting.value.map((other) =>
        other.key === item.key ? { ...other, failed: true } : other,
      );
      clearTimeout(this.timer);
      this.timer = setTimeout(() => void this.flush(), this.pause * (0.75 + Math.random() / 2));
      this.pause = Math.min(this.pause * 2, LONGEST_PAUSE);
      return false;
    }
    this.pause = FIRST_PAUSE;
    waiting.value = waiting.value.filter((other) => other.key !== item.key);
    const db = await this.db;
    await db?.delete(TABLE, item.key);
    this.heard.get(item.key)?.(reply);
    this.heard.delete(item.key);
    return true;
  }
}

/** A key of this phone's own: 128 random bits in hex. Plain http has no randomUUID. */
export function newKey(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}
