/** For tests: the words of both languages are here before the first of them. */
import { chosenLanguage } from "./state";
import { t, wordsHere } from "./words";
import { words as es } from "./words.gen/es";

chosenLanguage.value = "spanish";
await wordsHere;
while (t() !== es) await new Promise((next) => setTimeout(next));
chosenLanguage.value = "english";
while (t() === es) await new Promise((next) => setTimeout(next));
