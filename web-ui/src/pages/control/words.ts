/** The words of CONTROL, in this screen's language. */
import { language } from "../../state";
import { controlEn } from "../../words/control/en";
import { controlEs } from "../../words/control/es";

export function c(): typeof controlEn {
  return language.value === "spanish" ? controlEs : controlEn;
}
