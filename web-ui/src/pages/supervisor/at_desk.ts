/** Whether this screen is a desk: the same width as in `desk.css`. While a panel is open the page under it stays as it is, or what is
 * typed there would go with it when a window is drawn wider or a tablet is turned. */
import { effect, signal } from "@preact/signals";
import { openPanels } from "../../parts/urgent";

const wide = matchMedia("(min-width: 1024px)");
const isWide = signal(wide.matches);

export const atDesk = signal(wide.matches);
wide.addEventListener("change", () => {
  isWide.value = wide.matches;
});
effect(() => {
  if (openPanels.value === 0) atDesk.value = isWide.value;
});
