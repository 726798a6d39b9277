/** What the languages are held against: English, its comments, and each language's own way to count. */
/** @import { Choice, Fault, Message, Parameter, Pattern } from "./parse.mjs" */

/** @typedef {Message & { parameters: Parameter[] }} Reference */

const DECLARED = /^\$(\S+) \((text|number)\) \S/;
const CATEGORIES = ["zero", "one", "two", "few", "many", "other"];
/** A crew counts no further: categories that only larger numbers have are not asked for. */
const COUNTED = 1_000;

/**
 * The variables that an English comment names, in its order.
 * @param {Message} message
 * @param {Fault[]} faults
 * @returns {Parameter[]}
 */
export function parameters(message, faults) {
  /** @type {Parameter[]} */
  const found = [];
  const { id, line, pattern } = message;
  for (const row of message.comment.split("\n").filter((row) => row.startsWith("$"))) {
    const [, name, type] = DECLARED.exec(row) ?? [];
    if (!name || !type) {
      faults.push({
        line,
        what: `${id}: “# ${row}” is not understood: write # $name (text) or (number), and what it is`,
      });
      continue;
    }
    if (found.some((one) => one.name === name))
      faults.push({ line, what: `${id}: its comment names $${name} twice` });
    found.push({ name, type: type === "number" ? "number" : "text" });
  }
  for (const [name, used] of uses(pattern))
    if (!found.some((one) => one.name === name))
      faults.push({
        line: used,
        what: `${id} has $${name}, its comment has not: write above it # $${name} (text) what it is`,
      });
  for (const { name } of found)
    if (!uses(pattern).has(name))
      faults.push({
        line,
        what: `${id}: its comment names $${name}, its text does not have it: put it in, or take it out of the comment`,
      });
  return found;
}

/**
 * What is wrong with the English by itself: keys of choices that fit no variable.
 * @param {Reference} message
 * @param {string} tag
 * @param {Fault[]} faults
 */
export function checkEnglish(message, tag, faults) {
  for (const choice of choices(message.pattern)) {
    counted(message, choice, tag, faults);
    const first = choices(message.pattern).find((one) => one.select === choice.select) ?? choice;
    if (!isNumber(message, choice.select)) sameKeys(message.id, first, choice, faults);
  }
  for (const name of switches(message.pattern))
    if (prints(message.pattern, name))
      faults.push({
        line: message.line,
        what: `${message.id} chooses by $${name} true or false: it can't be printed as well`,
      });
}

/**
 * What another language leaves out of a message, or says too much.
 * @param {Reference} english
 * @param {Message} message
 * @param {string} tag
 * @param {Fault[]} faults
 */
export function checkOther(english, message, tag, faults) {
  const { id, line, pattern } = message;
  const used = uses(pattern);
  for (const [name, where] of used)
    if (!english.parameters.some((one) => one.name === name))
      faults.push({ line: where, what: `${id} has $${name}, which the English has not${instead(english)}` });
  for (const { name } of english.parameters) {
    if (!used.has(name)) faults.push({ line, what: `${id} leaves out $${name}, which the English has` });
    else if (always(english.pattern, name) && !always(pattern, name))
      faults.push({
        line,
        what: `${id} leaves out $${name} in one of its branches: the English has it in each`,
      });
  }
  for (const choice of choices(pattern)) {
    const model = choices(english.pattern).find((one) => one.select === choice.select);
    if (isNumber(english, choice.select)) counted(english, choice, tag, faults);
    else if (model) sameKeys(id, model, choice, faults);
    else if (english.parameters.some((one) => one.name === choice.select))
      faults.push({
        line: choice.line,
        what: `${id} chooses by $${choice.select}, the English does not: give the English the same choice, its branches may read alike`,
      });
  }
  for (const model of choices(english.pattern)) {
    const own = choices(pattern).filter((one) => one.select === model.select);
    const keys = own.flatMap((one) => one.branches.map((branch) => branch.key));
    for (const { key, numeric } of model.branches) {
      if (keys.includes(key)) continue;
      // Each language counts in its own way, as far as it makes a difference.
      const counts = isNumber(english, model.select) && !numeric;
      if (counts && (key === "other" || own.length > 0 || categories(tag).length === 1)) continue;
      // With another branch there, sameKeys has said it already.
      if (own.length > 0 && !isNumber(english, model.select)) continue;
      faults.push({ line, what: `${id} has no branch [${key}] for $${model.select}, which the English has` });
    }
  }
}

/** @param {Reference} english */
const instead = (english) =>
  english.parameters.length
    ? `: it has ${english.parameters.map((one) => `$${one.name}`).join(", ")}`
    : ": take it out";

