/** For tests: a line of the log. */
import type { LogLine } from "../../../wire";

export function line(seq: number, more: Partial<LogLine> = {}): LogLine {
  const made_at = more.made_at ?? new Date(2030, 4, 14, 8, 0, seq).getTime();
  return {
    seq,
    at: made_at,
    made_at,
    by: "RT",
    device: "d-1",
    kind: "reading_taken",
    machine: null,
    mark: null,
    verdict: null,
    english: `Entry ${seq}`,
    spanish: `Asiento ${seq}`,
    portuguese: `Lançamento ${seq}`,
    ...more,
  };
}
