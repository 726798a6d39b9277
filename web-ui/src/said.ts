/** What the hub says in every language, in the one of this screen. */
import { LANGUAGES } from "./languages";
import { language } from "./state";
import type { Language } from "./wire";

/** A language that was not there yet when it was said is missing, and reads as English. */
export function said(each: Partial<Record<Language, string>>): string {
  return each[language.value] || each.english || "";
}

/** In every language: what words are looked for in, whichever language they are typed in. */
export function eachSaid(each: Partial<Record<Language, string>>): string[] {
  return LANGUAGES.map((one) => each[one] ?? "");
}
