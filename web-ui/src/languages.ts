/** The languages of the screen: the folder of each one's words, what it calls itself, and the voice that speaks it. */
import list from "./languages.json";
import type { Language } from "./wire";

export const languages: Readonly<Record<Language, { folder: string; name: string; voice: string }>> = list;

export const LANGUAGES = Object.keys(languages) as Language[];

/** For a choice: each by its own name. */
export const languageOptions = LANGUAGES.map((id) => ({ id, name: languages[id].name }));

/** The first of a phone's languages that the screen has; else the first of all. */
export const languageOf = (tag: string | undefined): Language =>
  LANGUAGES.find((id) => tag?.startsWith(languages[id].folder)) ?? LANGUAGES[0] ?? "english";
