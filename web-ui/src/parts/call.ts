/** A call in the words of this screen. */

import { timeOfDay } from "../show";
import { clock, language, linked, now, unit } from "../state";
import type { CallText, CallView, MachineCard, Message } from "../wire";
import { t } from "../words";

/** The text in this screen's language and unit, as the hub wrote it; until the hub knows of a new choice, in one that it has. */
export function textOf(call: CallView): CallText | undefined {
  const mine = call.texts.filter((text) => text.unit === unit.value);
  return mine.find((text) => text.language === language.value) ?? mine[0] ?? call.texts[0];
}

/** What to know about a call; the time of the last check where the laser was not checked since. */
export function labelWords(call: CallView): string[] {
  const words = t();
  return call.labels.map((label) =>
    label === "not_checked" && call.checked_at != null
      ? words.notCheckedSince(timeOfDay(call.checked_at))
      : words.labels[label],
  );
}

export type Half = "down" | "up" | "grade" | "none";

/** The half that the bucket must move to: the same source for picture, tone and word. */
export function half(message: Message): Half {
  if (message.kind !== "measured") return "none";
  const told = message.correction;
  if (told === "grade") return "grade";
  if (told === "wait") return "none";
  return "up" in told ? "up" : "down";
}

/** Whether the hub says the amount in feet where tenths are usual. */
export function saidInFeet(message: Message): boolean {
  if (message.kind !== "measured" || typeof message.correction === "string") return false;
  return Object.values(message.correction).some((amount) => !("half_tenths" in amount));
}

/** After this long without being painted, a call is not on the screen (field practice, 5 s). */
export const NOT_SHOWN_AFTER = 5_000;

/** Where a call stands, as the ground person reads it. */
export function stateWords(call: CallView, machine: MachineCard): string {
  const words = t();
  const state = call.state;
  if (state.kind === "ended") return words.endings[state.how];
  if (state.kind === "got") return call.witness ? words.nodded(call.witness) : words.states.got;
  if (machine.way_in.phase !== "working") return words.wayIn.shownAfter;
  if (state.kind === "shown") {
    // On the screen means that the number itself is: no stop in its place, no panel over it.
    const alive = machine.screen.kind === "showing" && machine.in_view && linked.value;
    return alive ? words.states.shown : words.states.not_on_screen;
  }
  if (now.value - call.sent_at > NOT_SHOWN_AFTER * clock.rate()) return words.states.not_on_screen;
  return words.states[state.kind];
}

export function live(call: CallView | null | undefined): call is CallView {
  return !!call && call.state.kind !== "ended";
}
