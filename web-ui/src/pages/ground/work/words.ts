/** The words of WORK, in this screen's language: those of every page and its own. */
import { language } from "../../../state";
import { t } from "../../../words";
import { workEn } from "../../../words/work/en";
import { workEs } from "../../../words/work/es";

export function w() {
  return { ...t().account, ...(language.value === "spanish" ? workEs : workEn) };
}
