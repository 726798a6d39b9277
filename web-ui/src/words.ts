/** Every word on the screen, once, in each language. */
import { language } from "./state";
import { en } from "./words/en";
import { es } from "./words/es";

export type Words = typeof en;

/** The words of this screen's language. */
export function t(): Words {
  return language.value === "spanish" ? es : en;
}
