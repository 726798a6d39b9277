/** From hub/words/<language>/pages/*.ftl to src/words.gen: read, held against English, written. By itself: `node fluent/make.mjs`. */
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { checkEnglish, checkOther, parameters } from "./check.mjs";
import { parse } from "./parse.mjs";
import { literal, shape } from "./write.mjs";

/** @import { Reference } from "./check.mjs" */
/** @import { Message } from "./parse.mjs" */
/** @import { Leaf, Tree } from "./write.mjs" */

/** @typedef {Record<string, { folder: string }>} Languages */
/** @typedef {{ words: string, languages: Languages, out: string }} Where */

/** The words that every page fetches first; others come with the script that shows them. */
const FIRST = "t";
/** What the first line of an English file says: whose words they are, and below which of their names. */
const HEAD = /^([a-z]\w*)\(\)(?:\.([A-Za-z]\w*))?$/;
/** A section of an English file that begins like this comes with another script: ## later() */
const SECTION = /^([a-z]\w*)\(\)$/;
const DO_NOT_EDIT = "Made from hub/words by fluent/make.mjs; never edited.";

/** @param {string} root the folder of the pages */
export function here(root) {
  return {
    words: join(root, "../hub/words"),
    languages: JSON.parse(readFileSync(join(root, "src/languages.json"), "utf8")),
    out: join(root, "src/words.gen"),
  };
}

/**
 * Writes the modules of all words; every fault of every language in one error.
 * @param {Where} where
 */
export function make({ words, languages, out }) {
  const [reference] = Object.keys(languages);
  if (!reference) throw new Error("src/languages.json names no language");
  /** @type {string[]} */
  const faults = [];
  const read = Object.fromEntries(
    Object.entries(languages).map(([language, { folder }]) => [language, readFolder(words, folder, faults)]),
  );
  const scripts = tree(read, reference, languages, faults);
  if (faults.length) throw new Error(`The words can't be used as they stand:\n${faults.join("\n")}`);
  write(scripts, languages, out);
}

/**
 * @typedef {{ file: string, place: (line: number) => string, head: string, messages: Message[] }} File
 * @param {string} words
 * @param {string} folder
 * @param {string[]} faults
 * @returns {Map<string, File>}
 */
function readFolder(words, folder, faults) {
  const pages = join(words, folder, "pages");
  const names = readdirSync(pages)
    .filter((name) => name.endsWith(".ftl"))
    .sort();
  return new Map(
    names.map((file) => {
      const place = (/** @type {number} */ line) => `hub/words/${folder}/pages/${file}:${line}`;
      const parsed = parse(readFileSync(join(pages, file), "utf8"));
      faults.push(...parsed.faults.map(({ line, what }) => `${place(line)}: ${what}`));
      return [file, { file, place, head: parsed.head, messages: parsed.messages }];
    }),
  );
}

/**
 * The words by script, then by the levels of their names.
 * @param {Record<string, Map<string, File>>} read
 * @param {string} reference
 * @param {Languages} languages
 * @param {string[]} faults
 */
function tree(read, reference, languages, faults) {
  /** @type {Map<string, Tree>} */
  const scripts = new Map();
  for (const file of read[reference]?.values() ?? []) {
    const [, script, top] = HEAD.exec(file.head.split("\n")[0] ?? "") ?? [];
    if (!script) {
      faults.push(
        `${file.place(1)}: say on the first line whose words they are: ### t(), ### t().cuts, ### office()`,
      );
      continue;
    }
    for (const leaf of leaves(file, read, reference, languages, faults)) {
      const [, other] = SECTION.exec(leaf.english.section.split("\n")[0] ?? "") ?? [];
      const root = scripts.get(other ?? script) ?? new Map();
      scripts.set(other ?? script, root);
      plant(root, [...(top ? [top] : []), ...leaf.english.id.split("-")], leaf, faults);
    }
  }
  for (const [language, files] of Object.entries(read)) {
    if (language === reference) continue;
    for (const file of files.values()) {
      const english = read[reference]?.get(file.file);
      if (!english)
        faults.push(
          `${file.place(1)}: there is no English file of this name: move its messages to one that there is`,
        );
      for (const { id, line } of file.messages)
        if (english && !english.messages.some((one) => one.id === id))
          faults.push(
            `${file.place(line)}: ${id} is not in ${english.place(1).replace(/:1$/, "")}: take it out, or mend its name`,
          );
    }
  }
  return scripts;
}

/**
 * @param {File} file
 * @param {Record<string, Map<string, File>>} read
 * @param {string} reference
 * @param {Languages} languages
 * @param {string[]} faults
 * @returns {Leaf[]}
 */
