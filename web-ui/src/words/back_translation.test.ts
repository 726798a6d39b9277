/** The table of safety texts read back from the Spanish: it may not go stale, nor leave a safety text out. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { es } from "./es";

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

/** Where the English of a Spanish text stands. */
function english(file: string): string {
  if (file.endsWith(".ftl")) return file.replace("/words/es/", "/words/en/");
  return file.replace(/([_./])es\.ts$/, "$1en.ts");
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
    const gone = rows.filter(
      ({ where, spanish, shown }) => !says(where, spanish) || !says(english(where), shown),
    );
    expect(gone.map(({ where, spanish, shown }) => `${where}: ${spanish} (${shown})`)).toEqual([]);
  });

  it("are all there: what stops, calls, warns, holds, frees or returns", () => {
    const { struck, cant, ways, quick, states, endings, cuts, crew } = es;
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
      [struck.asks, cant, es.cantStops, ways, quick, states, endings],
      [
        cuts.also,
        cuts.leave,
        cuts.leaveDo,
        cuts.away,
        cuts.spot,
        cuts.depthUnknown,
        cuts.tooNear,
        cuts.labels,
      ],
      [crew.near, crew.zones, crew.agree, crew.start.signals],
    ];
    expect(groups.flatMap(texts).filter((text) => !read.has(text))).toEqual([]);
    // Those into which names are put, by their source.
    const way = source("web-ui/src/words/way_in.es.ts");
    const templates = [...way.matchAll(/=> `(.*)`,$/gm)].map(([, text]) => text ?? "");
    expect(templates.length).toBeGreaterThan(10);
    expect(templates.filter((text) => !read.has(text))).toEqual([]);
  });

  it("leave out no hold of the hub", () => {
    const held = source("hub/words/es/hub/held.ftl");
    const spanish = [...held.matchAll(/^[a-z_]+ = (.*)$/gm)].map(([, text]) => text ?? "");
    expect(spanish.length).toBeGreaterThan(7);
    expect(spanish.filter((text) => !read.has(text))).toEqual([]);
  });
});
