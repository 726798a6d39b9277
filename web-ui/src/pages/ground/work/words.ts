/** The words of WORK, in this screen's language: those of every page and its own. */
import { language } from "../../../state";
import { work } from "../../../words.gen/work";
import { t } from "../../../words_later";

export function w() {
  return { ...t().account, ...work[language.value] };
}
