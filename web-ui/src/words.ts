/** Every word on the screen, in the language of this phone: a phone fetches its own and no other. */
import { effect } from "@preact/signals";
import { late } from "./late";
import { language } from "./state";
import type { en } from "./words/en";

export type Words = typeof en;

/** One script for each language; another language is another line here. */
const scripts = {
  english: late(async () => (await import("./words/en")).en),
  spanish: late(async (): Promise<Words> => (await import("./words/es")).es),
};

effect(() => scripts[language.value].ask());

/** The words of this screen's language; until they are here, those that it had before. */
export function t(): Words {
  const words = scripts[language.value].script.value ?? anyWords();
  if (!words) throw new Error("asked for words before any were here");
  return words;
}

function anyWords(): Words | null {
  return scripts.english.script.value ?? scripts.spanish.script.value;
}

/** Done once there are words in some language. */
export const wordsHere = new Promise<void>((here) => {
  effect(() => {
    if (anyWords()) here();
  });
});
