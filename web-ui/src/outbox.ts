/**
 * What was said on this phone, kept until the hub has answered for its key. A reload loses nothing; the same key again gets the
 * same answer, so sending once more never says it twice. What can't be sent any more is left, in sight, until a person says what
 * becomes of it.
 */
import { computed, signal } from "@preact/signals";
import { Table } from "./table";
import { asksFirst, isQuiet, wordsOf } from "./typed";
import type { Answer, Asked, Command, Outcome, Refused } from "./wire";

/** What came of one request. `again` is a hub that could not take it now: keep it. */
export type Reply =
  | { kind: "answer"; answer: Answer }
  | { kind: "refused"; refused: Refused }
  | { kind: "unknown_phone" }
  /** Its own person threw it away before it went. */
  | { kind: "dropped" }
  | { kind: "again" };

export type Settled = Exclude<Reply, { kind: "again" }>;

interface Kept extends Asked {
  /** The device that said it; another device's words are never sent in its name. */
  device: string;
  /** Who held the phone then. */
  person: string;
  /** Counts up, so that things go out in the order in which they were said. */
  order: number;
}

export interface Waiting extends Kept {
  /** True once an attempt has failed: the person must use hands. */
  failed: boolean;
  /** It would become a call, and the person may have used hands meanwhile: SEND or DROP comes first. */
  held: boolean;
}

/** What goes out no more by itself: said by a phone that the hub no longer knew, or refused after it had waited. */
export interface Left extends Kept {
  left: true;
  refused?: Refused;
  /** Sent as from paper, it was asked about. */
  asked?: AskedAbout;
}

export type AskedAbout = Extract<Outcome, { kind: "asked" }>;

/** Everything that has no answer yet. */
export const waiting = signal<Waiting[]>([]);
/** Those that the hub has not taken: NOT SENT. */
export const notSent = computed(() => waiting.value.filter((item) => item.failed));
/** Those that wait for SEND or DROP. */
export const held = computed(() => waiting.value.filter((item) => item.held));
/** What nobody has said the last word about. */
export const left = signal<Left[]>([]);
/** This phone keeps nothing: a page that closes forgets what waits. */
export const onlyInMemory = signal(false);
/** A STOP of this phone that no hub has taken: `nobody` when the hub does not know the phone any more. */
export const stopNotTaken = computed<"waits" | "nobody" | null>(() => {
  if (left.value.some(isStop)) return "nobody";
  return notSent.value.some(isStop) ? "waits" : null;
});

const FIRST_PAUSE = 500;
const LONGEST_PAUSE = 4_000;
/** A STOP without an answer for this long is said to be not taken, ms. It may still arrive. */
const STOP_SILENCE = 2_000;
/** A reading this old is kept by the hub and told to no cab (its limit is 90 s): then it goes without a question, ms. */
const TOO_OLD = 120_000;

export type Send = (asked: Asked) => Promise<Reply>;

/** Whose phone this is. */
export interface Owner {
  device: string;
  person: string;
}

const isStop = (item: Kept) => item.command.kind === "stop_all";

export class Outbox {
  private readonly table: Table<Kept | Left>;
  private readonly heard = new Map<string, (reply: Settled) => void>();
  private readonly flying = new Set<string>();
  /** What was left and is said anew, by its key. */
  private readonly resaid = new Map<string, Left>();
  private busy = false;
  private pause = FIRST_PAUSE;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private stopTimer: ReturnType<typeof setTimeout> | undefined;
  private order = Date.now();

  constructor(
    private readonly send: Send,
    private readonly owner: () => Owner,
    private readonly time: () => number,
    /** The hub does not know this phone any more. */
    private readonly unknown: () => void = () => undefined,
  ) {
    this.table = new Table("rodcall", "outbox", "key", {
      onlyInMemory: (only) => {
        onlyInMemory.value = only;
      },
      openedLate: () => {
        for (const item of waiting.value) void this.table.put(bare(item));
        for (const item of left.value) void this.table.put(item);
        void this.load();
      },
    });
  }

