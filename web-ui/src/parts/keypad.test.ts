/** Keys become the reading that goes to the hub. */
import { describe, expect, it } from "vitest";
import { type Pad, pressed, textOf } from "./keypad";

function type(pad: Pad, ...keys: string[]): string {
  return textOf(
    pad,
    keys.reduce((typed, key) => pressed(pad, typed, key), ""),
  );
}

describe("the keypad", () => {
  it("has a fixed point: three keys are feet and hundredths", () => {
    expect(type("feet_hundredths", "5", "4", "2")).toBe("5.42");
    expect(type("feet_hundredths", "1", "0", "9", "5")).toBe("10.95");
    expect(type("metres", "1", "2", "3", "4")).toBe("1.234");
  });

  it("leaves a point where it was typed, so that a coarse reading stays coarse", () => {
    expect(type("feet_hundredths", "5", ".", "4")).toBe("5.4");
    expect(type("feet_hundredths", "5", ".", "4", "2", "9")).toBe("5.42");
  });

  it("takes feet, inches and eighths, and no thirteenth inch", () => {
    expect(type("feet_inches_eighths", "7", "ft", "1", "0", "in", "3/8")).toBe("7-10 3/8");
    expect(type("feet_inches_eighths", "7", "ft", "1", "3")).toBe("7-1");
    expect(type("feet_inches_eighths", "7", "ft", "0", "in")).toBe("7-0");
  });

  it("takes half tenths on a receiver", () => {
    expect(type("receiver", "3", "½")).toBe("3.5");
    expect(type("receiver", "½")).toBe("0.5");
  });

  it("takes back the last key", () => {
    expect(type("feet_hundredths", "5", "4", "3", "⌫", "2")).toBe("5.42");
  });
});
