/** The words of the supervisor's pages: those of every page and those of the office. */
import { language } from "../../state";
import { office } from "../../words.gen/office";
import type { OfficeWords as Office, WorkWords } from "../../words.gen/shape";
import { work } from "../../words.gen/work";
import { t as everyPage, type Words } from "../../words_later";

/** Words of a field are joined where both dictionaries have it. */
function joined(words: Words, own: Office, ofWork: WorkWords) {
  return {
    ...words,
    ...own,
    account: { ...words.account, ...ofWork, ...own.account },
    cuts: { ...words.cuts, ...own.cuts },
    wayIn: { ...words.wayIn, ...own.wayIn },
  };
}

export type OfficeWords = ReturnType<typeof joined>;

const made = new Map<Words, OfficeWords>();

/** The words of this screen's language. */
export function t(): OfficeWords {
  const words = everyPage();
  const known = made.get(words);
  if (known) return known;
  const all = joined(words, office[language.value], work[language.value]);
  made.set(words, all);
  return all;
}
