/** Every word on the screen, in the language of this phone: a phone fetches its own and no other. */
import { effect } from "@preact/signals";
import { LANGUAGES } from "./languages";
import { late } from "./late";
import { language } from "./state";
import type { Language } from "./wire";
import { scripts } from "./words.gen/scripts";
import type { Words } from "./words.gen/shape";

export type { Words };

/** One script for each language of languages.json. */
const fetched = Object.fromEntries(
  Object.entries(scripts).map(([language, fetch]) => [language, late(fetch)]),
) as Record<Language, ReturnType<typeof late<Words>>>;

effect(() => fetched[language.value].ask());

/** The words of this screen's language; until they are here, those that it had before. */
export function t(): Words {
  const words = fetched[languageHere()].script.value;
  if (!words) throw new Error("asked for words before any were here");
  return words;
}

/** The language that the words are in now. */
export function languageHere(): Language {
  if (fetched[language.value].script.value) return language.value;
  return LANGUAGES.find((one) => fetched[one].script.value) ?? language.value;
}

/** Done once there are words in some language. */
export const wordsHere = new Promise<void>((here) => {
  effect(() => {
    if (fetched[languageHere()].script.value) here();
  });
});
