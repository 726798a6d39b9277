/** Messages written as TypeScript: an interface that English gives, an object for each language, nothing left to parse. */
import { categories, choices, switches } from "./check.mjs";

/** @import { Choice, Parameter, Pattern } from "./parse.mjs" */
/** @import { Reference } from "./check.mjs" */

/**
 * A leaf of the tree of words: what English says it takes, and each language's pattern of it.
 * @typedef {{ english: Reference, place: string, patterns: Record<string, Pattern> }} Leaf
 * @typedef {Map<string, Leaf | Tree>} Tree
 */

const NAME = /^[A-Za-z_$][A-Za-z0-9_$]*$/;

/** @param {string} key */
const property = (key) => (NAME.test(key) ? key : JSON.stringify(key));

/**
 * Levels that are 1, 2, 3 are a list.
 * @param {Tree} tree
 */
const isList = (tree) => [...tree.keys()].every((key, i) => key === String(i + 1));

/**
 * @param {Tree} tree
 * @param {string} indent
 * @returns {string}
 */
export function shape(tree, indent = "") {
  const inner = `${indent}  `;
  if (isList(tree)) {
    const kinds = [...tree.values()].map((one) =>
      one instanceof Map ? shape(one, indent) : signature(one.english),
    );
    return `[${kinds.join(", ")}]`;
  }
  const rows = [...tree].map(([key, one]) =>
    one instanceof Map
      ? `${inner}${property(key)}: ${shape(one, inner)};\n`
      : `${inner}/** ${one.place} */\n${inner}${property(key)}: ${signature(one.english)};\n`,
  );
  return `{\n${rows.join("")}${indent}}`;
}

/** @param {Reference} english */
function signature(english) {
  if (!english.parameters.length) return "string";
  return `(${english.parameters.map((one) => `${argument(one.name)}: ${type(english, one)}`).join(", ")}) => string`;
}

/**
 * A text by which English chooses among names, and has no other, is one of those names.
 * @param {Reference} english
 * @param {Parameter} parameter
 */
function type(english, parameter) {
  if (parameter.type === "number") return "number";
  if (switches(english.pattern).has(parameter.name)) return "boolean";
  const choice = choices(english.pattern).find((one) => one.select === parameter.name);
  if (!choice || choice.branches.some((one) => one.key === "other")) return "string";
  return choice.branches.map((one) => JSON.stringify(one.key)).join(" | ");
}

/**
 * The words of one language, as a literal.
 * @param {Tree} tree
 * @param {string} language
 * @param {string} tag
 * @param {string} indent
 * @returns {string}
 */
export function literal(tree, language, tag, indent = "") {
  const inner = `${indent}  `;
  const list = isList(tree);
  const rows = [...tree].map(([key, one]) => {
    const value = one instanceof Map ? literal(one, language, tag, inner) : says(one, language, tag);
    return `${inner}${list ? "" : `${property(key)}: `}${value},\n`;
  });
  return list ? `[\n${rows.join("")}${indent}]` : `{\n${rows.join("")}${indent}}`;
}

/**
 * @param {Leaf} leaf
 * @param {string} language
 * @param {string} tag
 */
function says(leaf, language, tag) {
  const { parameters } = leaf.english;
  const pattern = leaf.patterns[language] ?? [];
  if (!parameters.length) return JSON.stringify(plain(pattern));
  const numbers = new Set(parameters.filter((one) => one.type === "number").map((one) => one.name));
  const how = { numbers, switches: switches(leaf.english.pattern), tag };
  return `(${parameters.map((one) => argument(one.name)).join(", ")}) => ${expression(pattern, how)}`;
}

/** @param {Pattern} pattern */
const plain = (pattern) => pattern.filter((part) => typeof part === "string").join("");

/** @typedef {{ numbers: Set<string>, switches: Set<string>, tag: string }} How */

/**
 * @param {Pattern} pattern
 * @param {How} how
 * @returns {string}
 */
function expression(pattern, how) {
  const [first] = pattern;
  if (pattern.every((part) => typeof part === "string")) return JSON.stringify(plain(pattern));
  if (pattern.length === 1 && typeof first === "object" && "select" in first) return choose(first, how);
  const said = pattern.map((part) => {
    if (typeof part === "string") return part.replace(/[\\`]|\$(?=\{)/g, "\\$&");
    return `\${${"variable" in part ? argument(part.variable) : choose(part, how)}}`;
  });
  return `\`${said.join("")}\``;
}

/**
 * @param {Choice} choice
 * @param {How} how
 */
function choose(choice, how) {
  const rest = choice.branches.find((one) => one.standard);
  // What is exactly so many comes before the category that holds it too.
  const others = choice.branches
    .filter((one) => one !== rest)
    .sort((a, b) => Number(b.numeric) - Number(a.numeric));
  const tests = others.map(
    (one) => `${condition(choice.select, one, how)} ? ${expression(one.pattern, how)} : `,
  );
  return `(${tests.join("")}${expression(rest?.pattern ?? [], how)})`;
}

/**
 * @param {string} name
 * @param {{ key: string, numeric: boolean }} branch
 * @param {How} how
 */
function condition(name, branch, how) {
  const value = argument(name);
  if (how.switches.has(name)) return branch.key === "true" ? value : `!${value}`;
  if (branch.numeric) return `${value} === ${branch.key}`;
  if (!how.numbers.has(name)) return `${value} === ${JSON.stringify(branch.key)}`;
  if (branch.key === "one" && oneIsOne(how.tag)) return `${value} === 1`;
  return `counts(${JSON.stringify(how.tag)}, ${value}) === ${JSON.stringify(branch.key)}`;
}

/**
 * Whether a language has one form for 1 and one for all the rest.
 * @param {string} tag
 */
function oneIsOne(tag) {
  const rules = new Intl.PluralRules(tag);
  return (
    categories(tag).join() === "one,other" && rules.select(0) === "other" && rules.select(21) === "other"
  );
}

/** @type {Set<string>} */
const RESERVED = new Set(
  "await break case catch class const continue debugger default delete do else enum export extends false finally for function if implements import in instanceof interface let new null package private protected public return static super switch this throw true try typeof var void while with yield counts".split(
    " ",
  ),
);

/** @param {string} name */
const argument = (name) => (RESERVED.has(name) ? `${name}_` : name);
