/** The words of what comes late: those of every page, and with them those that no page needs first. */
import type { Language } from "./wire";
import { t as first, languageHere } from "./words";
import { later } from "./words.gen/later";
import type { Words as FirstWords, LaterWords } from "./words.gen/shape";

/** Groups that both have are one: some of a group's words may be needed first. */
type Joined<One, Other> = {
  [Key in keyof One | keyof Other]: Key extends keyof One
    ? Key extends keyof Other
      ? Joined<One[Key], Other[Key]>
      : One[Key]
    : Key extends keyof Other
      ? Other[Key]
      : never;
};

export type Words = Joined<FirstWords, LaterWords>;

function joined(one: object, other: object): object {
  const all: Record<string, unknown> = { ...one };
  for (const [key, words] of Object.entries(other)) {
    const here = all[key];
    all[key] = isGroup(here) && isGroup(words) ? joined(here, words) : words;
  }
  return all;
}

const isGroup = (words: unknown): words is object => typeof words === "object" && words !== null;

/** The words of a language: those that a page needs first and those that come late. */
export const whole = (of: FirstWords, language: Language): Words => joined(of, later[language]) as Words;

const made = new Map<Language, { of: FirstWords; words: Words }>();

/** The words of this screen's language. */
export function t(): Words {
  const of = first();
  const language = languageHere();
  const known = made.get(language);
  if (known?.of === of) return known.words;
  const words = whole(of, language);
  made.set(language, { of, words });
  return words;
}
