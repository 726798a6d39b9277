/** Tells the hub what became of a call on this screen: on the phone, and painted for a second on a visible page. */
import { useEffect } from "preact/hooks";
import { have, receipt } from "../../hub";
import { language, unit } from "../../state";
import type { CabScreen } from "../../wire";

/** Painted and visible for this long counts as shown, ms (field practice). */
export const SHOWN_AFTER = 1_000;
/** Fewer frames than this in that time is a page that is not being painted. */
const FRAMES = 5;

export function useReceipts(screen: CabScreen | null): void {
  const call = screen?.kind === "call" ? screen.call : null;
  const id = call?.id;
  const known = call?.state.kind;
  const delivered = known !== "sent";
  const shown = known === "shown" || known === "got";
  useEffect(() => {
    if (id !== undefined && !delivered) have(id);
  }, [id, delivered]);
  useEffect(() => {
    if (id === undefined || shown) return undefined;
    return painted(() => receipt({ kind: "shown", call: id, language: language.value, unit: unit.value }));
  }, [id, shown]);
}

/** Calls back once the page has been painted and visible for long enough; gives a way to stop watching. */
export function painted(done: () => void): () => void {
  let since: number | null = null;
  let frames = 0;
  let handle = 0;
  const frame = (at: number) => {
    if (document.visibilityState !== "visible") {
      since = null;
      frames = 0;
    } else {
      since ??= at;
      frames++;
      if (frames >= FRAMES && at - since >= SHOWN_AFTER) {
        done();
        return;
      }
    }
    handle = requestAnimationFrame(frame);
  };
  handle = requestAnimationFrame(frame);
  return () => cancelAnimationFrame(handle);
}
