/** Lines of the log as they come: the newest first, further back page by page, and what is new meanwhile. */
import { signal } from "@preact/signals";
import type { Got } from "../../../hub";
import type { LogLine, LogPage, LogQuery } from "../../../wire";

/** The first page is small, so that it is there at once; then as much as the hub gives. */
const FIRST = 200;
const PAGE = 1_000;

export interface Looked {
  /** On its way to the hub. */
  looks: boolean;
  /** The entry down to which was looked; 0 before the first answer. */
  down: number;
  /** There is nothing further back. */
  done: boolean;
  /** Why it did not go on, in the hub's words. */
  trouble: string;
}

export class Lines {
  /** Newest first, each once. */
  readonly all = signal<readonly LogLine[]>([]);
  readonly looked = signal<Looked>({ looks: false, down: 0, done: false, trouble: "" });
  private top: number | null = null;
  private ended = false;
  private asksNew = false;

  constructor(
    private readonly scope: LogQuery,
    private readonly ask: (query: LogQuery) => Promise<Got<LogPage>>,
  ) {}

  /** Nobody looks at these lines any more. */
  end(): void {
    this.ended = true;
  }

  /** Looks further back, until nothing is left or so many more lines have come. */
  async back(most: number): Promise<void> {
    if (this.looked.value.looks || this.looked.value.done) return;
    this.note({ looks: true, trouble: "" });
    let came = 0;
    while (!this.ended && came < most && !this.looked.value.done) {
      const limit = this.top === null ? FIRST : PAGE;
      const got = await this.ask({ ...this.scope, before: this.looked.value.down, limit });
      if (this.ended) return;
      if (!got.ok) return this.note({ looks: false, trouble: got.text });
      const { lines, head, stopped } = got.value;
      this.top ??= head;
      came += lines.length;
      this.all.value = merged(this.all.value, lines);
      const down = stopped ?? lines[lines.length - 1]?.seq ?? 1;
      const whole = stopped === null && lines.length < limit;
      this.note({ down: whole ? 1 : down, done: whole || down <= 1 });
    }
    this.note({ looks: false });
  }

  /** Looks for what is newer than all that was looked at. */
  async forth(head: number): Promise<void> {
    if (this.asksNew) return;
    this.asksNew = true;
    while (!this.ended && this.top !== null && head > this.top) {
      const got = await this.ask({ ...this.scope, after: this.top, limit: PAGE });
      if (this.ended || !got.ok) break;
      const { lines, stopped } = got.value;
      const last = lines[lines.length - 1]?.seq ?? 0;
      this.top = stopped ?? (lines.length < PAGE ? Math.max(got.value.head, last) : last);
      if (lines.length > 0) this.all.value = merged(lines, this.all.value);
    }
    this.asksNew = false;
  }

  private note(what: Partial<Looked>): void {
    this.looked.value = { ...this.looked.value, ...what };
  }
}

/** Newest first, each line once. */
export function merged(a: readonly LogLine[], b: readonly LogLine[]): LogLine[] {
  const all = new Map([...a, ...b].map((line) => [line.seq, line]));
  return [...all.values()].sort((one, other) => other.seq - one.seq);
}
