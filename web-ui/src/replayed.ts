/** A page inside the review: it shows what its screen showed at a moment that the review hands in, and asks nobody. */
import { batch } from "@preact/signals";
import * as state from "./state";
import type { Ground, Me, Operator, Sheet } from "./wire";

/** What the review hands in. */
export interface Shown {
  me: Me;
  at: number;
  /** The page was in sight and had its link; else its number had hidden itself. */
  alive: boolean;
  operator: Operator | null;
  ground: Ground | null;
  sheet: Sheet | null;
}

/** Listens to the review alone, and walks the tick while the screen was alive. */
export function showReplayed(): void {
  document.documentElement.dataset.replayed = "yes";
  addEventListener("message", (event: MessageEvent<Shown>) => {
    if (event.source !== parent || event.origin !== location.origin) return;
    const shown = event.data;
    batch(() => {
      state.me.value = shown.me;
      state.now.value = shown.at;
      state.linked.value = shown.alive;
      state.operator.value = shown.operator;
      state.ground.value = shown.ground;
      state.sheet.value = shown.sheet;
      if (shown.alive) state.beats.value++;
    });
  });
  setInterval(() => {
    if (state.linked.value) state.beats.value++;
  }, 1_000);
  parent.postMessage("ready", location.origin);
}
