/** Drafts of things of the site: read and written by paths, without what was left empty. */
import type { Typed, TypedTable } from "../../../wire";

/** The value at a path such as `run.steps.1.from`; nothing when it is not there. */
export function at(typed: Typed | undefined, path: string): Typed | undefined {
  let here = typed;
  for (const key of path.split(".")) {
    if (Array.isArray(here)) here = here[Number(key)];
    else if (typeof here === "object") here = here[key];
    else return undefined;
  }
  return here;
}

/** The same with another value at a path; nothing takes the value away. */
export function put(typed: Typed | undefined, path: string, value: Typed | undefined): Typed {
  const [key = "", ...rest] = path.split(".");
  const inner = rest.join(".");
  if (Array.isArray(typed) || (typed === undefined && /^\d+$/.test(key))) {
    const list = Array.isArray(typed) ? [...typed] : [];
    const place = Number(key);
    if (!inner && value === undefined) return list.filter((_, i) => i !== place);
    while (list.length < place) list.push("");
    list[place] = inner ? put(list[place], inner, value) : (value as Typed);
    return list;
  }
  const table: TypedTable = typeof typed === "object" ? { ...typed } : {};
  if (inner) table[key] = put(table[key], inner, value);
  else if (value === undefined) delete table[key];
  else table[key] = value;
  return table;
}

/** Without what was left empty: the hub then says what is missing. */
export function cleaned(typed: Typed): Typed | undefined {
  if (typeof typed === "string") return typed.trim() === "" ? undefined : typed.trim();
  if (typeof typed === "boolean") return typed;
  if (Array.isArray(typed)) {
    const kept = typed.map(cleaned);
    // A point keeps both of its places, so that the hub can say which is missing.
    if (kept.every((one) => one === undefined)) return undefined;
    return kept.map((one) => one ?? "");
  }
  const kept = Object.entries(typed).flatMap(([key, value]) => {
    const one = cleaned(value);
    return one === undefined ? [] : [[key, one] as const];
  });
  return kept.length === 0 ? undefined : Object.fromEntries(kept);
}

/** A plain number becomes feet where a length is asked for, and is seen to. */
export function withFeet(text: string): string {
  return /^[-−+]?(\d+([.,]\d*)?|[.,]\d+)$/.test(text.trim()) ? `${text.trim()} ft` : text;
}
