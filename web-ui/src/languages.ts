/** The languages of the screen: the folder of each one's words, what it calls itself, the voice that speaks it, and what to know of it. */
import list from "./languages.json";
import type { Language } from "./wire";

interface Listed {
  folder: string;
  name: string;
  voice: string;
  /** In the language itself: what to know before it is chosen. */
  note?: string;
}

export const languages: Readonly<Record<Language, Listed>> = list;

export const LANGUAGES = Object.keys(languages) as Language[];

/** For a choice: each by its own name. */
export const languageOptions = LANGUAGES.map((id) => ({ id, ...languages[id] }));

/** The first of a phone's languages that the screen has; else the first of all. */
export const languageOf = (tag: string | undefined): Language =>
  LANGUAGES.find((id) => tag?.startsWith(languages[id].folder)) ?? LANGUAGES[0] ?? "english";
