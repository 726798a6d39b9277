/** The words of the visitors' page, in this screen's language. */
import { language } from "../../state";
import { visit } from "../../words.gen/visit";

export const v = () => visit[language.value];
