/** The words of the supervisor's pages: those of every page and those of the office. */
import { language } from "../../state";
import { t as everyPage, type Words } from "../../words";
import { officeEn } from "../../words/office/en";
import { officeEs } from "../../words/office/es";
import { workEn } from "../../words/work/en";
import { workEs } from "../../words/work/es";

type Office = typeof officeEn;

/** Words of a field are joined where both dictionaries have it. */
function joined(words: Words, office: Office, work: typeof workEn) {
  return {
    ...words,
    ...office,
    account: { ...words.account, ...work, ...office.account },
    cuts: { ...words.cuts, ...office.cuts },
    wayIn: { ...words.wayIn, ...office.wayIn },
  };
}

export type OfficeWords = ReturnType<typeof joined>;

const made = new Map<Words, OfficeWords>();

/** The words of this screen's language. */
export function t(): OfficeWords {
  const words = everyPage();
  const known = made.get(words);
  if (known) return known;
  const spanish = language.value === "spanish";
  const all = joined(words, spanish ? officeEs : officeEn, spanish ? workEs : workEn);
  made.set(words, all);
  return all;
}
