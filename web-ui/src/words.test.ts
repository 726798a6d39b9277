/** What the pages may say, and may never say. */
import { describe, expect, it } from "vitest";
import { en } from "./words/en";
import { es } from "./words/es";
import { officeEn } from "./words/office/en";
import { officeEs } from "./words/office/es";
import { sumsEn } from "./words/sums/en";
import { sumsEs } from "./words/sums/es";
import { visitEn } from "./words/visit/en";
import { visitEs } from "./words/visit/es";

const english = [
  ...sentences(en),
  ...sentences(officeEn, "office"),
  ...sentences(visitEn, "visit"),
  ...sentences(sumsEn, "sums"),
];
const spanish = [
  ...sentences(es),
  ...sentences(officeEs, "office"),
  ...sentences(visitEs, "visit"),
  ...sentences(sumsEs, "sums"),
];

/** Every sentence of a dictionary, functions called with placeholders. */
function sentences(words: unknown, path = ""): [string, string][] {
  if (typeof words === "string") return [[path, words]];
  if (typeof words === "function") return [[path, String(words("X", "Y", "Z"))]];
  return Object.entries(words as object).flatMap(([key, value]) => sentences(value, `${path}.${key}`));
}

describe("the dictionaries", () => {
  it("have the same keys and no empty word", () => {
    expect(spanish.map(([path]) => path)).toEqual(english.map(([path]) => path));
    for (const [path, text] of [...english, ...spanish]) expect(text.trim(), path).not.toBe("");
  });

  it("never say that anything is safe or clear", () => {
    for (const [path, text] of english) expect(text, path).not.toMatch(/\b(safe|clear)\b/i);
    for (const [path, text] of spanish)
      expect(text, path).not.toMatch(/\b(segur[oa]s?|despejad[oa]s?|libre)\b/i);
  });

  it("give no word of a call two meanings", () => {
    for (const words of [en, es]) {
      const said = [...Object.values(words.ways), words.stop, words.high, words.low, words.quick.too_deep];
      expect(new Set(said).size).toBe(said.length);
    }
  });
});
