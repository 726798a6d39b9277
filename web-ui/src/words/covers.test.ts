/** Words that a name of the wire asks for are asked for by the types: each mistake here is one for the compiler. */
import { describe, expect, it } from "vitest";
import { type Covers, snake } from "./covers";

type Verdict = "high" | "low";

/** Takes a type, and does nothing: what it is given compiles, or is refused. */
const compiles = <Words>(...none: Words[]) => none.length === 0;

describe("groups of words", () => {
  it("have a word for each name of the wire and for no other", () => {
    expect(compiles<Covers<Verdict, { high: string; low: (by: string) => string }>>()).toBe(true);
    // @ts-expect-error a name has no word
    expect(compiles<Covers<Verdict, { high: string }>>()).toBe(true);
    // @ts-expect-error a word belongs to no name
    expect(compiles<Covers<Verdict, { high: string; low: string; on: string }>>()).toBe(true);
    // @ts-expect-error a word's name is misspelt
    expect(compiles<Covers<Verdict, { high: string; lo: string }>>()).toBe(true);
  });

  it("write the names of files without hyphens and dots", () => {
    const named: ["as_built_csv", "hand_signals", "marks_geojson", "day"] = [
      snake("as-built.csv"),
      snake("hand-signals"),
      snake("marks.geojson"),
      snake("day"),
    ];
    expect(named).toEqual(["as_built_csv", "hand_signals", "marks_geojson", "day"]);
  });
});
