/** The things of a site as they are written, and each in a few words. */
import { said } from "../../../said";
import type { SiteForm, SiteFormOf, SiteSheet, Typed, TypedTable } from "../../../wire";

/** The things of a kind as they are written. */
export function things(got: SiteSheet, of: SiteFormOf): TypedTable[] {
  const list = (got.written as TypedTable)[of];
  if (Array.isArray(list)) return list as TypedTable[];
  return list === undefined ? [] : [list as TypedTable];
}

export function idOf(thing: TypedTable): string {
  return typeof thing.id === "string" ? thing.id : "";
}

/** The marks of a target. */
export function marksOf(got: SiteSheet, form: SiteForm, id: string): string[] {
  if (form.of !== "target") return [];
  return things(got, "mark")
    .filter((mark) => mark.target === id)
    .map(idOf);
}

/** A thing in a few words: its name, what it belongs to, its note; a word of a list as its form calls it. */
export function gist(form: SiteForm, thing: TypedTable): string {
  const keys = ["name", "target", "elevation", "kind", "unit", "direction", "to", "note"];
  const texts = keys.map((key): Typed | undefined => {
    const value = thing[key];
    const takes = form.fields.find((field) => field.key === key)?.takes;
    const word = takes?.kind === "word" ? takes.words.find((one) => one.id === value) : undefined;
    return word ? said(word.name) : value;
  });
  return texts.filter((one) => typeof one === "string").join(" · ");
}
