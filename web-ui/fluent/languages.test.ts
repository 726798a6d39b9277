/** Another language is a folder and one line in a list: tried with one that is made of the English, accented and longer. */
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { FluentParser, FluentSerializer, type TextElement, Transformer } from "@fluent/syntax";
import { describe, expect, it } from "vitest";
import list from "../src/languages.json";
import { made } from "./given";

const WORDS = "../hub/words";
const ACCENTS: Record<string, string> = {
  a: "á",
  e: "é",
  i: "í",
  o: "ó",
  u: "ú",
  A: "Á",
  E: "É",
  I: "Í",
  O: "Ó",
  U: "Ú",
  n: "ñ",
  N: "Ñ",
};

const accented = (text: string) => text.replace(/[aeiounAEIOUN]/g, (letter) => ACCENTS[letter] ?? letter);

/** At least 40 % longer, and nothing that a Fluent file reads otherwise. */
const longer = (text: string) => accented(text) + "~".repeat(Math.ceil(text.trim().length * 0.4));

class Longer extends Transformer {
  visitTextElement(node: TextElement) {
    const [, before = "", text = "", after = ""] = /^(\s*)([\s\S]*?)(\s*)$/.exec(node.value) ?? [];
    node.value = before + (text ? longer(text) : "") + after;
    return node;
  }
}

/** A copy of all words, with a folder more that is made of the English one. */
function withAnother(): string {
  const words = mkdtempSync(join(tmpdir(), "words-"));
  for (const { folder } of Object.values(list))
    cpSync(join(WORDS, folder, "pages"), join(words, folder, "pages"), { recursive: true });
  mkdirSync(join(words, "fr/pages"), { recursive: true });
  for (const file of readdirSync(join(WORDS, "en/pages"))) {
    const tree = new FluentParser({ withSpans: false }).parse(
      readFileSync(join(WORDS, "en/pages", file), "utf8"),
    );
    new Longer().visit(tree);
    writeFileSync(join(words, "fr/pages", file), new FluentSerializer({ withJunk: false }).serialize(tree));
  }
  return words;
}

/** Every sentence of a dictionary by its path, functions called as the pages may call them. */
function sentences(words: unknown, path: string): [string, string][] {
  if (typeof words === "string") return [[path, words]];
  if (typeof words === "function") return [[path, String(words(3, 3, 3, 3, 3))]];
  return Object.entries(words as object).flatMap(([key, value]) => sentences(value, `${path}.${key}`));
}

describe("a language more", () => {
  const all = { ...list, another: { folder: "fr" } };
  const { text, load } = made(withAnother(), all);

  it("has every word of the pages, in a script of its own", async () => {
    expect(text("scripts")).toContain('another: async () => (await import("./fr")).words');
    const english = sentences((await load("en")).words, "t");
    const another = sentences((await load("fr")).words, "t");
    expect(english.length).toBeGreaterThan(400);
    expect(another.map(([path]) => path)).toEqual(english.map(([path]) => path));
    for (const [i, [path, said]] of another.entries()) {
      const [, plain] = english[i] ?? ["", ""];
      const letters = plain.replace(/3/g, "").trim();
      if (!letters) continue;
      expect(said.length, path).toBeGreaterThanOrEqual(plain.length + Math.floor(letters.length * 0.3));
      expect(said.replace(/~/g, ""), path).toBe(accented(plain));
    }
  });

  it.each(["later", "office", "control", "left", "photo", "sums", "visit", "work"])(
    "has the words of %s that come late",
    async (script) => {
      const words = (await load(script))[script] as Record<string, unknown>;
      const english = sentences(words.english, script);
      const another = sentences(words.another, script);
      expect(another.map(([path]) => path)).toEqual(english.map(([path]) => path));
      for (const [i, [path, said]] of another.entries())
        expect(said.replace(/~/g, ""), path).toBe(accented(english[i]?.[1] ?? ""));
    },
  );

  it("changes nothing of the languages that there are", async () => {
    const without = made(withAnother(), list);
    const folders = Object.values(list).map(({ folder }) => folder);
    for (const module of [...folders, "shape"]) expect(without.text(module)).toBe(text(module));
  });
});
