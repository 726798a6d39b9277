/** What the phone itself knows of a command: whether it may go out unasked after it has waited, and what was typed in it. */
import { setUpName } from "./given_names";
import type { Command } from "./wire";

/**
 * Words that become a call in a cab. Whoever said one may have used hands meanwhile: once it has waited it is asked about first.
 * An edge that is over its line stops the machine, and is never held back.
 */
export function asksFirst(command: Command): boolean {
  if (command.kind === "take_reading") return !command.paper && !command.waited;
  return command.kind === "quick_call" || (command.kind === "read_edge" && command.over !== true);
}

/** Presses that say nothing of their own: refused after a wait, they leave nothing behind that anybody would miss. */
const QUIET = [
  "got_it",
  "saw_nod",
  "check_me",
  "change_screen",
  "low_battery",
  "stand_here",
  "withdraw_call",
  "wrong_number",
  "drop_unsent",
];

export function isQuiet(command: Command): boolean {
  return QUIET.includes(command.kind);
}

/** Names that a phone makes, lengths in units that nobody typed, and pictures: not for reading. */
const UNREAD = [
  "kind",
  "visit",
  "visits",
  "answers",
  "sha256",
  "original",
  "photo",
  "strokes",
  "waited",
  "sure",
  "restates",
];

/** What was typed, on one line, names as people read them: P-1 SETUP-1 A 4.70 rod. */
export function wordsOf(command: Command): string {
  return values(command).join(" ");
}

function values(of: unknown): string[] {
  if (typeof of === "string") return of.trim() === "" ? [] : [of.trim()];
  if (typeof of === "number") return [String(of)];
  if (Array.isArray(of)) return of.flatMap(values);
  if (typeof of !== "object" || of === null) return [];
  return Object.entries(of).flatMap(([name, value]) => {
    if (UNREAD.includes(name)) return [];
    return name === "set_up" && typeof value === "string" ? [setUpName(value)] : values(value);
  });
}
