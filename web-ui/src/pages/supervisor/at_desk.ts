/** Whether this screen is a desk: the same width as in `desk.css`. */
import { signal } from "@preact/signals";

const wide = matchMedia("(min-width: 1024px)");

export const atDesk = signal(wide.matches);
wide.addEventListener("change", () => {
  atDesk.value = wide.matches;
});
