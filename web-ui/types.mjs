/** Writes src/wire.gen.ts from the hub's own description of the wire; with --check, fails when it has drifted. */
import { readFileSync, writeFileSync } from "node:fs";
import openapi, { astToString, UNKNOWN } from "openapi-typescript";

const source = new URL("../hub/server/openapi.json", import.meta.url);
const target = new URL("./src/wire.gen.ts", import.meta.url);
const head =
  "/** The wire as the hub describes it. Generated from hub/server/openapi.json by `npm run types`; never edited. */\n";

/** A thing without fields is nothing beside its kind: a type that forbids every field would forbid the kind as well. */
// What has a default may be left out by whoever says it.
const transform = (schema) =>
  schema.type === "object" && !schema.properties && !schema.additionalProperties ? UNKNOWN : undefined;

const made =
  head +
  astToString(
    await openapi(JSON.parse(readFileSync(source, "utf8")), { transform, defaultNonNullable: false }),
  );
if (!process.argv.includes("--check")) {
  writeFileSync(target, made);
} else if (readFileSync(target, "utf8") !== made) {
  console.error("src/wire.gen.ts is not what hub/server/openapi.json says. Run `npm run types` and commit.");
  process.exit(1);
}
