/** A figure drawn large is read as one number: its fraction is never its last digit. */
import { describe, expect, it } from "vitest";
import { figuresOf, runsEms } from "./figures";

describe("figures drawn large", () => {
  it("have their fraction apart from their whole, as the hub writes each unit", () => {
    expect(figuresOf("3 7/8")).toEqual([{ whole: "3" }, { over: "7", under: "8" }]);
    expect(figuresOf("10 3/4")).toEqual([{ whole: "10" }, { over: "3", under: "4" }]);
    expect(figuresOf("3½")).toEqual([{ whole: "3" }, { over: "1", under: "2" }]);
    expect(figuresOf("½")).toEqual([{ over: "1", under: "2" }]);
    expect(figuresOf("1 FT 1 3/4")).toEqual([
      { whole: "1" },
      { word: "FT" },
      { whole: "1" },
      { over: "3", under: "4" },
    ]);
    expect(figuresOf("1.4")).toEqual([{ whole: "1.4" }]);
    expect(figuresOf("91")).toEqual([{ whole: "91" }]);
  });

  it("run wider the more there is of them", () => {
    const wide = ["3", "3½", "10 3/4", "1 FT 1 3/4"].map(runsEms);
    expect([...wide].sort((a, b) => a - b)).toEqual(wide);
    expect(runsEms("½")).toBeLessThan(runsEms("3"));
  });
});
