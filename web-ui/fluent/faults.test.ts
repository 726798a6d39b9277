/** Each kind of mistake in the words fails with its file, its line, and what to write instead. */
import { describe, expect, it } from "vitest";
import { faults } from "./given";

const HEAD = "### t().cab\n";
const ASK = "# $machine (text) the machine's name\nask = Ask { $machine } first\n";
const EN = "hub/words/en/pages/cab.ftl";
const ES = "hub/words/es/pages/cab.ftl";

/** What is wrong with one English and one Spanish file of words; the Spanish says ASK well unless it is given. */
const wrong = (english: string, spanish: string) =>
  faults({ "en/pages/cab.ftl": HEAD + english, "es/pages/cab.ftl": `# Spanish\n${spanish}` });

const COUNTED = `# $n (number) how many
left =
    { $n ->
        [0] nothing left
        [one] one left
       *[other] { $n } left
    }
`;
const KIND = `# $line (text) gas or power
struck =
    { $line ->
        [gas] GAS
       *[power] POWER
    }
`;

describe("words that are as they should be", () => {
  it("have no fault", () => {
    expect(wrong(ASK, "ask = Pregunte a { $machine }\n")).toEqual([]);
    expect(
      wrong(COUNTED, "left = { $n ->\n [0] nada\n [one] queda uno\n *[other] quedan { $n }\n }\n"),
    ).toEqual([]);
  });
});

describe("a language that does not follow the English", () => {
  it.each([
    ["a message is missing", ASK, "", [`${ES}:1: ask is missing, which ${EN}:3 has`]],
    [
      "a message too many",
      ASK,
      "ask = Pregunte a { $machine }\n\nasks = Pide\n",
      [`${ES}:4: asks is not in ${EN}: take it out, or mend its name`],
    ],
    [
      "a placeholder is misspelt",
      ASK,
      "ask = Pregunte a { $maquina }\n",
      [
        `${ES}:2: ask has $maquina, which the English has not: it has $machine`,
        `${ES}:2: ask leaves out $machine, which the English has`,
      ],
    ],
    [
      "a placeholder is missing",
      ASK,
      "ask = Pregunte\n",
      [`${ES}:2: ask leaves out $machine, which the English has`],
    ],
    [
      "a placeholder too many",
      "go = Go\n",
      "go = Vaya a { $mark }\n",
      [`${ES}:2: go has $mark, which the English has not: take it out`],
    ],
    [
      "a placeholder is missing in one branch",
      `# $n (number) how many\n${ASK.replace("ask = Ask { $machine } first", "ask = { $n ->\n  [one] { $machine } waits\n *[other] { $n } wait for { $machine }\n }")}`,
      "ask = { $n ->\n  [one] espera\n *[other] { $n } esperan a { $machine }\n }\n",
      [`${ES}:2: ask leaves out $machine in one of its branches: the English has it in each`],
    ],
    [
      "a branch of names is missing",
      KIND,
      "struck = { $line ->\n *[power] LUZ\n }\n",
      [`${ES}:2: struck has no branch [gas] for $line, which the English has`],
    ],
    [
      "a branch of names is misspelt",
      KIND,
      "struck = { $line ->\n  [gass] GAS\n *[power] LUZ\n }\n",
      [
        `${ES}:2: struck has no branch [gas] for $line, which the English has`,
        `${ES}:2: struck has the branch [gass] for $line, which the English has not: it has [gas], [power]`,
      ],
    ],
    [
      "a branch for how many is missing",
      COUNTED,
      "left = { $n ->\n  [0] nada\n *[other] quedan { $n }\n }\n",
      [],
    ],
    [
      "a branch for a number is missing",
      COUNTED,
      "left = { $n ->\n  [one] queda uno\n *[other] quedan { $n }\n }\n",
      [`${ES}:2: left has no branch [0] for $n, which the English has`],
    ],
    [
      "nothing is counted",
      COUNTED,
      "left = quedan { $n }\n",
      [
        `${ES}:2: left has no branch [0] for $n, which the English has`,
        `${ES}:2: left has no branch [one] for $n, which the English has`,
      ],
    ],
    [
      "it counts as another language does",
      COUNTED,
      "left = { $n ->\n  [0] nada\n  [one] queda uno\n  [few] quedan pocos\n *[other] quedan { $n }\n }\n",
      [`${ES}:2: left: [few] is not how es counts: write [one], [other] or a number`],
    ],
    [
      "it chooses where the English does not",
      ASK,
      "ask = { $machine ->\n *[EX1] Pregunte\n }\n",
      [
        `${ES}:2: ask chooses by $machine, the English does not: give the English the same choice, its branches may read alike`,
      ],
    ],
  ])("%s", (_name, english, spanish, said) => {
    expect(wrong(english, spanish)).toEqual(said);
  });

  it("a file is missing, or one too many", () => {
    expect(faults({ "en/pages/cab.ftl": `${HEAD}go = Go\n`, "es/pages/taxi.ftl": "go = Vaya\n" })).toEqual([
      `${ES}:1: go is missing, which ${EN}:2 has`,
      "hub/words/es/pages/taxi.ftl:1: there is no English file of this name: move its messages to one that there is",
    ]);
  });
});

