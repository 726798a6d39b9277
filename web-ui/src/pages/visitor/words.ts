/** The words of the visitors' page, in this screen's language. */
import { language } from "../../state";
import { visitEn } from "../../words/visit/en";
import { visitEs } from "../../words/visit/es";

export function v(): typeof visitEn {
  return language.value === "spanish" ? visitEs : visitEn;
}
