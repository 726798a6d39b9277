/** What is typed for a sum gets its unit; what has one keeps it. */
import { describe, expect, it } from "vitest";
import { FOOT } from "../../grade";
import { stationTyped } from "./more";
import { withUnit } from "./sums";

it("takes a bare number for feet and leaves units alone", () => {
  expect(withUnit("304.58")).toBe("304.58 ft");
  expect(withUnit("-3,5")).toBe("-3,5 ft");
  expect(withUnit("4 in")).toBe("4 in");
  expect(withUnit("5 ft 4 3/8 in")).toBe("5 ft 4 3/8 in");
});

it("takes two numbers for a place, east then north", () => {
  expect(withUnit("50; 0")).toBe("50 ft; 0 ft");
  expect(withUnit("12.5 -6")).toBe("12.5 ft; -6 ft");
});

describe("a station as it is typed", () => {
  it("may be in hundreds and feet, as on the stakes, or in feet", () => {
    expect(stationTyped("10+40.5")).toBe(1_040.5 * FOOT);
    expect(stationTyped("0+05")).toBe(5 * FOOT);
    expect(stationTyped("18,5")).toBe(18.5 * FOOT);
    for (const wrong of ["", "10+4", "10+40+1", "ten"]) expect(stationTyped(wrong)).toBeNull();
  });
});