  /** Takes up what an earlier page left; another device's words are left for the person who holds the phone now. */
  async load(): Promise<void> {
    const kept = await this.table.all();
    const known = new Set([...waiting.value, ...left.value].map((item) => item.key));
    const mine = this.owner().device;
    const fresh = kept.filter((item) => !known.has(item.key));
    const isLeft = (item: Kept | Left): item is Left => "left" in item;
    const own = fresh.filter((item) => !isLeft(item) && item.device === mine);
    const taken = own.map((item) => ({ ...item, failed: true, held: asksFirst(item.command) }));
    waiting.value = inOrder([...taken, ...waiting.value]);
    left.value = inOrder([...left.value, ...fresh.filter(isLeft)]);
    for (const item of fresh) if (!isLeft(item) && !own.includes(item)) this.leave(item);
    void this.flush();
  }

  /** Says something, now or of an earlier moment. Resolves when the hub has answered, however long that takes. */
  async say(command: Command, madeAt?: number): Promise<Settled> {
    const item: Waiting = {
      key: newKey(),
      made_at: madeAt ?? this.time(),
      command,
      ...this.named(),
      order: this.order++,
      failed: false,
      held: false,
    };
    waiting.value = [...waiting.value, item];
    const settled = new Promise<Settled>((resolve) => this.heard.set(item.key, resolve));
    const written = this.table.put(bare(item));
    if (isStop(item)) {
      // A stop goes at once, past everything that waits; it is written down meanwhile.
      void this.attempt(item);
      setTimeout(() => this.change(item.key, { failed: true }), STOP_SILENCE);
    } else void written.then(() => this.flush());
    return settled;
  }

  /** Sends what waits, stops first, then the oldest; ends at the first that the hub can't take now. */
  async flush(): Promise<void> {
    this.stops();
    if (this.busy) return;
    this.busy = true;
    clearTimeout(this.timer);
    try {
      this.disown();
      for (let next = this.next(); next; next = this.next()) {
        if (!(await this.attempt(next))) return;
      }
    } finally {
      this.busy = false;
    }
  }

  /** The link is back: do not wait for the pause to end. */
  hurry(): void {
    this.pause = FIRST_PAUSE;
    this.flying.clear();
    void this.flush();
  }

  /** A reading that nobody has answered for is too old for a call after a while: it goes to the log as late. */
  tick(): void {
    const old = (item: Waiting) =>
      item.held && item.command.kind === "take_reading" && this.time() - item.made_at > TOO_OLD;
    const over = waiting.value.filter(old);
    for (const item of over) this.change(item.key, { held: false });
    if (over.length > 0) void this.flush();
  }

  /** Its person says SEND after all. What is sent says that it was asked. */
  release(key: string): void {
    const item = waiting.value.find((one) => one.key === key);
    if (!item) return;
    const { command } = item;
    const asked: Command = command.kind === "take_reading" ? { ...command, waited: true } : command;
    this.change(key, { held: false, command: asked });
    void this.keep(key).then(() => this.flush());
  }

  /**
   * Its person says DROP. The drop goes out under the same key: if the hub had taken the words after all, the answer to them
   * comes back; if they are still on a slow way, they find their key used.
   */
  async drop(key: string): Promise<Settled> {
    const item = waiting.value.find((one) => one.key === key);
    if (!item) return { kind: "dropped" };
    const { kind } = item.command;
    this.settle(key, { kind: "dropped" });
    this.change(key, {
      held: false,
      command: { kind: "drop_unsent", what: kind, words: wordsOf(item.command) },
    });
    const settled = new Promise<Settled>((resolve) => this.heard.set(key, resolve));
    void this.keep(key).then(() => this.flush());
    return settled;
  }

  /** What was left is said by whoever holds the phone now, of its own moment. Refused or asked about, it is left again. */
  resay(item: Left, command: Command): void {
    left.value = left.value.filter((other) => other.key !== item.key);
    this.resaid.set(item.key, item);
    const { key, made_at, order } = item;
    waiting.value = [
      ...waiting.value,
      { key, made_at, command, ...this.named(), order, failed: false, held: false },
    ];
    void this.keep(key).then(() => this.flush());
  }

