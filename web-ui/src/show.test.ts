/** Lengths that a person has to read apart, or not to read as nothing. */
import { expect, it } from "vitest";
import { FOOT } from "./grade";
import { apart, moment, overFeet, shownNumber, signed } from "./show";

it("shows two values that differ with enough places to see it", () => {
  // 505 ft 4 in against 505.33 ft.
  expect(apart(505 * FOOT + FOOT / 3, 505.33 * FOOT)).toBe("505.333 / 505.330");
  expect(apart(98.5 * FOOT, 98.6 * FOOT)).toBe("98.50 / 98.60");
  expect(apart(10 * FOOT, 10 * FOOT + 1)).not.toBe("10.00 / 10.00");
});

it("never reads something over a limit as nothing", () => {
  expect(overFeet(1)).toBe("0.01");
  expect(overFeet(0.4 * FOOT)).toBe("0.40");
  expect(overFeet(3.2 * FOOT)).toBe("3");
});

it("names the date of what was said on another day", () => {
  const at = (day: number, hour: number) => new Date(2030, 4, day, hour, 5).getTime();
  expect(moment(at(14, 17), at(14, 18))).toBe("17:05");
  expect(moment(at(14, 17), at(15, 7)).replace(/[^\d:-]/gu, "")).toBe("2030-05-1417:05");
});

it("writes the same minus as the hub's sentences and sheets, and none before nothing", () => {
  expect(signed(-0.02 * FOOT)).toBe("−0.02");
  expect(shownNumber(-0.5, 2)).toBe("−0.50");
  expect(shownNumber(-0.001, 2)).toBe("0.00");
});
