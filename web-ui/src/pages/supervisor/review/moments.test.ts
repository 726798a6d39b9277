/** Which moments of a day are walked through. */
import { expect, test } from "vitest";
import type { Review, Sentence } from "../../../wire";
import { ALL, around, beginningOf, momentsOf, withWords } from "./moments";

const said = (seq: number, at: number, english = `Entry ${seq}`, portuguese?: string): Sentence => ({
  seq,
  at,
  by: "RT",
  machine: null,
  mark: null,
  english,
  spanish: english,
  portuguese,
});
const REVIEW = {
  from: 10,
  exceptions: [
    { kind: "stop", said: said(7, 70, "ALL STOP") },
    { kind: "laser", said: said(3, 30) },
  ],
  marks: [
    { mark: "P-1", readings: [], said: [said(2, 20), said(7, 70, "ALL STOP")] },
    { mark: "P-2", readings: [], said: [said(4, 20, "LÍNEA")] },
  ],
  set_ups: [{ said: [said(3, 30)] }],
  record: [said(9, 90, "Note", "Lançamento")],
  changes: [],
} as unknown as Review;

const seqs = (of: string) => momentsOf(REVIEW, of).map((one) => one.seq);

test("what was out of the ordinary stands by when it happened, and a replay begins there", () => {
  expect(seqs("")).toEqual([3, 7]);
  expect(momentsOf(REVIEW, "").map((one) => one.kind)).toEqual(["laser", "stop"]);
  expect(beginningOf(REVIEW)?.seq).toBe(3);
  expect(beginningOf({ ...REVIEW, exceptions: [] })).toBeUndefined();
});

test("all that was said stands once, and of a mark what was said about it", () => {
  expect(seqs(ALL)).toEqual([2, 4, 3, 7, 9]);
  expect(seqs("P-1")).toEqual([2, 7]);
  expect(seqs("no such mark")).toEqual([]);
});

test("words are looked for without capitals and accents, all of them", () => {
  const found = (words: string) => withWords(momentsOf(REVIEW, ALL), words).map((one) => one.seq);
  expect(found("linea")).toEqual([4]);
  expect(found("lancamento")).toEqual([9]);
  expect(found("all rt stop")).toEqual([7]);
  expect(found("  ")).toHaveLength(5);
});

test("from an entry that was picked one goes to its neighbours, whatever their time", () => {
  const all = momentsOf(REVIEW, ALL);
  expect(around(all, 20, 2)).toMatchObject({ before: undefined, here: { seq: 2 }, next: { seq: 4 } });
  expect(around(all, 20, 4)).toMatchObject({ before: { seq: 2 }, here: { seq: 4 }, next: { seq: 3 } });
  expect(around(all, 99, 9)).toMatchObject({ before: { seq: 7 }, here: { seq: 9 }, next: undefined });
});

test("from a time one goes to what lies before and behind it", () => {
  const all = momentsOf(REVIEW, ALL);
  expect(around(all, 65, null)).toMatchObject({ before: { seq: 3 }, here: { seq: 3 }, next: { seq: 7 } });
  expect(around(all, 70, null)).toMatchObject({ before: { seq: 3 }, here: { seq: 7 }, next: { seq: 9 } });
  expect(around(all, 5, null)).toMatchObject({ before: undefined, here: undefined, next: { seq: 2 } });
  // What was picked and does not fit the list any more counts by its time.
  expect(around(all, 65, 77)).toMatchObject({ here: { seq: 3 } });
  expect(around([], 5, 1)).toEqual({ before: undefined, here: undefined, next: undefined });
});
