/** Scripts that come late: a phone in the cut does not wait for what it shows seldom or never. */
import { type Signal, signal } from "@preact/signals";

/** Between two tries while the link is weak, ms. */
const PAUSE = 1_000;

/** A script that is fetched once it is asked for, however often the link breaks; null until it is here. */
export function late<Script>(fetch: () => Promise<Script>): {
  script: Signal<Script | null>;
  ask: () => void;
} {
  const script = signal<Script | null>(null);
  let asked = false;
  const ask = () => {
    if (asked) return;
    asked = true;
    fetch().then(
      (got) => {
        script.value = got;
      },
      () => {
        asked = false;
        setTimeout(ask, PAUSE);
      },
    );
  };
  return { script, ask };
}

type Seldom = typeof import("./seldom");
let fetchSeldom: () => Promise<Seldom> = () =>
  Promise.reject(new Error("nobody has said where it comes from"));

/** Visitors' pages, photos, control, sums: asked for once the link is up, so that it is there when the link is gone. */
export const seldom = late(() => fetchSeldom());

/** Says where it comes from: its pages name this file, so that this file can't name them. */
export function seldomComesFrom(fetch: () => Promise<Seldom>): void {
  fetchSeldom = fetch;
}
