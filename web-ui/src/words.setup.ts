/** For tests: the words of every language are here before the first of them. */
import { LANGUAGES } from "./languages";
import { chosenLanguage } from "./state";
import { t, wordsHere } from "./words";
import { scripts } from "./words.gen/scripts";

for (const language of [...LANGUAGES].reverse()) {
  chosenLanguage.value = language;
  await wordsHere;
  const words = await scripts[language]();
  while (t() !== words) await new Promise((next) => setTimeout(next));
}