/**
 * @param {Reference} english
 * @param {string} name
 */
const isNumber = (english, name) => english.parameters.find((one) => one.name === name)?.type === "number";

/**
 * The keys of a choice by how many.
 * @param {Reference} english
 * @param {Choice} choice
 * @param {string} tag
 * @param {Fault[]} faults
 */
function counted(english, choice, tag, faults) {
  const say = (/** @type {string} */ what) =>
    faults.push({ line: choice.line, what: `${english.id}: ${what}` });
  if (!isNumber(english, choice.select)) {
    for (const { key, numeric } of choice.branches)
      if (numeric)
        say(`[${key}] is a number, $${choice.select} is a text: say in the comment that it is a number`);
    return;
  }
  const names = choice.branches.filter((one) => !one.numeric).map((one) => one.key);
  for (const name of names)
    if (!categories(tag).includes(name))
      say(
        `[${name}] is not how ${tag} counts: write ${categories(tag)
          .map((one) => `[${one}]`)
          .join(", ")} or a number`,
      );
  if (!choice.branches.some((one) => one.standard && one.key === "other"))
    say("the branch for the rest is *[other]");
  if (names.some((name) => name !== "other"))
    for (const name of categories(tag))
      if (!names.includes(name)) say(`no branch [${name}] for $${choice.select}: ${tag} counts with it`);
}

/**
 * @param {string} id
 * @param {Choice} model
 * @param {Choice} choice
 * @param {Fault[]} faults
 */
function sameKeys(id, model, choice, faults) {
  const [wanted, got] = [model, choice].map((one) => one.branches.map((branch) => branch.key));
  for (const key of wanted ?? [])
    if (!got?.includes(key))
      faults.push({
        line: choice.line,
        what: `${id} has no branch [${key}] for $${choice.select}, which the English has`,
      });
  for (const key of got ?? [])
    if (!wanted?.includes(key))
      faults.push({
        line: choice.line,
        what: `${id} has the branch [${key}] for $${choice.select}, which the English has not: it has ${wanted?.map((one) => `[${one}]`).join(", ")}`,
      });
}

/**
 * The categories in which a language counts whole numbers; what is left is always `other`.
 * @param {string} tag
 */
export function categories(tag) {
  const rules = new Intl.PluralRules(tag);
  const found = new Set(Array.from({ length: COUNTED }, (_, n) => /** @type {string} */ (rules.select(n))));
  return CATEGORIES.filter((one) => one === "other" || found.has(one));
}

/**
 * Variables by which a text is chosen with true and false.
 * @param {Pattern} pattern
 */
export function switches(pattern) {
  return new Set(
    choices(pattern)
      .filter(
        (one) =>
          one.branches.length === 2 && one.branches.every(({ key }) => key === "true" || key === "false"),
      )
      .map((one) => one.select),
  );
}

/**
 * All choices of a pattern, those within branches too.
 * @param {Pattern} pattern
 * @returns {Choice[]}
 */
export function choices(pattern) {
  return pattern.flatMap((part) =>
    typeof part === "object" && "select" in part
      ? [part, ...part.branches.flatMap((branch) => choices(branch.pattern))]
      : [],
  );
}

/**
 * The variables of a pattern, each with the first line on which it is used.
 * @param {Pattern} pattern
 * @returns {Map<string, number>}
 */
export function uses(pattern) {
  /** @type {Map<string, number>} */
  const found = new Map();
  const add = (/** @type {string} */ name, /** @type {number} */ line) => {
    if (!found.has(name)) found.set(name, line);
  };
  for (const part of pattern) {
    if (typeof part === "string") continue;
    if ("variable" in part) {
      add(part.variable, part.line);
      continue;
    }
    add(part.select, part.line);
    for (const branch of part.branches) for (const [name, line] of uses(branch.pattern)) add(name, line);
  }
  return found;
}

/**
 * @param {Pattern} pattern
 * @param {string} name
 * @returns {boolean}
 */
function prints(pattern, name) {
  return pattern.some((part) => {
    if (typeof part === "string") return false;
    if ("variable" in part) return part.variable === name;
    return part.branches.some((branch) => prints(branch.pattern, name));
  });
}

/**
 * Whether a variable makes a difference whichever branches are taken.
 * @param {Pattern} pattern
 * @param {string} name
 * @returns {boolean}
 */
function always(pattern, name) {
  return pattern.some((part) => {
    if (typeof part === "string") return false;
    if ("variable" in part) return part.variable === name;
    return part.select === name || part.branches.every((branch) => always(branch.pattern, name));
  });
}