describe("English that says too little or too much", () => {
  it.each([
    [
      "no comment for a placeholder",
      "ask = Ask { $machine }\n",
      [`${EN}:2: ask has $machine, its comment has not: write above it # $machine (text) what it is`],
    ],
    [
      "a comment whose placeholder is misspelt in the text",
      ASK.replace("{ $machine }", "{ $machin }"),
      [
        `${EN}:3: ask has $machin, its comment has not: write above it # $machin (text) what it is`,
        `${EN}:3: ask: its comment names $machine, its text does not have it: put it in, or take it out of the comment`,
      ],
    ],
    [
      "a comment without what it is",
      ASK.replace(" (text) the machine's name", ""),
      [
        `${EN}:3: ask: “# $machine” is not understood: write # $name (text) or (number), and what it is`,
        `${EN}:3: ask has $machine, its comment has not: write above it # $machine (text) what it is`,
      ],
    ],
    [
      "a text chosen by numbers",
      KIND.replace("[gas]", "[1]"),
      [`${EN}:4: struck: [1] is a number, $line is a text: say in the comment that it is a number`],
    ],
    [
      "a number without a branch for the rest",
      COUNTED.replace("*[other]", "*[one]").replace("[one] one", "[other] one"),
      [`${EN}:4: left: the branch for the rest is *[other]`],
    ],
    [
      "a branch twice",
      KIND.replace("*[power]", " [gas] LNG\n       *[power]"),
      [`${EN}:4: the branch [gas] stands there twice: take one out`],
    ],
    [
      "true or false, printed as well",
      "# $lost (text) whether the link is lost\nlink = { $lost } { $lost ->\n  [true] NO LINK\n *[false] link\n }\n",
      [`${EN}:3: link chooses by $lost true or false: it can't be printed as well`],
    ],
    ["a message twice", "go = Go\ngo = Come\n", [`${EN}:3: go stands in this file twice: take one out`]],
    [
      "a text that is a group as well",
      "go = Go\ngo-on = On\n",
      [`${EN}:3: go is a text already (${EN}:2): it can't be a group as well`],
    ],
    [
      "a group that is a text as well",
      "go-on = On\ngo = Go\n",
      [`${EN}:3: cab.go is there already as a group`],
    ],
  ])("%s", (_name, english, said) => {
    const own = wrong(english, english.replace(/^#.*\n/gm, "")).filter((line) => line.startsWith(EN));
    expect(own).toEqual(said);
  });

  it("no first line that says whose words they are", () => {
    expect(faults({ "en/pages/cab.ftl": "go = Go\n", "es/pages/cab.ftl": "go = Vaya\n" })).toEqual([
      `${EN}:1: say on the first line whose words they are: ### t(), ### t().cuts, ### office()`,
    ]);
  });
});

describe("Fluent that the pages do not use", () => {
  it.each([
    [
      "an attribute",
      "go = Go\n  .title = Going\n",
      [`${EN}:3: go has the attribute .title: make a message of its own of it, go-title`],
    ],
    [
      "a function",
      "# $n (number) how many\ngo = { NUMBER($n) }\n",
      [`${EN}:3: NUMBER() is a function: the page gives a text that is ready, write { $variable }`],
    ],
    [
      "a term with arguments",
      '-cab = the cab\ngo = Go to { -cab(case: "to") }\n',
      [
        `${EN}:3: -cab is given arguments: write text, { $variable }, a choice by a variable, or { another-message }`,
      ],
    ],
    [
      "an attribute of another message",
      "cab = cab\ngo = Go to { cab.title }\n",
      [
        `${EN}:3: cab has no attributes: write text, { $variable }, a choice by a variable, or { another-message }`,
      ],
    ],
    [
      "a choice by something else than a variable",
      "go = { NUMBER(1) ->\n *[other] Go\n }\n",
      [`${EN}:2: a choice is by a variable alone: write { $variable -> … }`],
    ],
    [
      "a message of another file",
      "go = Go, { wait }\n",
      [`${EN}:2: wait is not in this file: name a message of this file, or write the text out`],
    ],
    [
      "messages that say each other",
      "go = Go, { wait }\nwait = Wait, { go }\n",
      [
        `${EN}:3: go says wait says go: write one of them out`,
        `${EN}:2: wait says go says wait: write one of them out`,
      ],
    ],
    [
      "a sentence over two lines",
      "go = Go when\n  the cab nods\n",
      [`${EN}:2: the text goes on over a line: write the sentence on one line`],
    ],
    [
      "a variable with a hyphen",
      "# $the-mark (text) the mark\ngo = Go to { $the-mark }\n",
      [`${EN}:3: $the-mark: name a variable with letters, digits and _ alone`],
    ],
  ])("%s", (_name, english, said) => {
    const own = wrong(english, english.replace(/^#.*\n/gm, "")).filter((line) => line.startsWith(EN));
    expect(own.slice(0, said.length)).toEqual(said);
  });

  it("what is no Fluent at all", () => {
    const [said] = wrong("go Go\n", "go = Vaya\n");
    expect(said).toMatch(/^hub\/words\/en\/pages\/cab\.ftl:2: this is no Fluent: .+/);
  });
});
