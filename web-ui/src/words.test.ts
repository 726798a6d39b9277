/** What the pages may say, and may never say. */
import { describe, expect, it } from "vitest";
import type { Language } from "./wire";
import { control } from "./words.gen/control";
import { words as en } from "./words.gen/en";
import { words as es } from "./words.gen/es";
import { later } from "./words.gen/later";
import { left } from "./words.gen/left";
import { office } from "./words.gen/office";
import { photo } from "./words.gen/photo";
import { sums } from "./words.gen/sums";
import { visit } from "./words.gen/visit";
import { work } from "./words.gen/work";

const LATE = { control, later, left, office, photo, sums, visit, work };

/** Every sentence of a language, whichever script it comes with. */
const all = (language: Language, first: typeof en) => [
  ...sentences(first),
  ...Object.entries(LATE).flatMap(([script, words]) => sentences(words[language], script)),
];
const english = all("english", en);
const spanish = all("spanish", es);

/** What a crew reads otherwise than it is meant, and how. */
const MISREAD: [RegExp, string][] = [
  [/dej(en|ar|e|ó) el talud|\bDEJAR?\b$/i, "leave the face alone, where get away from it is meant"],
  [/(?<!LÁSER MUY )\bBAJO\b/, "BAJE, go down, where the ground is too deep"],
  [/\bABAJO\b(?<!CUCHARÓN ABAJO)/, "go down, where the ground is too deep"],
  [/solt(ar|ó)|suelte\b|se suelta/i, "let go of the key, where it is to be held"],
  [/QUEDE A \S+ (PIES|ft)/i, "stay so far away, where no nearer than that is meant"],
  [
    /^ALTO (?!POR REGLA)|\bALTO (en|sigue|funciona|no está)|apret\S+ ALTO|LEVANTAR ALTO/,
    "STOP, which is PARE; ALTO is the ground",
  ],
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

  it("never name the cab he or him, nor say that a thing may be used", () => {
    for (const [path, text] of english) {
      expect(text, path).not.toMatch(/\b(he|him|his)\b/i);
      expect(text, path).not.toMatch(/may be used|look, then release/i);
    }
    for (const [path, text] of spanish) expect(text, path).not.toMatch(/(?<![\p{L}])él(?![\p{L}])/iu);
  });

  it("say in Spanish nothing that reads as something else", () => {
    for (const [path, text] of spanish)
      for (const [reads, as] of MISREAD) expect(text, `${path}: ${as}`).not.toMatch(reads);
  });

  it("press every key with one verb in Spanish", () => {
    for (const [path, text] of spanish) expect(text, path).not.toMatch(/oprim|presion[ae]/i);
  });

  it("give no hand signal the word of a call, and no key the word of another", () => {
    for (const words of [en, es]) {
      const { lower, raise } = words.crew.start.signals;
      const { release, bucketDown, inKey, outKey, notGoing, wait, no } = words.wayIn;
      const calls: string[] = [...Object.values(words.ways), words.high, words.low];
      for (const signal of [lower, raise]) expect(calls).not.toContain(signal);
      const keys = [release, bucketDown, inKey, outKey, notGoing, wait, no, words.cuts.away, words.withdraw];
      expect(new Set(keys).size).toBe(keys.length);
    }
  });

  it("leave no English word in a Spanish sentence", () => {
    const foreign =
      /\b(the|and|with|away|shoot|face|read|press|look|bucket|ground|engineer|mark|rod|thumbnail)\b/i;
    for (const [path, text] of spanish) expect(text, path).not.toMatch(foreign);
  });
});
