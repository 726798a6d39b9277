/** What is open on READ. It outlives a look at another page; another mark is chosen over it only on the person's word. */
import { computed, effect, signal, untracked } from "@preact/signals";
import type { Settled } from "../../outbox";
import { ground, me } from "../../state";
import type { TakeReading } from "../../wire";
import { mark } from "./at";

export interface Sent {
  command: TakeReading;
  reply: Settled | null;
}

/** What was sent last, and its answer; nothing once the next reading is begun. */
export const sent = signal<Sent | null>(null);
/** A reading that was called wrong, until the right one is typed. */
export const wrong = signal<{ reading: number; mark: string } | null>(null);

/** The mark that is not settled: a question without an answer, or a wrong number without the right one. */
export const unsettled = computed<{ mark: string; what: "question" | "wrong" } | null>(() => {
  if (wrong.value) return { mark: wrong.value.mark, what: "wrong" };
  const reply = sent.value?.reply;
  if (reply?.kind !== "answer" || reply.answer.outcome.kind !== "asked") return null;
  return { mark: sent.value?.command.mark || mark.value?.id || "", what: "question" };
});

/** What is to happen once the person has said that the mark is left as it is. */
export const leaving = signal<(() => void) | null>(null);

/** Goes on to something else, unless the mark is not settled: then it is asked first. */
export function leave(go: () => void): void {
  if (unsettled.value) leaving.value = go;
  else begin(go);
}

/** Nothing is open any more. */
export function begin(go: () => void = () => undefined): void {
  sent.value = null;
  wrong.value = null;
  leaving.value = null;
  go();
}

/**
 * Another person holds the phone: nobody answers a question about another's reading. Nor does what was told on one day stand on
 * the next: whoever is in over its opening keeps this page.
 */
let held = "";
effect(() => {
  const day = ground.value?.day;
  const now = `${me.value?.device ?? ""} ${day ?? held.split(" ")[1] ?? ""}`;
  if (now === held) return;
  held = now;
  untracked(() => begin());
});
