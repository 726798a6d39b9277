/** LOOK in the number's place: for which call it has been, so that closing a plan or lifting a stop does not bring it back. */
import { signal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { now, replays } from "../../state";
import type { CallView } from "../../wire";

/** The loud form gives way by itself: no press is needed to go on. */
const LOUD_FOR = 6_000;

const looked = signal(0);

/** The operator has looked. */
export function hasLooked(call: number): void {
  looked.value = call;
}

/** Whether LOOK stands in the place of this call's number: somebody is at a mark that is known to lie within reach. */
export function coversNumber(call: CallView): boolean {
  if (!call.reminder?.loud || call.reminder.beside) return false;
  // In a replay its six seconds are those of that day.
  return replays ? now.value - call.sent_at <= LOUD_FOR : looked.value !== call.id;
}

/** Lets LOOK give way after its time. */
export function useLook(call: CallView | null): void {
  const covers = call !== null && coversNumber(call);
  useEffect(() => {
    if (!call || !covers || replays) return undefined;
    const timer = setTimeout(() => hasLooked(call.id), LOUD_FOR);
    return () => clearTimeout(timer);
  }, [call?.id, covers]);
}
