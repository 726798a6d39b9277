/** The arithmetic of the page against worked vectors; the hub is held to the same ones. */
import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { amountText, deviation, FOOT, guardOf, joined, preview, readRod, rodText, verdict } from "./grade";
import type { Care, Rod, Shot, StepSide } from "./wire";
import { words as en } from "./words.gen/en";
import { words as es } from "./words.gen/es";

const VECTORS = "../fixtures/wire/preview.json";
const READ_AGAIN = "../fixtures/wire/read_again.json";
const hundredths = (n: number) => (n * FOOT) / 100;
const rodA: Rod = {
  id: "A",
  unit: "feet_hundredths",
  length: 13 * FOOT,
  joints: [],
  bracket: 0,
};

const UNITS = ["tenths", "feet_inches", "millimetres"] as const;
/** What a phone has before a shot is sent, and what the hub then said: written by the hub's own test. */
interface Again {
  case: string;
  rod: Rod;
  text: string;
  care: Care;
  side: StepSide | null;
  restates: number | null;
  at: number;
  shot: Shot;
  dig_to: { at: number } | { near_step: { before: number; after: number } };
  aim: number;
  tolerance: { high: number; low: number };
  trims: boolean;
  says: string;
}

interface Vector {
  height: number;
  rod: number;
  dig_to: number;
  aim: number;
  tolerance: { high: number; low: number };
  guard: number;
  verdict: string;
  way: string;
  lines: Record<"english" | "spanish", Record<(typeof UNITS)[number], string>>;
}

describe("what the page says before a reading is sent", () => {
  it("agrees with the shared vectors, word for word in both languages", () => {
    expect(existsSync(VECTORS)).toBe(true);
    const { cases } = JSON.parse(readFileSync(VECTORS, "utf8")) as { cases: Vector[] };
    expect(cases.length).toBeGreaterThan(30);
    for (const one of cases) {
      const dev = one.height - one.rod - one.dig_to;
      const said = preview([dev], one.aim, one.tolerance, one.guard);
      expect([said.verdict, said.way], JSON.stringify(one)).toEqual([one.verdict, one.way]);
      for (const [language, words] of [
        ["english", en],
        ["spanish", es],
      ] as const) {
        for (const unit of UNITS) {
          const line = `${words.ways[said.way]} ${amountText(said, unit, words)}`.trim();
          expect(line, JSON.stringify(one)).toBe(one.lines[language][unit]);
        }
      }
    }
  });

  it("is the hub's call, also after earlier shots of the same ground", () => {
    const { cases } = JSON.parse(readFileSync(READ_AGAIN, "utf8")) as { cases: Again[] };
    expect(cases.length).toBeGreaterThan(60);
    for (const one of cases) {
      const rod = readRod(one.rod, one.text);
      if (!rod.ok) throw new Error(one.text);
      const to = "at" in one.dig_to ? one.dig_to.at : one.dig_to.near_step[one.side ?? "before"];
      const dev = deviation(one.shot.height - rod.value - to, one.shot.square);
      const earlier = joined(one.shot, { dev, at: one.at, side: one.side, restates: one.restates });
      const devs = [...earlier, dev];
      const read = { care: one.care, coarse: rod.coarse, ownDoubt: null };
      const guard = guardOf(one.shot, read, devs.length);
      const said = preview(devs, one.aim, one.tolerance, guard, one.trims);
      const told = [said.way.toUpperCase(), amountText(said, "tenths", en)];
      expect(told.filter(Boolean).join(" "), `${one.case}: ${one.text}`).toBe(one.says);
    }
  });

  it("keeps the closed edge of a tolerance on grade when nothing is in doubt", () => {
    // Field practice: closed intervals as written.
    const tolerance = { high: hundredths(10), low: hundredths(20) };
    expect(verdict(hundredths(10), tolerance, 0)).toBe("on");
    expect(verdict(hundredths(10) + 1, tolerance, 0)).toBe("high");
    expect(verdict(hundredths(-20) - 1, tolerance, 0)).toBe("low");
  });

  it("never moves a verdict toward low as the ground goes up", () => {
    const order = ["low", "too_close_low", "on", "too_close_high", "high"];
    for (const guard of [0, 2, 6, 20]) {
      let before = 0;
      for (let dev = -40; dev <= 40; dev++) {
        const tolerance = { high: hundredths(10), low: hundredths(5) };
        const rank = order.indexOf(verdict(hundredths(dev), tolerance, hundredths(guard)));
        expect(rank).toBeGreaterThanOrEqual(before);
        before = rank;
      }
    }
  });

  it("never tells HIGH or LOW as nothing", () => {
    const tolerance = { high: 0, low: hundredths(10) };
    for (const unit of UNITS) {
      expect(amountText(preview([1], 0, tolerance, 0), unit, en)).toMatch(/[1-9½]/);
    }
  });
});

describe("a rod reading", () => {
  it("is read in the rod's own units", () => {
    // Derived: 5.42 × 3 048 000; 7 ft 10 3/8 in = 7 × 3 048 000 + 10.375 × 254 000.
    expect(readRod(rodA, "5.42")).toEqual({ ok: true, value: 16_520_160, coarse: false });
    expect(readRod(rodA, "5,4")).toEqual({ ok: true, value: 16_459_200, coarse: true });
    const inches: Rod = { ...rodA, unit: "feet_inches_eighths" };
    expect(readRod(inches, "7-10 3/8")).toEqual({ ok: true, value: 23_971_250, coarse: false });
    const metres: Rod = { ...rodA, unit: "metres", length: 40_000_000 };
    expect(readRod(metres, "1.234")).toEqual({ ok: true, value: 12_340_000, coarse: false });
  });

  it("is refused with its reason when it can't be", () => {
    const inches: Rod = { ...rodA, unit: "feet_inches_eighths" };
    const why = (rod: Rod, text: string) => {
      const read = readRod(rod, text);
      return read.ok ? "ok" : read.why;
    };
    expect(why(rodA, "")).toBe("empty");
    expect(why(rodA, "-1.00")).toBe("negative");
    expect(why(rodA, "13.01")).toBe("too_long");
    expect(why(rodA, "4.2.1")).toBe("not_a_number");
    expect(why(inches, "5-13")).toBe("inches");
    expect(why(inches, "5 ft -4 in")).toBe("not_a_number");
    expect(why(inches, "5 -4")).toBe("not_a_number");
  });

  it("is written as it would be typed", () => {
    expect(rodText(rodA, hundredths(645))).toBe("6.45");
    const inches: Rod = { ...rodA, unit: "feet_inches_eighths" };
    expect(rodText(inches, 23_971_250)).toBe("7-10 3/8");
    expect(rodText({ ...rodA, bracket: hundredths(50) }, hundredths(645))).toBe("5.95");
  });
});
