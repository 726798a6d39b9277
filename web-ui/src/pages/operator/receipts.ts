/** Tells the hub what became of a call on this screen: on the phone, and its number painted and in view for a second. */
import { useEffect, useRef } from "preact/hooks";
import { have, receipt } from "../../hub";
import { textOf } from "../../parts/call";
import type { CabScreen } from "../../wire";
import type { Halted } from "./screen";

/** Painted and visible for this long counts as shown, ms (field practice). */
export const SHOWN_AFTER = 1_000;
/** Fewer frames than this in that time is a page that is not being painted. */
const FRAMES = 5;

/** `inView` is whether the page itself has put nothing over the number. */
export function useReceipts(screen: CabScreen | Halted | null, inView: boolean): void {
  const call = screen?.kind === "call" ? screen.call : null;
  const id = call?.id;
  const now = useRef(call);
  now.current = call;
  const known = call?.state.kind;
  const delivered = known !== "sent";
  const shown = call?.shown_at != null || known === "shown" || known === "got";
  useEffect(() => {
    if (id !== undefined && !delivered) have(id);
  }, [id, delivered]);
  useEffect(() => {
    if (id === undefined || shown || !inView) return undefined;
    let stop = () => {};
    let over = false;
    // One that a weak link swallowed is made anew, from the number as it stands then.
    const tell = async () => {
      const text = now.current && textOf(now.current);
      if (!text) return;
      const command = { kind: "shown", call: id, language: text.language, unit: text.unit } as const;
      if (!(await receipt(command)) && !over) stop = painted(() => void tell());
    };
    stop = painted(() => void tell());
    return () => {
      over = true;
      stop();
    };
  }, [id, shown, inView]);
}

/** Whether the number is what a finger would touch in its middle: whatever lies over it, nobody sees it. */
export function uncovered(): boolean {
  const told = document.querySelector("[data-number]");
  if (!told) return false;
  const { left, top, width, height } = told.getBoundingClientRect();
  const touched = document.elementFromPoint?.(left + width / 2, top + height / 2);
  // Where the browser can't tell, what the page has put there decides.
  return touched === undefined || (touched !== null && told.contains(touched));
}

/** Calls back once the number has been painted and in view for long enough; gives a way to stop watching. */
export function painted(done: () => void): () => void {
  let since: number | null = null;
  let frames = 0;
  let handle = 0;
  const frame = (at: number) => {
    if (document.visibilityState !== "visible" || !uncovered()) {
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
