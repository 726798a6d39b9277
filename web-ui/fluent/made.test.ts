/** What is made of the words says what they say: names, branches, each language's own way to count. */
import { describe, expect, it } from "vitest";
import { folder, made } from "./given";

const POLISH = { english: { folder: "en" }, polish: { folder: "pl" } };

const ENGLISH = `### t().cab
-cab = the cab
go = Go to { -cab }
quoted = A \`tick\`, a "quote", a \\ and \${"{"}machine{"}"}
steps-1 = First
steps-2 = Then
# $machine (text) the machine's name
ask = Ask { $machine } first
# $machine (text) the machine's name
askNow = NOW. { ask }
# $n (number) how many
# $mark (text) the mark's name
left = { $mark }: { $n ->
  [0] nothing
  [one] one
 *[other] { $n }
 } left
# $line (text) gas or power
struck = { $line ->
  [gas] GAS
 *[power] POWER
 }
# $lost (text) whether the link is lost
link = Link{ $lost ->
  [true] { " " }LOST
 *[false] { "" }
 }
# $kind (text) what it is
other = { $kind ->
  [gas] GAS
 *[other] SOMETHING
 }
# $new (text) the new name
named = named { $new }
`;

const OTHER = ENGLISH.replace(/^#.*\n/gm, "").replace(
  "[one] one\n",
  "[one] jeden\n  [few] parę: { $n }\n  [many] wiele: { $n }\n",
);

const house = () =>
  made(
    folder({
      "en/pages/cab.ftl": ENGLISH,
      "pl/pages/cab.ftl": OTHER,
      "en/pages/late.ftl": "### late()\nnow = Now\n",
      "pl/pages/late.ftl": "now = Teraz\n",
      "en/pages/yard.ftl": "### t().yard\ngate = Gate\n\n## late()\n## Seldom read.\n\nfence = Fence\n",
      "pl/pages/yard.ftl": "fence = Płot\ngate = Brama\n",
    }),
    POLISH,
  );

interface Cab {
  cab: {
    go: string;
    quoted: string;
    steps: string[];
    ask: (machine: string) => string;
    askNow: (machine: string) => string;
    left: (n: number, mark: string) => string;
    struck: (line: string) => string;
    link: (lost: boolean) => string;
    other: (kind: string) => string;
    named: (name: string) => string;
  };
}

describe("the modules that are made of the words", () => {
  it("say the English", async () => {
    const { cab } = ((await house().load("en")) as { words: Cab }).words;
    expect(cab.go).toBe("Go to the cab");
    expect(cab.quoted).toBe(`A \`tick\`, a "quote", a \\ and \${machine}`);
    expect(cab.steps).toEqual(["First", "Then"]);
    expect(cab.ask("EX-1")).toBe("Ask EX-1 first");
    expect(cab.askNow("EX-1")).toBe("NOW. Ask EX-1 first");
    expect([0, 1, 2].map((n) => cab.left(n, "M1"))).toEqual([
      "M1: nothing left",
      "M1: one left",
      "M1: 2 left",
    ]);
    expect(["gas", "power"].map(cab.struck)).toEqual(["GAS", "POWER"]);
    expect([true, false].map(cab.link)).toEqual(["Link LOST", "Link"]);
    expect(["gas", "whatever"].map(cab.other)).toEqual(["GAS", "SOMETHING"]);
    expect(cab.named("A")).toBe("named A");
  });

  it("count as each language counts", async () => {
    const { cab } = ((await house().load("pl")) as { words: Cab }).words;
    expect([0, 1, 3, 5, 22, 1.5].map((n) => cab.left(n, "M1"))).toEqual([
      "M1: nothing left",
      "M1: jeden left",
      "M1: parę: 3 left",
      "M1: wiele: 5 left",
      "M1: parę: 22 left",
      "M1: 1.5 left",
    ]);
  });

  it("have the types that the comments and the branches give, and where each stands", () => {
    const shape = house().text("shape");
    for (const line of [
      "    go: string;",
      "    steps: [string, string];",
      "    ask: (machine: string) => string;",
      "    left: (n: number, mark: string) => string;",
      '    struck: (line: "gas" | "power") => string;',
      "    link: (lost: boolean) => string;",
      "    other: (kind: string) => string;",
      "    /** hub/words/en/pages/cab.ftl:8 */",
    ])
      expect(shape).toContain(`\n${line}\n`);
    expect(shape).toContain("export interface LateWords {");
  });

  it("keep a script for each language, and late words beside their page", async () => {
    const { text, load } = house();
    expect(text("scripts")).toContain('polish: async () => (await import("./pl")).words');
    // A section of a page's words comes late with them, wherever another language's file has it.
    expect((await load("late")).late).toEqual({
      english: { now: "Now", yard: { fence: "Fence" } },
      polish: { now: "Teraz", yard: { fence: "Płot" } },
    });
    expect(((await load("pl")) as { words: { yard: object } }).words.yard).toEqual({ gate: "Brama" });
  });
});
