/** For the tests of the words: files of a made-up house, what comes of them, and their modules loaded. */
import { mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import ts from "typescript";
import { make } from "./make.mjs";

export const BOTH = { english: { folder: "en" }, spanish: { folder: "es" } };

type Languages = Parameters<typeof make>[0]["languages"];

/** The folder of words with these files in it, named from there: en/pages/a.ftl. */
export function folder(files: Record<string, string>): string {
  const words = mkdtempSync(join(tmpdir(), "words-"));
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(words, name)), { recursive: true });
    writeFileSync(join(words, name), text);
  }
  return words;
}

/** What is wrong with these files, a line each; empty when they can be used. */
export function faults(files: Record<string, string>, languages: Languages = BOTH): string[] {
  const words = folder(files);
  try {
    make({ words, languages, out: join(words, "out") });
    return [];
  } catch (error) {
    return String(error).split("\n").slice(1);
  }
}

/** The modules that are made of a folder of words: each one's text, and each loaded as it is asked for. */
export function made(words: string, languages: Languages = BOTH) {
  const out = join(words, "out");
  make({ words, languages, out });
  const text = (name: string) => readFileSync(join(out, `${name}.ts`), "utf8");
  const load = (name: string): Promise<Record<string, unknown>> => {
    const script = ts.transpile(text(name), { module: ts.ModuleKind.ESNext, target: ts.ScriptTarget.ES2020 });
    return import(/* @vite-ignore */ `data:text/javascript,${encodeURIComponent(script)}`);
  };
  return { text, load };
}
