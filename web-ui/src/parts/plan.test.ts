/** The plan's box: the whole at first, nearer and farther within bounds. */
import { describe, expect, it } from "vitest";
import { FOOT, runCorners } from "../grade";
import type { Run, Sheet, SheetMark } from "../wire";
import { around, roomFor, zoomed } from "./plan";
import { apart } from "./profile";

const whole = { left: 0, top: 100, width: 100, height: 100 };

describe("the plan", () => {
  it("comes nearer about the middle and never past the whole", () => {
    const near = zoomed(whole, whole, 0.5, null);
    expect(near).toEqual({ left: 25, top: 75, width: 50, height: 50 });
    expect(zoomed(near, whole, 4, null)).toEqual(whole);
  });

  it("comes nearer about the chosen mark at first", () => {
    const near = zoomed(whole, whole, 0.5, { x: 10 * FOOT, y: 20 * FOOT });
    expect(near).toEqual({ left: -15, top: 45, width: 50, height: 50 });
  });
});

describe("the box round everything", () => {
  const place = (x: number, y: number) => ({ x: x * FOOT, y: y * FOOT });
  const sheet = {
    marks: [{ id: "P-1", place: place(5_010, 5_020) }],
    lines: [],
    drawn: [
      { id: "FG", drawn: { line: [], profile: [], edges: [[place(5_000, 5_000), place(5_100, 5_080)]] } },
    ],
    targets: [],
    benchmarks: [],
  } as unknown as Sheet;

  it("lies where the site lies, though its numbers begin at 5,000, and holds the edges of a surface", () => {
    expect(around(sheet, null)).toEqual({ left: 4_994, top: 5_086, width: 112, height: 92 });
  });
});

describe("figures along a profile", () => {
  it("stand at both ends, and between where they have room", () => {
    expect(apart([0, 1, 5, 9, 10], (one) => one, 3)).toEqual([0, 10, 5]);
    expect(apart([4], (one) => one, 3)).toEqual([4]);
    expect(apart([], (one) => one, 3)).toEqual([]);
  });
});

describe("a run on the plan", () => {
  // Invented: north along x = 10 ft, 2 ft to the left and 1 ft to the right.
  const run: Run = {
    start: { x: 10 * FOOT, y: 0 },
    toward: { x: 10 * FOOT, y: 5 * FOOT },
    length: 20 * FOOT,
    left: 2 * FOOT,
    right: FOOT,
    steps: [],
  };

  it("has its right to the right, looking up-station", () => {
    expect(runCorners(run)).toEqual([
      { x: 8 * FOOT, y: 0 },
      { x: 8 * FOOT, y: 20 * FOOT },
      { x: 11 * FOOT, y: 20 * FOOT },
      { x: 11 * FOOT, y: 0 },
    ]);
  });
});

describe("names on the plan", () => {
  const at = (id: string, x: number) => ({ id, place: { x: x * FOOT, y: 0 } }) as SheetMark;
  const names = (marks: SheetMark[], first: (mark: SheetMark) => boolean = () => false) => [
    ...roomFor(marks, { wide: 10, tall: 2, leftward: (mark) => mark.place.x > 50 * FOOT, first }),
  ];

  it("meet when one runs to the right and the next to the left", () => {
    // 45…55 and 60…50 share five feet; 45…55 and 66…56 share none.
    expect(names([at("A", 45), at("B", 60)])).toEqual(["A"]);
    expect(names([at("A", 45), at("B", 66)])).toEqual(["A", "B"]);
  });

  it("give way to those that come first", () => {
    expect(names([at("A", 1), at("B", 3)], (mark) => mark.id === "B")).toEqual(["B"]);
  });
});
