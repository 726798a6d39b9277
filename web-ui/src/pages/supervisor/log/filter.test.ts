/** What the filter of LOG lets through, and what it offers. */
import { expect, test } from "vitest";
import { acting, EVERY, type Filter, filterIn, find, minuteIn, scopeOf } from "./filter";
import { line } from "./given";

const at = (hour: number, minute: number, second = 0) =>
  new Date(2030, 4, 14, hour, minute, second).getTime();
const LINES = [
  line(5, {
    by: "OW",
    kind: "call_got",
    machine: "EX-1",
    mark: "P-1",
    english: "Call 3: GOT IT pressed.",
    spanish: "Orden 3: apretó ENTENDIDO.",
    made_at: at(10, 31),
  }),
  line(4, {
    kind: "call_sent",
    machine: "EX-1",
    mark: "P-1",
    verdict: "high",
    english: "EX-1 ← DOWN 3",
    spanish: "EX-1 ← BAJA 3",
    portuguese: "EX-1 ← DESÇA 3",
    made_at: at(10, 30, 59),
  }),
  line(3, { mark: "P-1", verdict: "high", made_at: at(10, 30) }),
  line(2, { mark: "P-2", verdict: "low", made_at: at(10, 29, 59), english: "Línea", spanish: "LÍNEA" }),
  line(1, { by: "PN", kind: "stopped", made_at: at(0, 10) }),
];
const filter = (part: Partial<Filter>): Filter => ({ ...filterIn({}), ...part });
const seqs = (part: Partial<Filter>) => find(LINES, filter(part)).lines.map((one) => one.seq);

test("without a filter every line stands, in its order", () => {
  expect(seqs({})).toEqual([5, 4, 3, 2, 1]);
  expect(acting(filter({ day: EVERY, words: "  " }))).toBe(0);
});

test("each name holds back what has another or none", () => {
  expect(seqs({ by: "OW" })).toEqual([5]);
  expect(seqs({ machine: "EX-1" })).toEqual([5, 4]);
  expect(seqs({ mark: "P-1", verdict: "high" })).toEqual([4, 3]);
  expect(seqs({ mark: "P-9" })).toEqual([]);
});

test("words are looked for in each language and in who said it, without capitals and accents, all of them", () => {
  expect(seqs({ words: "linea" })).toEqual([2]);
  expect(seqs({ words: "ENTENDIDO" })).toEqual([5]);
  expect(seqs({ words: "down ex-1" })).toEqual([4]);
  expect(seqs({ words: "desca" })).toEqual([4]);
  expect(seqs({ words: "pn" })).toEqual([1]);
  expect(seqs({ words: "down nothing" })).toEqual([]);
});

test("hours hold the last minute whole, and an end before the beginning lies behind midnight", () => {
  expect(seqs({ from: "10:30", to: "10:30" })).toEqual([4, 3]);
  expect(seqs({ from: "10:31" })).toEqual([5]);
  expect(seqs({ to: "10:29" })).toEqual([2, 1]);
  expect(seqs({ from: "22:00", to: "0:30" })).toEqual([1]);
});

test("what is no time of day holds nothing back and does not act", () => {
  for (const from of ["noon", "25:00", "10:65", "10", "10:5"]) {
    expect(minuteIn(from)).toBeNull();
    expect(seqs({ from })).toHaveLength(5);
    expect(acting(filter({ from }))).toBe(0);
  }
});

test("each name offers what its own choice would leave, with how many", () => {
  const { choices } = find(LINES, filter({ mark: "P-1", verdict: "high" }));
  expect([...choices.mark]).toEqual([["P-1", 2]]);
  expect([...choices.verdict]).toEqual([["high", 2]]);
  expect([...choices.kind]).toEqual([
    ["call_sent", 1],
    ["reading_taken", 1],
  ]);
  // Taking the verdict off would bring the call that was acknowledged, which has none.
  expect([...find(LINES, filter({ mark: "P-1", by: "OW" })).choices.by]).toEqual([
    ["OW", 1],
    ["RT", 2],
  ]);
});

test("a day comes whole; of the whole log only what fits is asked for", () => {
  const asked = filter({ words: " down ", by: "RT", verdict: "high", from: "10:00" });
  expect(scopeOf(asked, "2030-05-14")).toEqual({ day: "2030-05-14" });
  expect(scopeOf({ ...asked, day: "2030-05-13" }, "2030-05-14")).toEqual({ day: "2030-05-13" });
  expect(scopeOf({ ...asked, day: EVERY }, "2030-05-14")).toEqual({
    words: "down",
    person: "RT",
    verdict: "high",
  });
  expect(scopeOf(filter({ day: EVERY, verdict: "no such" }), "")).toEqual({});
});
