/** A length is written so that it is read as itself. */
import { expect, it } from "vitest";
import { FOOT } from "../../../grade";
import { exactly } from "./exactly";

it("writes a length so that nothing is lost", () => {
  expect(exactly(98.5 * FOOT)).toBe("98.5 ft");
  expect(exactly(-FOOT / 10_000 / 2)).toBe("-0.0152 mm");
  expect(exactly(12_345_678)).toBe("1234.5678 mm");
});
