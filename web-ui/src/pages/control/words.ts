/** The words of CONTROL, in this screen's language. */
import { language } from "../../state";
import { control } from "../../words.gen/control";

export const c = () => control[language.value];
