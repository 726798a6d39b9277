/** How differences are counted into bars. */
import { expect, test } from "vitest";
import { FOOT } from "../../../grade";
import { bars } from "./differences";

test("a difference falls into the nearest half-tenth, low and high alike", () => {
  const feet = [0, 0.02, -0.02, 0.06, -0.24, 0.05];
  const found = bars(feet.map((one) => Math.round(one * FOOT)));
  expect([...found].sort(([a], [b]) => a - b)).toEqual([
    [-5, 1],
    [0, 3],
    [1, 2],
  ]);
});

test("nothing measured has no bars", () => {
  expect(bars([]).size).toBe(0);
});
