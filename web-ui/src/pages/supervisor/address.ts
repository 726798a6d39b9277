/** Which page of the desk is open and what is asked of it: both stand in the address, so that a reload, a shared link, back and forward lead there again. */
import { signal } from "@preact/signals";

export type Asked = Readonly<Record<string, string>>;

export interface Place {
  /** The page; empty for the one that opens first. */
  page: string;
  asked: Asked;
}

/** What an address behind its `#` says: `#log?mark=P-1`. */
export function placeIn(hash: string): Place {
  const [page = "", query = ""] = hash.replace(/^#/, "").split(/\?(.*)/s);
  return { page, asked: Object.fromEntries(new URLSearchParams(query)) };
}

/** The same as an address; what is empty is left out. */
export function hashOf({ page, asked }: Place): string {
  const given = Object.entries(asked).filter(([, value]) => value !== "");
  const query = new URLSearchParams(given).toString();
  return page ? `#${page}${query && `?${query}`}` : "";
}

export const place = signal<Place>(placeIn(location.hash));

/** What was asked of each page when it was left. */
const left = new Map<string, Asked>();
/** Browsers take few changes of the address in a short time: what is typed goes into it after this long, ms. */
const PAUSE = 300;
let waits: ReturnType<typeof setTimeout> | undefined;

function write(how: "pushState" | "replaceState"): void {
  clearTimeout(waits);
  waits = undefined;
  try {
    history[how](null, "", `${location.pathname}${location.search}${hashOf(place.value)}`);
  } catch {
    // The browser has had enough changes for now; the page itself is right.
  }
}

function take(to: Place): void {
  left.set(to.page, to.asked);
  place.value = to;
}

/** A step: back leads to where one was. Without `asked`, the page is as it was left. */
export function goTo(page: string, asked: Asked = left.get(page) ?? {}): void {
  if (waits) write("replaceState");
  const to = { page, asked };
  if (hashOf(to) === hashOf(place.value)) return;
  take(to);
  write("pushState");
}

/** The same step, said more closely: no step of its own. */
export function refine(page: string, asked: Asked): void {
  take({ page, asked });
  clearTimeout(waits);
  waits = setTimeout(() => write("replaceState"), PAUSE);
}

addEventListener("popstate", () => {
  clearTimeout(waits);
  waits = undefined;
  take(placeIn(location.hash));
});
