/** The languages of the pages, as their list has them. */
import { readFileSync } from "node:fs";

interface Listed {
  folder: string;
  name: string;
  voice: string;
}

const list: Record<string, Listed> = JSON.parse(
  readFileSync(new URL("../../web-ui/src/languages.json", import.meta.url), "utf8"),
);

/** Each by its name on the wire, English first. */
export const LANGUAGES = Object.entries(list).map(([id, listed]) => ({ id, ...listed }));

/** All but English. */
export const OTHERS = LANGUAGES.filter(({ folder }) => folder !== "en");
