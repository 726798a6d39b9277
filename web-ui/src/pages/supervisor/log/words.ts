/** The words of LOG, in the language of this screen; they come with its script. */
import { language } from "../../../state";
import type { LogWords } from "../../../words.gen/shape";
import { library } from "./late";

export function logWords(): LogWords {
  return library().words[language.value];
}
