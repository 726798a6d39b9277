/** What the hub says in both languages, in the one of this screen. */
import { language } from "./state";

export function said(both: { english: string; spanish: string }): string {
  return both[language.value] ?? both.english;
}
