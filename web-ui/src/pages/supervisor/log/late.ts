/** The scripts and the sheet that LOG waits for: whoever never opens it does not fetch them. */
import { late } from "../../../late";
import { sheet } from "../../../late_sheet";
import look from "./log.css?url";

export const libraries = late(async () => {
  const [script] = await Promise.all([import("./libraries"), sheet(look)]);
  return script;
});

/** What LOG takes of libraries, for whoever is shown once they are here. */
export function library(): typeof import("./libraries") {
  const script = libraries.script.value;
  if (!script) throw new Error("asked for the log's libraries before they were here");
  return script;
}
