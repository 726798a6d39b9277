/** One Fluent file, read into messages; what the pages do not use is a fault with its line and what to write instead. */
import { lineOffset, parse as parseFluent } from "@fluent/syntax";

/**
 * @typedef {{ key: string, numeric: boolean, standard: boolean, pattern: Pattern }} Branch
 * @typedef {{ select: string, branches: Branch[], line: number }} Choice
 * @typedef {{ variable: string, line: number }} Variable
 * @typedef {(string | Variable | Choice)[]} Pattern
 * @typedef {{ name: string, type: "text" | "number" }} Parameter
 * @typedef {{ id: string, line: number, comment: string, section: string, pattern: Pattern }} Message
 * @typedef {{ line: number, what: string }} Fault
 * @typedef {{ head: string, messages: Message[], faults: Fault[] }} Parsed
 * @typedef {import("@fluent/syntax").Pattern} Tree
 * @typedef {import("@fluent/syntax").Expression} Expression
 */

const NAME = /^[A-Za-z][A-Za-z0-9_]*$/;
const TEXT_ALONE = "write text, { $variable }, a choice by a variable, or { another-message }";

/**
 * @param {string} source
 * @returns {Parsed}
 */
export function parse(source) {
  const tree = parseFluent(source, { withSpans: true });
  const reading = new Reading(source);
  let head = "";
  let section = "";
  for (const entry of tree.body) {
    if (entry.type === "ResourceComment") head ||= entry.content ?? "";
    else if (entry.type === "GroupComment") section = entry.content ?? "";
    else if (entry.type === "Junk") reading.junk(entry);
    else if (entry.type === "Message" || entry.type === "Term") {
      const id = (entry.type === "Term" ? "-" : "") + entry.id.name;
      // The entry begins with its comment, its text with its name.
      const line = reading.line(entry.id);
      for (const attribute of entry.attributes)
        reading.fault(
          reading.line(attribute),
          `${id} has the attribute .${attribute.id.name}: make a message of its own of it, ${id}-${attribute.id.name}`,
        );
      if (reading.entries.has(id)) reading.fault(line, `${id} stands in this file twice: take one out`);
      if (entry.value)
        reading.entries.set(id, {
          line,
          comment: entry.comment?.content ?? "",
          section,
          tree: entry.value,
        });
      else reading.fault(line, `${id} has no text: write it behind the =`);
    }
  }
  const messages = [...reading.entries]
    .filter(([id]) => !id.startsWith("-"))
    .map(([id, { tree, ...entry }]) => ({ id, ...entry, pattern: reading.pattern(tree, [id]) }));
  return { head, messages, faults: reading.faults };
}

class Reading {
  /** @type {Fault[]} */
  faults = [];
  /** @type {Map<string, { line: number, comment: string, section: string, tree: Tree }>} */
  entries = new Map();

  /** @param {string} source */
  constructor(source) {
    this.source = source;
  }

  /** @param {{ span?: { start: number } }} node */
  line(node) {
    return lineOffset(this.source, node.span?.start ?? 0) + 1;
  }

  /**
   * @param {number} line
   * @param {string} what
   */
  fault(line, what) {
    this.faults.push({ line, what });
  }

  /** @param {import("@fluent/syntax").Junk} entry */
  junk(entry) {
    const [first] = entry.annotations;
    const line = first ? this.line(first) : this.line(entry);
    this.fault(line, `this is no Fluent: ${first?.message ?? "not understood"}`);
  }

  /**
   * A pattern with what it refers to put in; `within` names the messages that it is put into.
   * @param {Tree} tree
   * @param {string[]} within
   * @returns {Pattern}
   */
  pattern(tree, within) {
    /** @type {Pattern} */
    const parts = [];
    for (const element of tree.elements) {
      if (element.type === "TextElement") parts.push(this.text(element));
      else parts.push(...this.expression(element.expression, within));
    }
    return parts;
  }

  /** @param {import("@fluent/syntax").TextElement} element */
  text(element) {
    const breaks = element.value.indexOf("\n");
    if (breaks >= 0) {
      const start = element.span?.start ?? 0;
      const line = lineOffset(this.source, start) + 1 + element.value.slice(0, breaks).split("\n").length - 1;
      this.fault(line, "the text goes on over a line: write the sentence on one line");
    }
    return element.value;
  }

  /**
   * @param {Expression | import("@fluent/syntax").Placeable} expression
   * @param {string[]} within
   * @returns {Pattern}
   */
  expression(expression, within) {
    const line = this.line(expression);
    switch (expression.type) {
      case "Placeable":
        return this.expression(expression.expression, within);
      case "StringLiteral":
        return [expression.parse().value];
      case "NumberLiteral":
        return [expression.value];
      case "VariableReference":
        return [{ variable: this.name(expression.id.name, line), line }];
      case "SelectExpression":
        return this.choice(expression, within, line);
      case "MessageReference":
        return this.other(expression, expression.id.name, within, line);
      case "TermReference":
        if (expression.arguments) {
          this.fault(line, `-${expression.id.name} is given arguments: ${TEXT_ALONE}`);
          return [];
        }
        return this.other(expression, `-${expression.id.name}`, within, line);
      case "FunctionReference":
        this.fault(
          line,
          `${expression.id.name}() is a function: the page gives a text that is ready, write { $variable }`,
        );
        return [];
      default:
        this.fault(line, `not used here: ${TEXT_ALONE}`);
        return [];
    }
  }

  /**
   * @param {string} name
   * @param {number} line
   */
  name(name, line) {
    if (!NAME.test(name)) this.fault(line, `$${name}: name a variable with letters, digits and _ alone`);
    return name;
  }

  /**
   * @param {import("@fluent/syntax").SelectExpression} expression
   * @param {string[]} within
   * @param {number} line
   * @returns {Pattern}
   */
  choice(expression, within, line) {
    const { selector } = expression;
    if (selector.type !== "VariableReference") {
      this.fault(line, "a choice is by a variable alone: write { $variable -> … }");
      return [];
    }
    const branches = expression.variants.map(({ key, value, default: standard }) => ({
      key: key.type === "Identifier" ? key.name : key.value,
      numeric: key.type === "NumberLiteral",
      standard,
      pattern: this.pattern(value, within),
    }));
    for (const [i, { key }] of branches.entries())
      if (branches.findIndex((one) => one.key === key) !== i)
        this.fault(line, `the branch [${key}] stands there twice: take one out`);
    return [{ select: this.name(selector.id.name, line), branches, line }];
  }

  /**
   * What another entry of this file says, in place of its name.
   * @param {import("@fluent/syntax").MessageReference | import("@fluent/syntax").TermReference} reference
   * @param {string} id
   * @param {string[]} within
   * @param {number} line
   * @returns {Pattern}
   */
  other(reference, id, within, line) {
    const entry = this.entries.get(id);
    if (reference.attribute) this.fault(line, `${id} has no attributes: ${TEXT_ALONE}`);
    else if (within.includes(id))
      this.fault(line, `${[...within, id].join(" says ")}: write one of them out`);
    else if (!entry)
      this.fault(line, `${id} is not in this file: name a message of this file, or write the text out`);
    else return this.pattern(entry.tree, [...within, id]);
    return [];
  }
}
