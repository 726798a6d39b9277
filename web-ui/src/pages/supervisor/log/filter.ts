/** What of the log is looked at: the filter as it stands in the address, whether a line fits it, and what there is to choose. */
import { eachSaid } from "../../../said";
import type { LogLine, LogQuery, Verdict } from "../../../wire";
import type { Asked } from "../address";

/** Chosen from what the lines have. */
export const NAMES = ["by", "kind", "machine", "mark", "verdict"] as const;
export type Name = (typeof NAMES)[number];

export interface Filter extends Record<Name, string> {
  /** The day's name; empty for the one that is open, `EVERY` for all of them. */
  day: string;
  words: string;
  /** Times of day, as typed. */
  from: string;
  to: string;
}

/** Every day of the log. */
export const EVERY = "all";
export const VERDICTS: readonly Verdict[] = ["high", "on", "low", "too_close_high", "too_close_low"];

export function filterIn(asked: Asked): Filter {
  const of = (name: keyof Filter) => asked[name] ?? "";
  return {
    day: of("day"),
    words: of("words"),
    by: of("by"),
    kind: of("kind"),
    machine: of("machine"),
    mark: of("mark"),
    verdict: of("verdict"),
    from: of("from"),
    to: of("to"),
  };
}

/** How many parts of it hold lines back; the day is no part of it. */
export function acting(filter: Filter): number {
  const names = NAMES.filter((name) => filter[name] !== "").length;
  const times = [filter.from, filter.to].filter((text) => minuteIn(text) !== null).length;
  return names + times + (filter.words.trim() ? 1 : 0);
}

/** Minutes since midnight: 605 for `10:05`; null for what is no time of day. */
export function minuteIn(text: string): number | null {
  const match = /^(\d{1,2}):(\d{2})$/.exec(text.trim());
  const [hours, minutes] = [Number(match?.[1]), Number(match?.[2])];
  return match && hours < 24 && minutes < 60 ? hours * 60 + minutes : null;
}

/** Small letters without their accents, as the hub looks for words: `LÍNEA` is found as `linea`. */
export function plain(text: string): string {
  return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
}

const said = new WeakMap<LogLine, string>();

/** All that words are looked for in: who, and the sentence in each language. */
function saidIn(line: LogLine): string {
  const known = said.get(line);
  if (known !== undefined) return known;
  const text = plain([line.by, ...eachSaid(line)].join("\n"));
  said.set(line, text);
  return text;
}

/** Whether it was made in these hours, on whichever day; an end before the beginning lies behind midnight. */
function inHours(line: LogLine, from: number | null, to: number | null): boolean {
  if (from === null && to === null) return true;
  const made = new Date(line.made_at);
  const minute = made.getHours() * 60 + made.getMinutes();
  const [first, last] = [from ?? 0, to ?? 24 * 60];
  return first <= last ? minute >= first && minute <= last : minute >= first || minute <= last;
}

export interface Found {
  /** Lines that fit, in the order in which they came. */
  lines: LogLine[];
  /** For each name the values that lines have which fit all but this name, with how many. */
  choices: Record<Name, Map<string, number>>;
}

/** One walk over the lines: those that fit, and what could be chosen instead. */
export function find(lines: readonly LogLine[], filter: Filter): Found {
  const words = plain(filter.words).split(/\s+/).filter(Boolean);
  const [from, to] = [minuteIn(filter.from), minuteIn(filter.to)];
  const chosen = NAMES.filter((name) => filter[name] !== "");
  const found: Found = {
    lines: [],
    choices: { by: new Map(), kind: new Map(), machine: new Map(), mark: new Map(), verdict: new Map() },
  };
  const count = (name: Name, line: LogLine) => {
    const value = line[name];
    if (value != null) found.choices[name].set(value, (found.choices[name].get(value) ?? 0) + 1);
  };
  for (const line of lines) {
    if (!inHours(line, from, to)) continue;
    if (words.length > 0 && !words.every((word) => saidIn(line).includes(word))) continue;
    const against = chosen.filter((name) => line[name] !== filter[name]);
    const [only] = against;
    if (only === undefined) {
      found.lines.push(line);
      for (const name of NAMES) count(name, line);
    } else if (against.length === 1) {
      count(only, line);
    }
  }
  return found;
}

/**
 * What the hub is asked for. A day comes whole, so that its filter acts as one types; of the whole log, which may be a season,
 * only what fits.
 */
export function scopeOf(filter: Filter, today: string): LogQuery {
  if (filter.day !== EVERY) return { day: filter.day || today };
  const { words, by, kind, machine, mark } = filter;
  const verdict = VERDICTS.find((one) => one === filter.verdict);
  return {
    ...(words.trim() && { words: words.trim() }),
    ...(by && { person: by }),
    ...(kind && { kind }),
    ...(machine && { machine }),
    ...(mark && { mark }),
    ...(verdict && { verdict }),
  };
}
