/** What the pages know, as signals; nothing else is global. */
import { computed, effect, signal } from "@preact/signals";
import { HubClock } from "./clock";
import { languageOf, languages } from "./languages";
import type {
  ByeReason,
  CabPage,
  Ground,
  Me,
  Operator,
  Sheet,
  Supervisor,
  UnkeptStop,
  Visitor,
} from "./wire";

export const clock = new HubClock();

/** This page is a screen of a day that is over, painted inside the review. */
export const replays = location.pathname.startsWith("/replayed/");

/** Who this phone is: undefined while asked, null when it has not joined. */
export const me = signal<Me | null | undefined>(undefined);
export const operator = signal<Operator | null>(null);
export const ground = signal<Ground | null>(null);
export const supervisor = signal<Supervisor | null>(null);
export const sheet = signal<Sheet | null>(null);
export const visitor = signal<Visitor | null>(null);

/** What the page of some role shows is here. */
export const hasView = computed(
  () => !!(operator.value || (ground.value && sheet.value) || supervisor.value || visitor.value),
);

/** Counts up with each heartbeat that came in time; the sign of life fills with it. */
export const beats = signal(0);
/** True while heartbeats come. */
export const linked = signal(false);
/** The hub can't keep what is said: it takes no calls. */
export const halted = signal(false);
/** A stop that such a hub was told: it stands on the screens and is in no log. */
export const unkept = signal<UnkeptStop | null>(null);
/** The newest entry that the hub has told of. */
export const head = signal(0);
/** The hub's clock, told anew every half second while the page is alive. */
export const now = signal(clock.now());
/** A stop stands, as this page is told: nobody has to shout any more. */
export const stopsStanding = computed(() => {
  if (!linked.value) return false;
  if (unkept.value && !unkept.value.machine) return true;
  const cards = (ground.value ?? supervisor.value)?.machines ?? [];
  const all = cards.length > 0 && cards.every((card) => card.stop?.all);
  const cab = operator.value?.screen;
  return all || (cab?.kind === "stop" && cab.all) || !!visitor.value?.stop;
});
/** The hub has sent this page away. */
export const bye = signal<ByeReason | null>(null);
/** What this cab's page can't give, told to the hub with each heartbeat; null where it is no cab's. */
export const cabPage = signal<CabPage | null>(null);
/** A word to the person that goes away by a press: a refusal, or what became of something. */
export const notice = signal<string | null>(null);

/** What a photo is of. */
export interface PhotoAbout {
  mark?: string;
  face?: string;
  entry?: number;
}
export interface TakenPhoto {
  file: File;
  about: PhotoAbout;
  /** Hears its name once it is kept. */
  onKept: ((photo: string) => void) | undefined;
}
/** A photo that was just taken and is neither kept nor thrown away. */
export const takenPhoto = signal<TakenPhoto | null>(null);
/** Photos whose bytes the hub does not have yet. */
export const photosWaiting = signal(0);

export type Theme = "sun" | "dusk";
export const theme = signal<Theme>(remembered("rodcall.theme") === "dusk" ? "dusk" : "sun");
/** Spoken calls, on request. */
export const spoken = signal(remembered("rodcall.spoken") === "yes");
/** Before joining, the phone's own language. */
export const chosenLanguage = signal(languageOf(navigator.language));

export const language = computed(() => me.value?.language ?? chosenLanguage.value);
export const unit = computed(() => me.value?.unit ?? "tenths");

effect(() => {
  document.documentElement.dataset.theme = theme.value;
  document.documentElement.lang = languages[language.value].folder;
  remember("rodcall.theme", theme.value);
  remember("rodcall.spoken", spoken.value ? "yes" : "no");
});

export function remembered(name: string): string | null {
  try {
    return localStorage.getItem(name);
  } catch {
    return null;
  }
}

/** A phone without storage works all the same; it forgets. */
export function remember(name: string, value: string): void {
  try {
    localStorage.setItem(name, value);
  } catch {
    // Private windows may refuse; nothing depends on it.
  }
}
