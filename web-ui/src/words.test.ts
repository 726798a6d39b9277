/** What the pages may say, and may never say. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { LANGUAGES, languages } from "./languages";
import type { Language } from "./wire";
import { control } from "./words.gen/control";
import { later } from "./words.gen/later";
import { left } from "./words.gen/left";
import { office } from "./words.gen/office";
import { photo } from "./words.gen/photo";
import { scripts } from "./words.gen/scripts";
import type { Words } from "./words.gen/shape";
import { sums } from "./words.gen/sums";
import { visit } from "./words.gen/visit";
import { work } from "./words.gen/work";

const LATE = { control, later, left, office, photo, sums, visit, work };

/** What a crew's pages say first, in every language. */
const FIRST: [Language, Words][] = await Promise.all(
  LANGUAGES.map(async (language): Promise<[Language, Words]> => [language, await scripts[language]()]),
);

/** Every sentence of every language, whichever script it comes with, by its path. */
const ALL = FIRST.map(([language, first]): [Language, [string, string][]] => [
  language,
  [
    ...sentences(first),
    ...Object.entries(LATE).flatMap(([script, words]) => sentences(words[language], script)),
  ],
]);
const [[, english] = ["english", []]] = ALL;
const each = ALL.flatMap(([language, said]) => said.map(([path, text]) => ({ language, path, text })));

/** Words that would tell somebody that there is no danger. */
const PROMISES: Record<Language, RegExp> = {
  english: /\b(safe|clear)\b/i,
  spanish: /\b(segur[oa]s?|despejad[oa]s?|libre)\b/i,
  portuguese: /\b(segur[oa]s?|livres?|liberad[oa]s?|desimpedid[oa]s?|sem perigo)\b/i,
};

/** Words that name the cab he or him. */
const HIM: Record<Language, RegExp> = {
  english: /\b(he|him|his)\b/i,
  spanish: /(?<![\p{L}])él(?![\p{L}])/iu,
  portuguese: /operador\b.*\b(ele|dele|nele)\b/i,
};

/** Words of another language that are left in a sentence; *face* is Portuguese too. */
const FOREIGN: Record<Language, RegExp> = {
  english: /\b(el|los|las|del|para|que|com|não|está)\b/i,
  spanish:
    /\b(the|and|with|away|shoot|face|read|press|look|bucket|ground|engineer|mark|rod|thumbnail|não|você|celular|uma|caçamba)\b/i,
  portuguese:
    /\b(the|and|with|away|shoot|read|press|look|bucket|ground|engineer|mark|rod|thumbnail|el|los|las|del|una|otra|otro|usted|pies|estadal|cucharón|puesta|teléfono|hondo|hasta)\b/i,
};

/** What a crew reads otherwise than it is meant, and how. */
const MISREAD: Record<Language, [RegExp, string][]> = {
  english: [[/may be used|look, then release/i, "that a thing may be used"]],
  spanish: [
    [/dej(en|ar|e|ó) el talud|\bDEJAR?\b$/i, "leave the face alone, where get away from it is meant"],
    [/(?<!LÁSER MUY )\bBAJO\b/, "BAJE, go down, where the ground is too deep"],
    [/\bABAJO\b(?<!CUCHARÓN ABAJO)/, "go down, where the ground is too deep"],
    [/solt(ar|ó)|suelte\b|se suelta/i, "let go of the key, where it is to be held"],
    [/QUEDE A \S+ (PIES|ft)/i, "stay so far away, where no nearer than that is meant"],
    [
      /^ALTO (?!POR REGLA)|\bALTO (en|sigue|funciona|no está)|apret\S+ ALTO|LEVANTAR ALTO/,
      "STOP, which is PARE; ALTO is the ground",
    ],
    [/oprim|presion[ae]/i, "to press, with another verb than APRIETE"],
  ],
  portuguese: [
    [/deix(ar|e|em|ou) o talude/i, "leave the face alone, where get away from it is meant"],
    [
      /(?<!LASER )\bBAIX[AEO]\b/,
      "go down, where the ground is too deep; the call is DESÇA, the ground FUNDO",
    ],
    [/\bsolt(ar|e|em)\b/i, "let go of the key, where it is to be held"],
    [/FIQUE A \S+ (PÉS|ft)/i, "stay so far away, where no nearer than that is meant"],
    [
      /^ALTO (?!POR REGRA)|\bALTO (em|continua|funciona|não está)|apert\S+ ALTO|LEVANTAR ALTO/,
      "STOP, which is PARE; ALTO is the ground",
    ],
    [/pression[ae]|carregue/i, "to press, with another verb than APERTE"],
  ],
};

