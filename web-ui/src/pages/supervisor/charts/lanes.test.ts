/** What a lane says at a moment. */
import { expect, test } from "vitest";
import type { Review } from "../../../wire";
import { endOf, saysAt, tells } from "./lanes";

type Lane = Review["lanes"][number];
const MACHINE: Lane = {
  of: { kind: "machine", name: "EX-1" },
  spans: [
    { from: 100, to: 200, what: { kind: "does", doing: "digging" } },
    { from: 200, to: 300, what: { kind: "does", doing: "stopped" } },
    { from: 400, to: 500, what: { kind: "does", doing: "digging" } },
  ],
};

test("a span holds from its beginning up to its end; where nothing was known nothing is said", () => {
  expect(saysAt(MACHINE, 99)).toBe("");
  expect(saysAt(MACHINE, 100)).toBe("digging");
  expect(saysAt(MACHINE, 199)).toBe("digging");
  expect(saysAt(MACHINE, 200)).toBe("STOP");
  expect(saysAt(MACHINE, 300)).toBe("");
});

test("where the day ends its last spans hold", () => {
  expect(saysAt(MACHINE, 500)).toBe("digging");
  expect(saysAt(MACHINE, 501)).toBe("");
});

test("the slider's end is a step that lies behind the day's last moment", () => {
  expect(endOf({ from: 1_000, to: 1_001 } as Review)).toBe(1_250);
  expect(endOf({ from: 1_000, to: 1_500 } as Review)).toBe(1_500);
});

test("a person who was there and nothing else tells nothing", () => {
  const person = (...what: Lane["spans"][number]["what"][]): Lane => ({
    of: { kind: "person", name: "RT" },
    spans: what.map((one, i) => ({ from: i, to: i + 1, what: one })),
  });
  expect(tells(person({ kind: "on_site" }))).toBe(false);
  expect(tells(person({ kind: "on_site" }, { kind: "asks_in", machine: "EX-1" }))).toBe(true);
});
