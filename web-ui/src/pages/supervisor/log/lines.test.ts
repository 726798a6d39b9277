/** How lines come: page by page, further back, and what is new, against a hub that is played. */
import { expect, test } from "vitest";
import type { LogLine, LogQuery } from "../../../wire";
import { line } from "./given";
import { Lines, merged } from "./lines";

/** A log of so many entries, answered as the hub does: pages, no more than a thousand, and a rest that was not looked at. */
function hub(log: { head: number; fits?: (seq: number) => boolean; looks?: number }) {
  const asked: LogQuery[] = [];
  const ask = async (query: LogQuery) => {
    asked.push(query);
    const down = query.before != null;
    const first = down ? (query.before || log.head + 1) - 1 : (query.after ?? 0) + 1;
    const lines: LogLine[] = [];
    let stopped: number | null = null;
    for (let seq = first, looked = 0; down ? seq >= 1 : seq <= log.head; seq += down ? -1 : 1) {
      if (looked++ === (log.looks ?? Number.POSITIVE_INFINITY)) {
        stopped = down ? seq + 1 : seq - 1;
        break;
      }
      if (log.fits?.(seq) ?? true) lines.push(line(seq));
      if (lines.length === query.limit) break;
    }
    return { ok: true as const, value: { lines, head: log.head, stopped } };
  };
  return { log, asked, ask };
}

test("a day comes whole, a small page first", async () => {
  const { asked, ask } = hub({ head: 2_350 });
  const lines = new Lines({ day: "d" }, ask);
  await lines.back(Number.POSITIVE_INFINITY);
  expect(lines.all.value.map((one) => one.seq)).toEqual(Array.from({ length: 2_350 }, (_, i) => 2_350 - i));
  expect(lines.looked.value).toEqual({ looks: false, down: 1, done: true, trouble: "" });
  expect(asked.map((one) => one.limit)).toEqual([200, 1_000, 1_000, 1_000]);
  expect(asked.every((one) => one.day === "d")).toBe(true);
});

test("a search through a season says how far it has looked, and goes on when told", async () => {
  const { ask } = hub({ head: 5_000, fits: (seq) => seq % 10 === 0, looks: 700 });
  const lines = new Lines({}, ask);
  await lines.back(100);
  expect(lines.all.value.length).toBeGreaterThanOrEqual(100);
  expect(lines.looked.value.done).toBe(false);
  await lines.back(Number.POSITIVE_INFINITY);
  expect(lines.all.value).toHaveLength(500);
  expect(lines.looked.value.done).toBe(true);
});

test("what is new comes once, also when nothing fitted before", async () => {
  const { log, ask } = hub({ head: 4, fits: (seq) => seq > 4 });
  const lines = new Lines({}, ask);
  await lines.back(10);
  expect(lines.all.value).toEqual([]);
  log.head = 7;
  await Promise.all([lines.forth(7), lines.forth(7)]);
  expect(lines.all.value.map((one) => one.seq)).toEqual([7, 6, 5]);
});

test("what did not come is said, and asked again from where it stopped", async () => {
  const { ask } = hub({ head: 1_500 });
  let broken = false;
  const lines = new Lines({}, async (query) => {
    if (broken) return { ok: false, text: "no hub" };
    broken = true;
    return ask(query);
  });
  await lines.back(Number.POSITIVE_INFINITY);
  expect(lines.looked.value).toMatchObject({ looks: false, done: false, trouble: "no hub" });
  expect(lines.all.value).toHaveLength(200);
  const works = new Lines({}, ask);
  await works.back(Number.POSITIVE_INFINITY);
  expect(works.all.value).toHaveLength(1_500);
});

test("an answer that comes after nobody looks any more changes nothing", async () => {
  let answer: () => void = () => undefined;
  const { ask } = hub({ head: 3 });
  const lines = new Lines({}, async (query) => {
    await new Promise<void>((next) => {
      answer = next;
    });
    return ask(query);
  });
  const looks = lines.back(10);
  lines.end();
  answer();
  await looks;
  expect(lines.all.value).toEqual([]);
});

test("lines stand newest first, each once", () => {
  const seqs = merged([line(3), line(1)], [line(2), line(3)]).map((one) => one.seq);
  expect(seqs).toEqual([3, 2, 1]);
});