/** Every sentence of a dictionary, functions called with placeholders, or with a number for each. */
function sentences(words: unknown, path = "", number?: number): [string, string][] {
  if (typeof words === "string") return [[path, words]];
  const placed = number === undefined ? ["X", "Y", "Z"] : Array.from({ length: 6 }, () => number);
  if (typeof words === "function") return [[path, String(words(...placed))]];
  return Object.entries(words as object).flatMap(([key, value]) =>
    sentences(value, `${path}.${key}`, number),
  );
}

describe("the dictionaries", () => {
  it("have the same keys and no empty word", () => {
    for (const [language, said] of ALL)
      expect(
        said.map(([path]) => path),
        language,
      ).toEqual(english.map(([path]) => path));
    for (const { language, path, text } of each) expect(text.trim(), `${language} ${path}`).not.toBe("");
  });

  it("never say that anything is safe or clear", () => {
    for (const { language, path, text } of each) expect(text, path).not.toMatch(PROMISES[language]);
  });

  it("give no word of a call two meanings", () => {
    for (const [, words] of FIRST) {
      const said = [...Object.values(words.ways), words.stop, words.high, words.low, words.quick.too_deep];
      expect(new Set(said).size).toBe(said.length);
    }
  });

  it("say before a reading is sent what the hub will call, in its very words", () => {
    for (const [language, words] of FIRST) {
      const hub = readFileSync(`../hub/words/${languages[language].folder}/hub/call.ftl`, "utf8");
      const { down, shave, grade, up, wait } = words.ways;
      const called = { "word-down": down, "word-shave": shave, "word-grade": grade, "word-up": up };
      const units = { "unit-feet": words.feetWord, "unit-inches": words.inchWord };
      for (const [id, word] of Object.entries({ ...called, ...units, "word-wait": wait }))
        expect(hub, language).toContain(`\n${id} = ${word}\n`);
    }
  });

  it("never name the cab he or him", () => {
    for (const { language, path, text } of each) expect(text, path).not.toMatch(HIM[language]);
  });

  it("say nothing that reads as something else, nor press a key with two verbs", () => {
    for (const { language, path, text } of each)
      for (const [reads, as] of MISREAD[language]) expect(text, `${path}: ${as}`).not.toMatch(reads);
  });

  it("give no hand signal the word of a call, and no key the word of another", () => {
    for (const [, words] of FIRST) {
      const { lower, raise } = words.crew.start.signals;
      const { release, bucketDown, inKey, outKey, notGoing, wait, no } = words.wayIn;
      const calls: string[] = [...Object.values(words.ways), words.high, words.low];
      for (const signal of [lower, raise]) expect(calls).not.toContain(signal);
      const keys = [release, bucketDown, inKey, outKey, notGoing, wait, no, words.cuts.away, words.withdraw];
      expect(new Set(keys).size).toBe(keys.length);
    }
  });

  it("count none as none: a language that has one form for 0 and 1 does not write a 1 for both", () => {
    const ones = (text: string) => text.match(/(?<![\d.])1(?![\d.])/g)?.length ?? 0;
    for (const [language, first] of FIRST)
      for (const words of [first, ...Object.values(LATE).map((late) => late[language])]) {
        const [none, seven] = [sentences(words, "", 0), sentences(words, "", 7)];
        for (const [i, [path, text]] of none.entries())
          expect(ones(text), `${language} ${path}: ${text}`).toBe(ones(seven[i]?.[1] ?? ""));
      }
  });

  it("leave no word of another language in a sentence", () => {
    for (const { language, path, text } of each) expect(text, path).not.toMatch(FOREIGN[language]);
  });
});
