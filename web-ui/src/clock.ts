/** The hub's clock as this phone knows it: the answer with the shortest way there and back counts most. */

interface Sample {
  /** The phone's running clock at the middle of the way, ms. */
  here: number;
  /** The hub's clock then, ms since 1970. */
  at: number;
  /** The whole way there and back, ms. */
  way: number;
}

const KEPT = 8;
const STORE = "rodcall.offset";

export class HubClock {
  private samples: Sample[] = [];
  private speed = 1;

  /** `here` is a clock that only runs forward; `wall` the phone's own date. */
  constructor(
    private readonly here: () => number = () => performance.now(),
    private readonly wall: () => number = () => Date.now(),
    private readonly store: Pick<Storage, "getItem" | "setItem"> | null = storage(),
  ) {}

  /** The hub said its time in answer to a question asked at `asked` on the running clock. */
  answered(asked: number, at: number): void {
    const now = this.here();
    this.samples.push({ here: (asked + now) / 2, at, way: now - asked });
    this.samples = this.samples.slice(-KEPT);
    this.store?.setItem(STORE, String(Math.round(this.now() - this.wall())));
  }

  /** The hub said its time unasked: worth less than any answer, but better than nothing. */
  heard(at: number, speed: number): void {
    if (speed !== this.speed) this.samples = [];
    this.speed = speed;
    if (this.samples.length === 0) this.samples.push({ here: this.here(), at, way: 1_000 });
  }

  /** The hub's clock now, ms since 1970; the phone's own, corrected as last known, before any answer. */
  now(): number {
    const best = this.samples.reduce<Sample | null>((a, b) => (a && a.way <= b.way ? a : b), null);
    if (best) return Math.round(best.at + (this.here() - best.here) * this.speed);
    return this.wall() + Number(this.store?.getItem(STORE) ?? 0);
  }

  /** How many of the hub's milliseconds pass in one of ours: 1, but for a demo that runs fast. */
  rate(): number {
    return this.speed;
  }

  /** True when a moment that the hub has just said is no older than the way here explains. */
  fresh(at: number): boolean {
    return this.now() - at < 3_000 * Math.max(1, this.speed);
  }
}

function storage(): Storage | null {
  try {
    return window.localStorage;
  } catch {
    return null;
  }
}