function leaves(file, read, reference, languages, faults) {
  return file.messages.map((message) => {
    /** @type {import("./parse.mjs").Fault[]} */
    const own = [];
    /** @type {Reference} */
    const english = { ...message, parameters: parameters(message, own) };
    checkEnglish(english, languages[reference]?.folder ?? "en", own);
    faults.push(...own.map(({ line, what }) => `${file.place(line)}: ${what}`));
    /** @type {Leaf} */
    const leaf = { english, place: file.place(message.line), patterns: { [reference]: message.pattern } };
    for (const [language, files] of Object.entries(read)) {
      if (language === reference) continue;
      const twin = files.get(file.file);
      const said = twin?.messages.find((one) => one.id === message.id);
      if (!twin || !said) {
        const last = twin?.messages.at(-1)?.line ?? 1;
        const place = twin
          ? twin.place(last)
          : `hub/words/${languages[language]?.folder}/pages/${file.file}:1`;
        faults.push(`${place}: ${message.id} is missing, which ${leaf.place} has`);
        continue;
      }
      /** @type {import("./parse.mjs").Fault[]} */
      const found = [];
      checkOther(english, said, languages[language]?.folder ?? "", found);
      faults.push(...found.map(({ line, what }) => `${twin.place(line)}: ${what}`));
      leaf.patterns[language] = said.pattern;
    }
    return leaf;
  });
}

/**
 * @param {Tree} root
 * @param {string[]} path
 * @param {Leaf} leaf
 * @param {string[]} faults
 */
function plant(root, path, leaf, faults) {
  let at = root;
  for (const level of path.slice(0, -1)) {
    const next = at.get(level) ?? new Map();
    if (!(next instanceof Map)) {
      faults.push(`${leaf.place}: ${level} is a text already (${next.place}): it can't be a group as well`);
      return;
    }
    at.set(level, next);
    at = next;
  }
  const last = path.at(-1) ?? "";
  const there = at.get(last);
  if (there)
    faults.push(
      `${leaf.place}: ${path.join(".")} is there already${there instanceof Map ? " as a group" : ` (${there.place})`}`,
    );
  else at.set(last, leaf);
}

/** @param {string} script */
const nameOf = (script) =>
  script === FIRST ? "Words" : `${script[0]?.toUpperCase()}${script.slice(1)}Words`;

/**
 * @param {Map<string, Tree>} scripts
 * @param {Languages} languages
 * @param {string} out
 */
function write(scripts, languages, out) {
  /** @type {Map<string, string>} */
  const files = new Map();
  const all = Object.entries(languages);
  const imports = `import type { Language } from "../wire";\n`;
  files.set(
    "shape.ts",
    [...scripts].map(([script, tree]) => `export interface ${nameOf(script)} ${shape(tree)}\n`).join("\n"),
  );
  for (const [script, tree] of scripts) {
    const name = nameOf(script);
    if (script === FIRST) {
      for (const [language, { folder }] of all)
        files.set(
          `${folder}.ts`,
          `import type { ${name} } from "./shape";\n\nexport const words: ${name} = ${literal(tree, language, folder)};\n`,
        );
      const rows = all.map(
        ([language, { folder }]) => `  ${language}: async () => (await import("./${folder}")).words,\n`,
      );
      files.set(
        "scripts.ts",
        `${imports}import type { ${name} } from "./shape";\n\nexport const scripts: Record<Language, () => Promise<${name}>> = {\n${rows.join("")}};\n`,
      );
    } else {
      const rows = all.map(
        ([language, { folder }]) => `  ${language}: ${literal(tree, language, folder, "  ")},\n`,
      );
      files.set(
        `${script}.ts`,
        `${imports}import type { ${name} } from "./shape";\n\nexport const ${script}: Record<Language, ${name}> = {\n${rows.join("")}};\n`,
      );
    }
  }
  mkdirSync(out, { recursive: true });
  for (const name of readdirSync(out)) if (!files.has(name)) rmSync(join(out, name), { recursive: true });
  for (const [name, text] of files) {
    const counts = text.includes("counts(") ? COUNTS : "";
    const whole = `/** ${DO_NOT_EDIT} */\n${counts}${text}`;
    // What has not changed stays untouched, so that nothing is built or loaded again for it.
    if (readOr(join(out, name)) !== whole) writeFileSync(join(out, name), whole);
  }
}

/** How a language counts, where it is not simply one or more. */
const COUNTS = "const counts = (tag: string, n: number) => new Intl.PluralRules(tag).select(n);\n";

/** @param {string} path */
function readOr(path) {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return "";
  }
}

/**
 * Vite makes the words before anything asks for them, and again when a file of them changes.
 * @returns {import("vite").Plugin}
 */
export function fluentWords() {
  let root = "";
  return {
    name: "fluent-words",
    config(config) {
      root = config.root ?? process.cwd();
      make(here(root));
    },
    configureServer(server) {
      const { words } = here(root);
      server.watcher.add(words);
      server.watcher.on("all", (_event, path) => {
        if (!path.endsWith(".ftl")) return;
        try {
          make(here(root));
        } catch (error) {
          server.config.logger.error(String(error));
        }
      });
    },
  };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    make(here(join(dirname(fileURLToPath(import.meta.url)), "..")));
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