  /** Whoever pressed STOP in vain has seen that the machines stand still. */
  forgetStops(): void {
    for (const item of left.value.filter(isStop)) this.forget(item.key);
  }

  /** What was left is thrown away. */
  forget(key: string): void {
    left.value = left.value.filter((item) => item.key !== key);
    void this.table.delete(key);
  }

  private named(): Owner {
    const { device, person } = this.owner();
    return { device, person };
  }

  private next(): Waiting | undefined {
    return waiting.value.find((item) => !item.held && !isStop(item));
  }

  /** Stops wait for nothing, not even for each other. */
  private stops(): void {
    clearTimeout(this.stopTimer);
    for (const item of waiting.value) if (isStop(item) && !this.flying.has(item.key)) void this.attempt(item);
  }

  /** Words of another device are not sent in this one's name. */
  private disown(): void {
    const { device } = this.owner();
    const strange = waiting.value.filter((item) => item.device !== device && !isStop(item));
    for (const item of strange) {
      waiting.value = waiting.value.filter((other) => other.key !== item.key);
      this.leave(bare(item));
      this.settle(item.key, { kind: "unknown_phone" });
    }
  }

  private async attempt(item: Waiting): Promise<boolean> {
    this.flying.add(item.key);
    const { key, made_at, command } = item;
    const reply = await this.send({ key, made_at, command }).catch((): Reply => ({ kind: "again" }));
    this.flying.delete(key);
    const now = waiting.value.find((other) => other.key === key);
    // Another attempt has had the answer.
    if (!now) return true;
    if (reply.kind === "again") {
      this.failed(now);
      return false;
    }
    this.pause = FIRST_PAUSE;
    waiting.value = waiting.value.filter((other) => other.key !== key);
    const before = this.resaid.get(key);
    this.resaid.delete(key);
    if (before && reply.kind === "refused") {
      this.leave({ ...before, refused: reply.refused });
    } else if (before && reply.kind === "answer" && reply.answer.outcome.kind === "asked") {
      // Its key is used by the question.
      await this.table.delete(key);
      this.leave({ ...before, key: newKey(), asked: reply.answer.outcome });
    } else if (reply.kind === "unknown_phone") {
      if (isQuiet(command)) await this.table.delete(key);
      else this.leave(bare(now));
      this.unknown();
    } else if (reply.kind === "refused" && now.failed && !isQuiet(command)) {
      this.leave({ ...bare(now), refused: reply.refused });
    } else await this.table.delete(key);
    this.settle(key, reply);
    return true;
  }

  private failed(item: Waiting): void {
    this.change(item.key, { failed: true, held: item.held || asksFirst(item.command) });
    const again = () => void this.flush();
    if (isStop(item)) {
      clearTimeout(this.stopTimer);
      this.stopTimer = setTimeout(again, FIRST_PAUSE);
      return;
    }
    clearTimeout(this.timer);
    this.timer = setTimeout(again, this.pause * (0.75 + Math.random() / 2));
    this.pause = Math.min(this.pause * 2, LONGEST_PAUSE);
  }

  private settle(key: string, reply: Settled): void {
    this.heard.get(key)?.(reply);
    this.heard.delete(key);
  }

  private leave(item: Kept & Partial<Left>): void {
    const kept: Left = { ...item, left: true };
    left.value = inOrder([...left.value.filter((other) => other.key !== item.key), kept]);
    void this.table.put(kept);
  }

  private change(key: string, to: Partial<Waiting>): void {
    waiting.value = waiting.value.map((other) => (other.key === key ? { ...other, ...to } : other));
  }

  private async keep(key: string): Promise<void> {
    const item = waiting.value.find((one) => one.key === key);
    if (item) await this.table.put(bare(item));
  }
}

function bare({ failed: _failed, held: _held, ...kept }: Waiting): Kept {
  return kept;
}

function inOrder<Item extends Kept>(items: Item[]): Item[] {
  return items.sort((a, b) => a.order - b.order);
}

/** A key of this phone's own: 128 random bits in hex. Plain http has no randomUUID. */
export function newKey(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}
