/** The plan's box: the whole at first, nearer and farther within bounds. */
import { describe, expect, it } from "vitest";
import { FOOT, runCorners } from "../grade";
import type { Run } from "../wire";
import { zoomed } from "./plan";

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
