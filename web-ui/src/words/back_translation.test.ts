/** The table of safety texts read back from the Spanish: it may not go stale, nor leave a safety text out. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "../../fluent/parse.mjs";
import { words as firstSpanish } from "../words.gen/es";
import { whole } from "../words_later";

const es = whole(firstSpanish, "spanish");

type Pattern = ReturnType<typeof parse>["messages"][number]["pattern"];

const TABLE = readFileSync("../fixtures/words/back-translation.csv", "utf8");

/** The cells of a table in CSV, its first line a remark and its second the heads. */
function cells(table: string): string[][] {
  const body = table.split("\n").slice(1).join("\n");
  const rows: string[][] = [[]];
  for (const [, quoted, bare, end] of body.matchAll(/(?:"((?:[^"]|"")*)"|([^,\n"]*))(,|\n|$)/g)) {
    rows.at(-1)?.push(quoted?.replaceAll('""', '"') ?? bare ?? "");
    if (end === "\n") rows.push([]);
    if (end === "") break;
  }
  return rows.slice(1).filter((row) => row.length > 1);
}

/** A source as its sentences are read: those that go on over a line in one piece. */
const sources = new Map<string, string>();
function source(file: string): string {
  const known = sources.get(file);
  if (known !== undefined) return known;
  const read = readFileSync(`../${file}`, "utf8").replace(/\\\n\s*/g, "");
  sources.set(file, read);
  return read;
}

/** Everything that a pattern can say, one text for each way through its branches, in the order of the branches. */
function ways(pattern: Pattern): string[] {
  return pattern.reduce<string[]>(
    (before, part) => {
      const next =
        typeof part === "string"
          ? [part]
          : "variable" in part
            ? [`{ $${part.variable} }`]
            : part.branches.flatMap((branch) => ways(branch.pattern));
      return before.flatMap((text) => next.map((more) => text + more));
    },
    [""],
  );
}

/** The messages of a Fluent file, each with all that it can say. */
const messages = new Map<string, Map<string, string[]>>();
function fluent(file: string): Map<string, string[]> {
  const known = messages.get(file);
  if (known) return known;
  const read = new Map(parse(source(file)).messages.map(({ id, pattern }) => [id, ways(pattern)]));
  messages.set(file, read);
  return read;
}

/** Where the English of a Spanish text stands. */
function english(file: string): string {
  if (file.endsWith(".ftl")) return file.replace("/words/es/", "/words/en/");
  return file;
}

/** Whether a file says both: in Fluent the Spanish by a message of the same name as the English. */
function stands(where: string, spanish: string, shown: string): boolean {
  if (!where.endsWith(".ftl")) return says(where, spanish) && says(english(where), shown);
  return [...fluent(where)].some(
    ([id, texts]) => texts.includes(spanish) && fluent(english(where)).get(id)?.includes(shown),
  );
}

const says = (file: string, text: string) =>
  file.endsWith(".ftl")
    ? source(file)
        .replace(/\{ "([^"]*)" \}/g, "$1")
        .includes(text)
    : ['"', "`"].some((mark) => source(file).includes(`${mark}${text}${mark}`));

const rows = cells(TABLE).map(([where, spanish, back, shown, same, mended]) => ({
  where: where ?? "",
  spanish: spanish ?? "",
  back: back ?? "",
  shown: shown ?? "",
  same: same ?? "",
  mended: mended ?? "",
}));
const read = new Set(rows.map((row) => row.spanish));

/** Every text of a group that stands as it is, without a name to be put into it. */
function texts(group: unknown): string[] {
  if (typeof group === "string") return [group];
  return typeof group === "object" && group ? Object.values(group).flatMap(texts) : [];
}

describe("the safety texts read back from the Spanish", () => {
  it("have their rows, each with what it reads as and whether that is the same", () => {
    expect(rows.length).toBeGreaterThan(400);
    for (const row of rows) {
      expect(row.back, row.spanish).not.toBe("");
      expect(["yes", "mended"], row.spanish).toContain(row.same);
      expect(row.mended !== "", row.spanish).toBe(row.same === "mended");
    }
  });

  it("still stand in the sources, in both languages: a text that changes is read back again", () => {
    const gone = rows.filter(({ where, spanish, shown }) => !stands(where, spanish, shown));
    expect(gone.map(({ where, spanish, shown }) => `${where}: ${spanish} (${shown})`)).toEqual([]);
  });

  it("are all there: what stops, calls, warns, holds, frees or returns", () => {
    const { struck, cant, ways, quick, states, endings, cuts, crew } = es;
    // What holds a call back; the others of the group say why there is none to hold.
    const { no_target, no_machine, set_up_in_doubt, set_up_closed, query_open, ...held } = es.spot;
    const groups = [
      es.wayIn,
      [es.stop, es.stopAll, es.stopLift, es.bucketDown, es.look, es.lookAlways, es.caution, es.cautionShort],
      [
        es.old,
        es.noCall,
        es.noLink,
        es.noLinkDo,
        es.haltedTitle,
        es.halted,
        es.newTargetOld,
        es.high,
        es.low,
      ],
      [struck.asks, cant, es.cantStops, ways, quick, states, endings, es.ended, es.endedDo, es.heldShort],
      [cuts.also, cuts.leave, cuts.leaveDo, cuts.away, cuts.depthUnknown, cuts.tooNear],
      [es.labels.hand_dig, es.labels.face_not_inspected, held],
      [crew.near, crew.zones, crew.agree, crew.start.signals],
    ];
    expect(groups.flatMap(texts).filter((text) => !read.has(text))).toEqual([]);
    // Those into which names are put, by their source.
    const way = [...fluent("hub/words/es/pages/way_in.ftl").values()].flat();
    expect(way.length).toBeGreaterThan(50);
    expect(way.filter((text) => !read.has(text))).toEqual([]);
  });

  it("leave out no hold of the hub", () => {
    const held = source("hub/words/es/hub/held.ftl");
    const spanish = [...held.matchAll(/^[a-z_]+ = (.*)$/gm)].map(([, text]) => text ?? "");
    expect(spanish.length).toBeGreaterThan(7);
    expect(spanish.filter((text) => !read.has(text))).toEqual([]);
  });
});
