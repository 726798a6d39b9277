/** What is typed becomes a draft: empty values go, plain numbers take feet. */
import { describe, expect, it } from "vitest";
import { at, cleaned, put, withFeet } from "./draft";

describe("a draft", () => {
  it("is read and written by paths through tables and lists", () => {
    const draft = put({ id: "N" }, "run.steps.1.from", "5 ft");
    expect(draft).toEqual({ id: "N", run: { steps: ["", { from: "5 ft" }] } });
    expect(at(draft, "run.steps.1.from")).toBe("5 ft");
    expect(at(draft, "run.left.0")).toBeUndefined();
    expect(put(draft, "run.steps.0", undefined)).toEqual({ id: "N", run: { steps: [{ from: "5 ft" }] } });
    expect(put(draft, "run", undefined)).toEqual({ id: "N" });
  });

  it("leaves out what is empty, but never half of a point", () => {
    expect(cleaned({ id: " N ", at: ["1 ft", ""], note: "", flat: { elevation: "" }, steps: [""] })).toEqual({
      id: "N",
      at: ["1 ft", ""],
    });
  });

  it("takes a plain number for feet and nothing else", () => {
    expect(["98.5", "-3", " 12,25 ", ".5"].map(withFeet)).toEqual(["98.5 ft", "-3 ft", "12,25 ft", ".5 ft"]);
    expect(["98.5 ft", "4 in", "5-3", "", "1+20"].map(withFeet)).toEqual([
      "98.5 ft",
      "4 in",
      "5-3",
      "",
      "1+20",
    ]);
  });
});
