/**
 * Photos that were taken on this phone, kept until the hub has their bytes. Each is promised first, as something that is
 * said; then its bytes go. A reload loses nothing, and the same bytes again are taken once.
 */
import type { Settled } from "../outbox";
import { Table } from "../table";
import type { CommandOf } from "../wire";

export interface KeptPhoto {
  /** The phone's own name for it. */
  photo: string;
  bytes: Uint8Array;
  /** `promise_photo`, as it is said. */
  promise: CommandOf<"promise_photo">;
  /** The hub has taken the promise: from then on whoever uses this phone may bring the bytes. */
  promised: boolean;
  /** Who took it: nobody else promises it in their own name. */
  person: string;
  /** Counts up, so that they go out in the order in which they were taken. */
  order: number;
}

/** What came of bringing the bytes once. */
export type Brought = { kind: "kept" } | { kind: "again" } | { kind: "refused"; text: string };

export interface Hub {
  say(promise: KeptPhoto["promise"]): Promise<Settled>;
  bring(photo: KeptPhoto): Promise<Brought>;
  person(): string;
  /** How many wait. */
  waiting(many: number): void;
  /** A word to the person: why the hub does not take the bytes, or how many were taken under another name. */
  refused(text: string): void;
  dropped(many: number): void;
}

const FIRST_PAUSE = 1_000;
const LONGEST_PAUSE = 20_000;

export class PhotoQueue {
  /** A phone without a database, or with one that does not open, keeps them for as long as the page lives. */
  private readonly table = new Table<KeptPhoto>("rodcall-photos", "photos", "photo", {
    onlyInMemory: () => undefined,
    openedLate: () => {
      for (const one of this.photos) void this.write(one);
      void this.load();
    },
  });
  private photos: KeptPhoto[] = [];
  /** Those whose promise is on its way. */
  private readonly saying = new Set<string>();
  private busy = false;
  private pause = FIRST_PAUSE;
  private timer: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly hub: Hub) {}

  /** Takes up what an earlier page left. What somebody else took and never promised is dropped. */
  async load(): Promise<void> {
    const kept = await this.table.all();
    const known = new Set(this.photos.map((one) => one.photo));
    const found = kept.filter((one) => !known.has(one.photo));
    const own = found.filter((one) => one.promised || one.person === this.hub.person());
    for (const one of found) if (!own.includes(one)) await this.table.delete(one.photo);
    if (own.length < found.length) this.hub.dropped(found.length - own.length);
    this.set([...own, ...this.photos].sort((a, b) => a.order - b.order));
    this.go();
  }

  /** Keeps one more, then promises it at once, so that the promise bears the hour at which it was taken. */
  async keep(photo: Pick<KeptPhoto, "photo" | "bytes" | "promise">): Promise<void> {
    const order = Math.max(Date.now(), (this.photos.at(-1)?.order ?? 0) + 1);
    const kept: KeptPhoto = { ...photo, person: this.hub.person(), order, promised: false };
    this.set([...this.photos, kept]);
    // First the bytes: a page that dies here has promised nothing.
    await this.write(kept);
    this.go();
  }

  /** The link is back: do not wait for the pause to end. */
  hurry(): void {
    this.pause = FIRST_PAUSE;
    this.go();
  }

  private go(): void {
    for (const one of this.photos) void this.promise(one);
    void this.flush();
  }

  /** A promise that an earlier page has left in the outbox is said a second time here; the hub takes it once. */
  private async promise(photo: KeptPhoto): Promise<void> {
    if (photo.promised || this.saying.has(photo.photo) || photo.person !== this.hub.person()) return;
    this.saying.add(photo.photo);
    const reply = await this.hub.say(photo.promise);
    this.saying.delete(photo.photo);
    if (reply.kind === "refused") await this.forget(photo);
    if (reply.kind !== "answer") return;
    photo.promised = true;
    await this.write(photo);
    void this.flush();
  }

  /** Brings what is promised, oldest first; stops at the first that the hub can't take now. */
  private async flush(): Promise<void> {
    if (this.busy) return;
    this.busy = true;
    clearTimeout(this.timer);
    try {
      const next = () => this.photos.find((one) => one.promised);
      for (let photo = next(); photo; photo = next()) {
        if (!(await this.bring(photo))) break;
      }
    } finally {
      this.busy = false;
    }
  }

  private async bring(photo: KeptPhoto): Promise<boolean> {
    const brought = await this.hub.bring(photo).catch((): Brought => ({ kind: "again" }));
    if (brought.kind === "again") {
      this.timer = setTimeout(() => void this.flush(), this.pause * (0.75 + Math.random() / 2));
      this.pause = Math.min(this.pause * 2, LONGEST_PAUSE);
      return false;
    }
    this.pause = FIRST_PAUSE;
    if (brought.kind === "refused") this.hub.refused(brought.text);
    await this.forget(photo);
    return true;
  }

  private async forget(photo: KeptPhoto): Promise<void> {
    this.set(this.photos.filter((one) => one !== photo));
    await this.table.delete(photo.photo);
  }

  private async write(photo: KeptPhoto): Promise<void> {
    await this.table.put(photo);
  }

  private set(photos: KeptPhoto[]): void {
    this.photos = photos;
    this.hub.waiting(photos.length);
  }
}
