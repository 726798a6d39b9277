/**
 * The one place on the phone with arithmetic on grades: what the page says before a reading is sent.
 * The hub decides; this must agree with it. Lengths are whole tenth-micrometres; dev = measured − target, HIGH is positive.
 */
import type { Point, Rod, Run, ScreenUnit, Tolerance, Verdict } from "./wire";

export const FOOT = 3_048_000;
export const INCH = 254_000;
export const METRE = 10_000_000;
export const MILLIMETRE = 10_000;
const HUNDREDTH = FOOT / 100;
const EIGHTH = INCH / 8;

export type RodProblem = "empty" | "not_a_number" | "too_long" | "inches" | "negative";
export type RodResult = { ok: true; value: number; coarse: boolean } | { ok: false; why: RodProblem };

/** Reads a rod value as the rod is marked; the bracket is added. */
export function readRod(rod: Rod, text: string): RodResult {
  const typed = text.trim().replace(",", ".");
  if (typed === "") return { ok: false, why: "empty" };
  if (/^[-−]\s*\d/.test(typed)) return { ok: false, why: "negative" };
  const read = rod.unit === "feet_inches_eighths" ? feetInches(typed) : decimal(typed, rod.unit);
  if (!read.ok) return read;
  if (read.value > rod.length) return { ok: false, why: "too_long" };
  return { ...read, value: read.value + rod.bracket };
}

function decimal(typed: string, unit: Rod["unit"]): RodResult {
  const match = /^(\d{1,3})(?:\.(\d{0,3}))?$/.exec(typed);
  if (!match) return { ok: false, why: "not_a_number" };
  const places = match[2] ?? "";
  const thousandths = Number(match[1]) * 1_000 + Number(places.padEnd(3, "0"));
  const value = (thousandths * (unit === "metres" ? METRE : FOOT)) / 1_000;
  return { ok: true, value, coarse: places.length < (unit === "metres" ? 3 : 2) };
}

function feetInches(typed: string): RodResult {
  const match =
    /^(\d{1,2})\s*(?:ft|['’′-])\s*(?:(\d{1,2})(?:\s+|\s*$|(?=\s*(?:in|["”″])))\s*)?(?:(\d)\/(8|4|2)\s*)?(?:in|["”″])?$/.exec(
      typed,
    );
  if (!match) return { ok: false, why: "not_a_number" };
  const inches = Number(match[2] ?? 0);
  const eighths = match[3] ? (Number(match[3]) * 8) / Number(match[4]) : 0;
  if (inches > 11 || eighths > 7) return { ok: false, why: "inches" };
  const value = Number(match[1]) * FOOT + inches * INCH + eighths * EIGHTH;
  return { ok: true, value, coarse: false };
}

/** HIGH, LOW or too close to call by the guard band; closed intervals, exact. */
export function verdict(dev: number, tolerance: Tolerance, guard: number): Verdict {
  const { high, low } = tolerance;
  if (dev > high + guard) return "high";
  if (dev < -low - guard) return "low";
  const closeHigh = dev > high - guard;
  const closeLow = dev < -low + guard;
  if (closeHigh && closeLow) return high - dev <= dev + low ? "too_close_high" : "too_close_low";
  if (closeHigh) return "too_close_high";
  return closeLow ? "too_close_low" : "on";
}

export type Way = "down" | "shave" | "grade" | "up" | "wait";

/** What the operator would be told of one shot. */
export interface Preview {
  way: Way;
  /** How far to go that way, never below zero: dev − aim for DOWN and SHAVE, its opposite for UP. */
  amount: number;
  verdict: Verdict;
}

/** From dev, aim and verdict to the way to go; the verdict never looks at the aim. */
export function preview(dev: number, aim: number, tolerance: Tolerance, guard: number): Preview {
  const judged = verdict(dev, tolerance, guard);
  const told = dev - aim;
  const amount = Math.max(0, judged === "low" ? -told : told);
  return { way: way(told, judged), amount, verdict: judged };
}

function way(amount: number, judged: Verdict): Way {
  switch (judged) {
    case "high":
      return amount * 1_000 < FOOT * 175 ? "shave" : "down";
    case "low":
      return "up";
    case "on":
      return "grade";
    default:
      return "wait";
  }
}

/** From this size on, tenths give way to feet. */
export function inFeet(amount: number): boolean {
  return Math.abs(amount) * 1_000 >= FOOT * 975;
}

/** How much, as the operator's screen says it: half up, and never nothing. */
export function amountText(amount: number, unit: ScreenUnit): string {
  const size = Math.abs(amount);
  if (unit === "millimetres") return String(Math.max(1, halfUp(size, MILLIMETRE)));
  if (unit === "feet_inches") return eighths(Math.max(1, halfUp(size, EIGHTH)));
  if (inFeet(amount)) return (halfUp(size, FOOT / 10) / 10).toFixed(1);
  const halves = Math.max(1, halfUp(size, FOOT / 20));
  const whole = Math.floor(halves / 2);
  if (halves % 2 === 0) return String(whole);
  return whole === 0 ? "½" : `${whole}½`;
}

function halfUp(size: number, step: number): number {
  return Math.floor((2 * size + step) / (2 * step));
}

/** Inches with eighths in lowest terms: 4 1/8, 3 1/2, 5. */
export function eighths(count: number): string {
  const whole = Math.floor(count / 8);
  let over = count % 8;
  if (over === 0) return String(whole);
  let under = 8;
  while (over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  return whole === 0 ? `${over}/${under}` : `${whole} ${over}/${under}`;
}

/** Elevation of the ground under the rod. */
export function elevation(height: number, rodValue: number): number {
  return height - rodValue;
}

/** A rod value as it would be typed on this rod, without its bracket. */
export function rodText(rod: Rod, value: number): string {
  const bare = value - rod.bracket;
  if (rod.unit === "metres") return (Math.round(bare / MILLIMETRE) / 1_000).toFixed(3);
  if (rod.unit === "feet_hundredths") return (Math.round(bare / HUNDREDTH) / 100).toFixed(2);
  const counted = Math.round(bare / EIGHTH);
  return `${Math.floor(counted / 96)}-${eighths(counted % 96)}`;
}

/** A run's direction, as a unit of east and north. */
function direction(run: Run): { x: number; y: number } {
  const x = run.toward.x - run.start.x;
  const y = run.toward.y - run.start.y;
  const far = Math.hypot(x, y) || 1;
  return { x: x / far, y: y / far };
}

/** The corners of a run's floor, walking round it; right is to the right looking up-station. */
export function runCorners(run: Run): Point[] {
  const along = direction(run);
  const at = (station: number, offset: number): Point => ({
    x: Math.round(run.start.x + station * along.x + offset * along.y),
    y: Math.round(run.start.y + station * along.y - offset * along.x),
  });
  return [at(0, -run.left), at(run.length, -run.left), at(run.length, run.right), at(0, run.right)];
}
