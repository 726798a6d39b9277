/** In which order the table's lines stand. */
import { expect, test } from "vitest";
import { line } from "./given";
import { libraries } from "./late";
import * as script from "./libraries";
import { kindWord, NEWEST_FIRST, orderIn, orderText, pressed, sorter } from "./order";

libraries.script.value = script;

const LINES = [
  line(4, { mark: "N-10", verdict: "low" }),
  line(3, { mark: null, verdict: null, by: "OW" }),
  line(2, { mark: "N-2", verdict: "high" }),
  line(1, { mark: "N-10", verdict: "on", by: "OW" }),
];

test("numbers inside names count; what has none comes last, either way; the alike stand newest first", () => {
  const sort = sorter();
  const seqs = (by: "mark" | "verdict" | "by", descending: boolean) =>
    sort(LINES, { by, descending }).map((one) => one.seq);
  expect(seqs("mark", false)).toEqual([2, 4, 1, 3]);
  expect(seqs("mark", true)).toEqual([4, 1, 2, 3]);
  expect(seqs("verdict", false)).toEqual([2, 1, 4, 3]);
  expect(seqs("by", false)).toEqual([3, 1, 4, 2]);
});

test("the newest first is the order in which they come", () => {
  expect(sorter()(LINES, NEWEST_FIRST)).toBe(LINES);
});

test("lines that come later take their place", () => {
  const sort = sorter();
  const order = { by: "seq", descending: false } as const;
  expect(sort(LINES, order).map((one) => one.seq)).toEqual([1, 2, 3, 4]);
  expect(sort([line(5), ...LINES], order).map((one) => one.seq)).toEqual([1, 2, 3, 4, 5]);
});

test("an order goes into the address and comes back; what it does not know is the newest first", () => {
  for (const order of [
    NEWEST_FIRST,
    { by: "made", descending: true },
    { by: "text", descending: false },
  ] as const) {
    expect(orderIn(orderText(order))).toEqual(order);
  }
  expect(orderIn("nothing")).toEqual(NEWEST_FIRST);
  expect(orderText(NEWEST_FIRST)).toBe("");
});

test("a press sorts by a column, one more turns it round", () => {
  const first = pressed(NEWEST_FIRST, "mark");
  expect(first).toEqual({ by: "mark", descending: false });
  expect(pressed(first, "mark")).toEqual({ by: "mark", descending: true });
  expect(pressed(first, "made")).toEqual({ by: "made", descending: true });
});

test("a kind that this page does not know stands as the log has it", () => {
  expect(kindWord("call_sent")).toBe("call sent");
  expect(kindWord("of_tomorrow")).toBe("of_tomorrow");
});
