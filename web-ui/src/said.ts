/** What the hub says in every language, in the one of this screen. */
import { language } from "./state";
import type { Language } from "./wire";

/** A language that was not there yet when it was said is missing, and reads as English. */
export function said(each: Partial<Record<Language, string>>): string {
  return each[language.value] || each.english || "";
}
