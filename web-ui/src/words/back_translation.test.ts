/** The tables of safety texts read back from each language: none may go stale, nor leave a safety text out. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "../../fluent/parse.mjs";
import { LANGUAGES, languages } from "../languages";
import { scripts } from "../words.gen/scripts";
import { whole } from "../words_later";

type Pattern = ReturnType<typeof parse>["messages"][number]["pattern"];

/** The table of a language: back-translation.pt.csv; that of Spanish was the first, and has no ending. */
const table = (folder: string) =>
  readFileSync(`../fixtures/words/back-translation${folder === "es" ? "" : `.${folder}`}.csv`, "utf8");

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

/** Where the English of a text stands. */
const english = (file: string) => file.replace(/\/words\/\w+\//, "/words/en/");

/** Whether the files say both, by messages of the same name. */
const stands = (where: string, said: string, shown: string) =>
  [...fluent(where)].some(
    ([id, texts]) => texts.includes(said) && fluent(english(where)).get(id)?.includes(shown),
  );

/** Every text of a group that stands as it is, without a name to be put into it. */
function texts(group: unknown): string[] {
  if (typeof group === "string") return [group];
  return typeof group === "object" && group ? Object.values(group).flatMap(texts) : [];
}

describe.each(LANGUAGES.slice(1))("the safety texts read back from %s", async (language) => {
  const { folder } = languages[language];
  const own = whole(await scripts[language](), language);
  const rows = cells(table(folder)).map(([where, said, back, shown, same, mended]) => ({
    where: where ?? "",
    said: said ?? "",
    back: back ?? "",
    shown: shown ?? "",
    same: same ?? "",
    mended: mended ?? "",
  }));
  const read = new Set(rows.map((row) => row.said));

  it("have their rows, each with what it reads as and whether that is the same", () => {
    expect(rows.length).toBeGreaterThan(400);
    for (const row of rows) {
      expect(row.back, row.said).not.toBe("");
      expect(["yes", "mended"], row.said).toContain(row.same);
      expect(row.mended !== "", row.said).toBe(row.same === "mended");
    }
  });

  it("still stand in the sources, in both languages: a text that changes is read back again", () => {
    const gone = rows.filter(({ where, said, shown }) => !stands(where, said, shown));
    expect(gone.map(({ where, said, shown }) => `${where}: ${said} (${shown})`)).toEqual([]);
  });

  it("are all there: what stops, calls, warns, holds, frees or returns", () => {
    const { struck, cant, ways, quick, states, endings, cuts, crew } = own;
    // What holds a call back; the others of the group say why there is none to hold.
    const { no_target, no_machine, set_up_in_doubt, set_up_closed, query_open, ...held } = own.spot;
    const groups = [
      own.wayIn,
      [
        own.stop,
        own.stopAll,
        own.stopLift,
        own.bucketDown,
        own.look,
        own.lookAlways,
        own.caution,
        own.cautionShort,
      ],
      [
        own.old,
        own.noCall,
        own.noLink,
        own.noLinkDo,
        own.haltedTitle,
        own.halted,
        own.newTargetOld,
        own.high,
        own.low,
      ],
      [struck.asks, cant, own.cantStops, ways, quick, states, endings, own.ended, own.endedDo, own.heldShort],
      [cuts.also, cuts.leave, cuts.leaveDo, cuts.away, cuts.depthUnknown, cuts.tooNear],
      [own.labels.hand_dig, own.labels.face_not_inspected, held],
      [crew.near, crew.zones, crew.agree, crew.start.signals],
    ];
    expect(groups.flatMap(texts).filter((text) => !read.has(text))).toEqual([]);
    // Those into which names are put, by their source.
    const way = [...fluent(`hub/words/${folder}/pages/way_in.ftl`).values()].flat();
    expect(way.length).toBeGreaterThan(50);
    expect(way.filter((text) => !read.has(text))).toEqual([]);
  });

  it("leave out no hold of the hub", () => {
    const held = source(`hub/words/${folder}/hub/held.ftl`);
    const said = [...held.matchAll(/^[a-z_]+ = (.*)$/gm)].map(([, text]) => text ?? "");
    expect(said.length).toBeGreaterThan(7);
    expect(said.filter((text) => !read.has(text))).toEqual([]);
  });
});
