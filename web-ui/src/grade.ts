/**
 * The one place on the phone with arithmetic on grades: what the page says before a reading is sent.
 * The hub decides; this must agree with it. Lengths are whole tenth-micrometres; dev = measured − target, HIGH is positive.
 */
import type { Care, Point, Rod, Run, ScreenUnit, Shot, StepSide, Tolerance, Verdict } from "./wire";

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
    /^(\d{1,2})(?:\s*(?:ft|['’′])|-)\s*(?:(\d{1,2})(?:\s+|\s*$|(?=\s*(?:in|["”″])))\s*)?(?:(\d)\/(8|4|2)\s*)?(?:in|["”″])?$/.exec(
      typed,
    );
  if (!match) return { ok: false, why: "not_a_number" };
  const inches = Number(match[2] ?? 0);
  const eighths = match[3] ? (Number(match[3]) * 8) / Number(match[4]) : 0;
  if (inches > 11 || eighths > 7) return { ok: false, why: "inches" };
  const value = Number(match[1]) * FOOT + inches * INCH + eighths * EIGHTH;
  return { ok: true, value, coarse: false };
}

/** How a rod is read, one standard deviation in feet; and a text that is typed to the tenth alone (common practice). */
const READING: Record<Care, number> = { fine: 0.005, coarse: 0.01, by_eye: 0.02, muddy: 0.03 };
const COARSE_TEXT = 0.03;

/** How one shot is read: typed to the tenth alone, and what this person's own pairs show with this rod. */
export interface Read {
  care: Care;
  coarse: boolean;
  ownDoubt: number | null;
}

/** The guard band of so many shots that are averaged, rounded up to the next count; the set-up's doubt does not average out. */
export function guardOf(shot: Pick<Shot, "doubt" | "guard_factor">, read: Read, shots: number): number {
  const { doubt, guard_factor: factor } = shot;
  if (!(factor > 0)) return 0;
  const usual = READING[read.care];
  const own = read.ownDoubt === null ? usual : read.ownDoubt / FOOT;
  const receiver = read.care === "fine" || read.care === "coarse";
  const seen = Math.max(read.coarse ? COARSE_TEXT : 0, receiver ? own : Math.max(own, usual));
  const setUp = doubt.benchmark + usual * usual + doubt.backsight;
  const ground = seen * seen + doubt.foresight + doubt.surface;
  return Math.ceil(factor * Math.sqrt(setUp + ground / shots) * FOOT);
}

/** Measured − dig-to of one shot; on a cut face square to it. */
export function deviation(up: number, square: number): number {
  if (square >= 1) return up;
  const off = (up / FOOT) * square * FOOT;
  return Math.sign(off) * Math.round(Math.abs(off));
}

/** The earlier shots that this one is averaged with, as the hub joins them: their differences. */
export function joined(
  shot: Pick<Shot, "before">,
  one: { dev: number; at: number; side: StepSide | null; restates: number | null },
): number[] {
  const last = (shot.before ?? []).find((each) => each.reading !== one.restates);
  if (!last || (last.side ?? null) !== one.side) return [];
  if (last.until != null && one.at > last.until) return [];
  return last.devs.every((dev) => Math.abs(dev - one.dev) <= last.spread) ? last.devs : [];
}

/**
 * HIGH, LOW or too close to call by the guard band, of the sum of so many differences; closed intervals, exact. What can't be
 * proven is never ON.
 */
export function verdict(sum: number, tolerance: Tolerance, guard: number, shots = 1): Verdict {
  const { high, low } = tolerance;
  if (sum > shots * (high + guard)) return "high";
  if (sum < shots * (-low - guard)) return "low";
  const provable = guard === 0 || high + low > 2 * guard;
  if (provable && shots * (-low + guard) <= sum && sum <= shots * (high - guard)) return "on";
  return 2 * sum >= shots * (high - low) ? "too_close_high" : "too_close_low";
}

export type Way = "down" | "shave" | "grade" | "up" | "wait" | "ruling";

/** What the operator would be told of a shot. */
export interface Preview {
  way: Way;
  verdict: Verdict;
  dev: number;
  aim: number;
  tolerance: Tolerance;
}

/**
 * From the differences of the shots that are averaged, aim and verdict to the way to go; the verdict never looks at the aim.
 * What stays too close to call after two shots is trimmed by the site's rule (`trims`), on the high side, or ruled on.
 */
export function preview(
  devs: readonly number[],
  aim: number,
  tolerance: Tolerance,
  guard: number,
  trims = false,
): Preview {
  const shots = devs.length;
  const sum = devs.reduce((a, b) => a + b, 0);
  const judged = verdict(sum, tolerance, guard, shots);
  const dev = mean(sum, shots);
  const settled = shots > 1 && judged.startsWith("too_close");
  const trimmed = settled && trims && judged === "too_close_high";
  const told = settled && !trimmed ? "ruling" : way(dev - aim, trimmed ? "high" : judged);
  return { way: told, verdict: judged, dev, aim, tolerance };
}

/** Rounded to the nearest count, half away from zero. */
export function mean(sum: number, shots: number): number {
  const half = Math.trunc(shots / 2);
  return Math.trunc((sum + (sum < 0 ? -half : half)) / shots);
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

/** How far to go to the aim; negative when the aim lies the other way. */
function toAim(said: Preview): number {
  return said.way === "up" ? said.aim - said.dev : said.dev - said.aim;
}

/**
 * How many whole steps of a unit to say. Of those that leave the ground in tolerance the nearest to the aim, halfway the
 * one that leaves it higher; where none does, the most that does not go below what is allowed low (none: less than one).
 */
function steps(said: Preview, step: number): { count: number; inTolerance: boolean } {
  const { dev, tolerance } = said;
  const up = said.way === "up";
  const nearest = Math.floor((2 * toAim(said) + step - (up ? 0 : 1)) / (2 * step));
  const toHigh = (dev - tolerance.high) / step;
  const toLow = (dev + tolerance.low) / step;
  const least = Math.max(1, Math.ceil(up ? -toLow : toHigh));
  const most = Math.floor(up ? -toHigh : toLow);
  if (least > most) return { count: up ? least : Math.max(0, most), inTolerance: false };
  return { count: Math.min(most, Math.max(least, nearest)), inTolerance: true };
}

/** The words beside an amount. */
export interface AmountWords {
  feetWord: string;
  inchWord: string;
  /** Whole feet before inches: 1 FT. */
  wholeFeet: (feet: number) => string;
}

/** How much, as the operator's screen says it after its word; nothing for GRADE, WAIT and what is ruled on. */
export function amountText(said: Preview, unit: ScreenUnit, words: AmountWords): string {
  if (["grade", "wait", "ruling"].includes(said.way)) return "";
  if (unit === "millimetres") return `${orLess(steps(said, MILLIMETRE).count, String)} MM`;
  if (unit === "feet_inches") {
    const { count } = steps(said, EIGHTH);
    const feet = Math.floor(count / 96);
    const inches = orLess(count, (all) => eighths(all % 96));
    return `${feet > 0 ? `${words.wholeFeet(feet)} ` : ""}${inches} ${words.inchWord}`;
  }
  const inFeet = toAim(said) * 1_000 >= FOOT * 975;
  const coarse = steps(said, FOOT / (inFeet ? 10 : 20));
  if (!coarse.inTolerance) {
    const parts = orLess(steps(said, HUNDREDTH).count, (count) => (count / 100).toFixed(2));
    return `${parts} ${words.feetWord}`;
  }
  if (inFeet) return `${(coarse.count / 10).toFixed(1)} ${words.feetWord}`;
  const whole = Math.floor(coarse.count / 2) || "";
  return `${whole}${coarse.count % 2 === 1 ? "½" : ""}`;
}

/** Where the smallest figure would be too deep: less than it. */
function orLess(count: number, written: (count: number) => string): string {
  return count === 0 ? `<${written(1)}` : written(count);
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
