/** CAUTIONS.md and the pages: each caution's words are the page's, in every language, and each page named shows them. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { LANGUAGES } from "../languages";
import { words as firstEnglish } from "../words.gen/en";
import { office } from "../words.gen/office";
import { scripts } from "../words.gen/scripts";
import { whole } from "../words_later";

const en = whole(firstEnglish, "english");

const rows = readFileSync("../hub/CAUTIONS.md", "utf8")
  .split("\n")
  .filter((line) => line.startsWith("| ") && line.includes("`"))
  .map((line) => line.split("|").map((cell) => cell.trim()))
  .map(([, caution, where, key, files]) => ({
    caution: caution ?? "",
    where: where ?? "",
    key: (key ?? "").replace(/`/g, ""),
    files: [...(files ?? "").matchAll(/`([^`]+)`/g)].map((one) => one[1] ?? ""),
  }));

/** What stands under a path in a dictionary; the office's words over the crew's. */
function at(dictionaries: readonly object[], path: string): unknown {
  for (const dictionary of dictionaries) {
    const found = path
      .split(".")
      .reduce<unknown>((here, key) => (here as Record<string, unknown> | undefined)?.[key], dictionary);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** One text, or all of a group. */
function texts(found: unknown): string[] {
  if (typeof found === "string") return [found];
  return typeof found === "object" && found ? Object.values(found).flatMap(texts) : [];
}

const plain = (text: string) =>
  text
    .toLowerCase()
    .replace(/[.:;,]/g, "")
    .trim();

describe("CAUTIONS.md", () => {
  it("has its rows", () => {
    expect(rows.length).toBeGreaterThan(10);
  });

  for (const { caution, where, key, files } of rows) {
    it(`${key}: the page says it, in every language`, async () => {
      const english = texts(at([office.english, en], key));
      expect(english.some((text) => plain(text).includes(plain(caution)))).toBe(true);
      for (const language of LANGUAGES.filter((one) => one !== "english")) {
        const other = texts(at([office[language], whole(await scripts[language](), language)], key));
        expect(other, language).toHaveLength(english.length);
        for (const [i, text] of other.entries()) expect(text, language).not.toBe(english[i]);
      }
      expect(where).not.toBe("");
    });

    it(`${key}: every page that is named shows it`, () => {
      expect(files.length).toBeGreaterThan(0);
      const parts = key.split(".");
      const last = parts.at(-1) ?? "";
      const group = parts.at(-2) ?? "";
      for (const file of files) {
        const source = readFileSync(`src/${file}`, "utf8");
        // By its own name, or as one of its group: words.also[one.what].
        const shown = source.includes(`.${last}`) || source.includes(`${group}[`);
        expect(shown, `${file} does not show ${key}`).toBe(true);
      }
    });
  }

  it("leaves out no page that shows one of them by a name of its own", () => {
    const pages = readdirSync("src", { recursive: true, encoding: "utf8" }).filter((file) =>
      file.endsWith(".tsx"),
    );
    for (const name of ["lookAlways", "oneCallFirst", "asLastSaid", "onlyLowers", "engineerTitle"]) {
      const row = rows.find((one) => one.key.endsWith(name));
      const show = pages.filter((file) => readFileSync(`src/${file}`, "utf8").includes(`.${name}`));
      expect([...(row?.files ?? [])].sort(), name).toEqual(show.sort());
    }
  });
});
