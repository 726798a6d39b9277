/** The words of WORK, in this screen's language: those of every page and its own. */
import { language } from "../../../state";
import { t } from "../../../words";
import { work } from "../../../words.gen/work";

export function w() {
  return { ...t().account, ...work[language.value] };
}
