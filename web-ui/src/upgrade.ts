/**
 * A newer hub has newer pages. This page compares the script that it runs with the one that the hub's page names now, and loads
 * that at a moment when nobody is in the middle of anything. Asking also renews the page in the browser's own store, so that the
 * next load is the new one.
 */
import { onlyInMemory, waiting } from "./outbox";
import { operator, photosWaiting, replays, takenPhoto } from "./state";

/** Nobody has touched the page for this long, ms. */
const IDLE = 20_000;
/** Between two looks whether the moment has come, ms. */
const LOOK = 2_000;

/** What stands in the way while it stands on the page: something open, asked, typed, or somebody who is in. */
const BUSY =
  ".panel, .notice, .whole, .in-bar, .facts.in, .sent, .stop-screen, .held-words, [role=alertdialog]";

/** Where something may have been typed. */
const TYPED = "input:not([type=search], [type=file], [type=checkbox], [type=radio]), textarea";

let compared = "";
let touchedAt = performance.now();
let looking: ReturnType<typeof setInterval> | undefined;

/** The script that a page names. */
export function scriptOf(page: string): string | null {
  return /<script[^>]+src="([^"]+\.js)"/.exec(page)?.[1] ?? null;
}

/** The script that this page runs: what it says of itself to the hub. */
export function ownScript(): string | null {
  return document.querySelector<HTMLScriptElement>('script[type="module"][src]')?.getAttribute("src") ?? null;
}

/** Called with the build that the hub says at each new link. */
export async function noticeUpgrade(build: string): Promise<void> {
  if (replays || !build || build === compared) return;
  try {
    const answer = await fetch("/", { cache: "reload" });
    if (!answer.ok) return;
    const theirs = scriptOf(await answer.text());
    compared = build;
    if (theirs && ownScript() && theirs !== ownScript()) wait();
  } catch {
    // The link is gone again: the next one asks anew.
  }
}

function wait(): void {
  if (looking) return;
  const touched = () => {
    touchedAt = performance.now();
  };
  for (const name of ["pointerdown", "keydown"]) addEventListener(name, touched, { capture: true });
  touched();
  looking = setInterval(() => {
    if (mayLoad()) location.reload();
  }, LOOK);
}

/** Nothing is open, typed or shown that a load would take away; what waits is written down. */
export function mayLoad(): boolean {
  if (takenPhoto.value || document.querySelector(BUSY)) return false;
  if (onlyInMemory.value && (waiting.value.length > 0 || photosWaiting.value > 0)) return false;
  const fields = document.querySelectorAll<HTMLInputElement>(TYPED);
  if ([...fields].some((field) => field.value !== "")) return false;
  // A number in the cab is not blanked for a new page.
  const screen = operator.value?.screen.kind;
  if (screen && screen !== "no_call" && screen !== "old") return false;
  return document.visibilityState !== "visible" || performance.now() - touchedAt > IDLE;
}
