/** Numbers as a person reads them; rounded once, half away from zero. */
import { eighths, FOOT, INCH, MILLIMETRE } from "./grade";
import type { ScreenUnit } from "./wire";

function rounded(length: number, step: number): number {
  return Math.sign(length) * Math.floor(Math.abs(length) / step + 0.5);
}

/** A date that stays on its line: nothing is broken at a hyphen. */
export function unbroken(text: string): string {
  return text.replaceAll("-", "\u2060-\u2060");
}

/** Decimal feet: 302.00. */
export function feet(length: number, places = 2): string {
  const scale = 10 ** places;
  const count = rounded(length, FOOT / scale);
  return `${count < 0 ? "−" : ""}${(Math.abs(count) / scale).toFixed(places)}`;
}

/** A number without a unit: so many places, and the minus of every sheet and sentence. */
export function shownNumber(value: number, places: number): string {
  const size = Math.abs(value).toFixed(places);
  return `${value < 0 && Number(size) !== 0 ? "−" : ""}${size}`;
}

/** Something over a limit: whole feet, and under one foot in hundredths, rounded up: nothing over it reads as nothing. */
export function overFeet(over: number): string {
  if (over >= FOOT) return feet(over, 0);
  return feet(Math.ceil((over * 100) / FOOT) * (FOOT / 100));
}

/** Two lengths that are not the same, with as many places as it takes to read them apart: 505.333 / 505.330. */
export function apart(one: number, other: number): string {
  const places = [2, 3, 4, 5, 6].find((each) => feet(one, each) !== feet(other, each)) ?? 7;
  return `${feet(one, places)} / ${feet(other, places)}`;
}

/** A length as this screen shows it, with its unit: 0.30 ft, 3 5/8 in, 91 mm. */
export function length(value: number, unit: ScreenUnit): string {
  const size = Math.abs(value);
  if (unit === "millimetres") return `${rounded(size, MILLIMETRE)} mm`;
  if (unit === "feet_inches" && size < FOOT * 20) {
    const count = rounded(size, INCH / 8);
    const whole = Math.floor(count / 96);
    const inches = eighths(count % 96);
    return whole === 0 ? `${inches} in` : `${whole} ft ${inches} in`;
  }
  return `${feet(size)} ft`;
}

/** A difference with its sign: +0.30 is HIGH. */
export function signed(value: number): string {
  return `${value > 0 ? "+" : ""}${feet(value)}`;
}

/** How long ago, short: 40 s, 22 min, 3 h. */
export function ago(ms: number): string {
  const seconds = Math.max(0, Math.floor(ms / 1_000));
  if (seconds < 60) return `${seconds} s`;
  const minutes = Math.floor(seconds / 60);
  return minutes < 120 ? `${minutes} min` : `${Math.floor(minutes / 60)} h`;
}

/** The day on this phone's calendar, as a field for dates holds it: 2030-05-14. */
export function dateOf(at: number): string {
  const date = new Date(at);
  const two = (n: number) => String(n).padStart(2, "0");
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

/** When something was said that may outlive a night: the time of day, on another day than `now` with its date before it. */
export function moment(at: number, now: number): string {
  const day = dateOf(at);
  return day === dateOf(now) ? timeOfDay(at) : `${unbroken(day)} ${timeOfDay(at)}`;
}

/** The time of day on this phone's clock face, 24 hours. */
export function timeOfDay(at: number, seconds = false): string {
  const date = new Date(at);
  const two = (n: number) => String(n).padStart(2, "0");
  const short = `${two(date.getHours())}:${two(date.getMinutes())}`;
  return seconds ? `${short}:${two(date.getSeconds())}` : short;
}
