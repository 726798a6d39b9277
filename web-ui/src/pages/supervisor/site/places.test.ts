/** What is typed of a place is read as the hub reads it, and a place that is dragged is written so that nothing else changes. */
import { describe, expect, it } from "vitest";
import { FOOT, INCH, METRE } from "../../../grade";
import { lengthTyped, more, moved, placesOf } from "./places";

describe("a length as it is typed", () => {
  it("is read in the units that the site's forms take", () => {
    expect(["36 ft", "36", "36.5 ft", "11 m", "-2 ft", "12 ft 6 in", "6' 3 1/2\""].map(lengthTyped)).toEqual([
      36 * FOOT,
      36 * FOOT,
      36.5 * FOOT,
      11 * METRE,
      -2 * FOOT,
      12 * FOOT + 6 * INCH,
      6 * FOOT + 3.5 * INCH,
    ]);
  });

  it("that can't be told is no place", () => {
    expect(["", "12 yards", "1+20", "x"].map(lengthTyped)).toEqual([null, null, null, null]);
    expect(placesOf("mark", { id: "A", at: ["12 ft", ""] })).toEqual([]);
  });
});

describe("the places of a draft", () => {
  const line = {
    id: "L",
    points: [
      ["0 ft", "0 ft"],
      ["x", "1 ft"],
      ["10 ft", "5 ft"],
    ],
  };

  it("keep their paths when one between them can't be told", () => {
    expect(placesOf("line", line).map((one) => one.path)).toEqual(["points.0", "points.2"]);
  });

  it("are written in feet where one is dragged, and nothing else changes", () => {
    const to = { x: 12.34 * FOOT, y: -5 * FOOT };
    expect(moved(line, "points.2", to)).toEqual({
      id: "L",
      points: [
        ["0 ft", "0 ft"],
        ["x", "1 ft"],
        ["12.34 ft", "-5.00 ft"],
      ],
    });
    // A toe's corner keeps its elevation.
    const face = { toe: [["0 ft", "0 ft", "100 ft"]] };
    expect(moved(face, "toe.0", to)).toEqual({ toe: [["12.34 ft", "-5.00 ft", "100 ft"]] });
  });

  it("grow by the next, an empty corner first", () => {
    const to = { x: FOOT, y: 2 * FOOT };
    expect(more("line", { id: "L" }, to)).toEqual({ id: "L", points: [["1.00 ft", "2.00 ft"]] });
    expect(
      more(
        "line",
        {
          points: [
            ["0 ft", "0 ft"],
            ["", ""],
          ],
        },
        to,
      ),
    ).toEqual({
      points: [
        ["0 ft", "0 ft"],
        ["1.00 ft", "2.00 ft"],
      ],
    });
    expect(more("mark", { id: "A", at: ["5 ft", "5 ft"] }, to)).toEqual({
      id: "A",
      at: ["1.00 ft", "2.00 ft"],
    });
    expect(more("rod", { id: "A" }, to)).toEqual({ id: "A" });
  });
});
