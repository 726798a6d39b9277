/** The sheets on paper: printed on A4 and on letter, read back, and held against what their documents say. */
import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, type Page, test } from "@playwright/test";
import { test as crewTest, FOOT } from "./crew.ts";
import { BINARY } from "./hub.ts";
import { FORMATS, pagesOf, pieces, type PrintedPage, print } from "./printed.ts";

/** 14 mm of white at each side, less a point for what a face hangs over. */
const SIDE = (14 / 25.4) * 72 - 1;

/** What every printed page has: its number, whose it is, the head of the chain; and nothing over its edge. */
function holdsTogether(pages: PrintedPage[], head: string[]): void {
  for (const [at, page] of pages.entries()) {
    const which = `page ${at + 1} of ${pages.length}`;
    const foot = page.words.filter((word) => word.top > page.height - 45).map((word) => word.text);
    expect(foot.join(" "), which).toBe(`${at + 1} / ${pages.length}`);
    const over = page.words.filter((word) => word.bottom < 60).map((word) => word.text).join("");
    for (const part of head) expect(over, which).toContain(part.replaceAll(" ", ""));
    const past = page.words.filter((word) => word.left <= SIDE || word.right >= page.width - SIDE);
    expect(past, which).toEqual([]);
  }
}

/** No heading without what it heads, no row torn or alone; gives the page of each piece. */
async function reads(page: Page, pages: PrintedPage[]): Promise<number[]> {
  const said = await pieces(page);
  const on = pagesOf(said, pages);
  const alone = said.filter((one, at) => one.kind === "heading" && at + 1 < said.length && on[at + 1] !== on[at]);
  expect(alone.map((one) => one.letters), "headings without what follows them").toEqual([]);
  const tables = new Map<number, number[]>();
  for (const [at, piece] of said.entries()) {
    if (piece.kind === "row") tables.set(piece.table, [...(tables.get(piece.table) ?? []), on[at] ?? -1]);
  }
  const few = [...tables].filter(([, rows]) =>
    rows.some((one) => rows.filter((other) => other === one).length < Math.min(2, rows.length)),
  );
  expect(few, "tables of which a row stands alone on a page").toEqual([]);
  return on;
}

/** Prints a sheet in both formats and proves each; gives the pages of the last. */
async function proves(page: Page, head: string[], name: string): Promise<PrintedPage[]> {
  let last: PrintedPage[] = [];
  for (const format of FORMATS) {
    last = await print(page, format, test.info().outputPath(`${name}-${format}.pdf`));
    await test.step(`${name} on ${format}`, async () => {
      holdsTogether(last, head);
      await reads(page, last);
    });
  }
  return last;
}

test.describe("the demo's day", () => {
  let hub: ChildProcess;
  let own = "";
  const data = mkdtempSync(join(tmpdir(), "rodcall-paper-"));

  test.describe.configure({ mode: "serial" });

  test.beforeAll(async () => {
    hub = spawn(BINARY, ["demo", "--speed", "step", "--data", data, "--listen", "127.0.0.1:0"]);
    own = await new Promise<string>((resolve, reject) => {
      let said = "";
      const hear = (bytes: Buffer) => {
        said += bytes.toString();
        const found = /own=(\S+)/.exec(said)?.[1];
        if (found && said.includes("story is over")) resolve(found);
      };
      hub.stdout?.on("data", hear);
      hub.stderr?.on("data", hear);
      hub.on("exit", (code) => reject(new Error(`The demo ended with ${code}:\n${said}`)));
    });
  });

  test.afterAll(() => {
    hub.removeAllListeners("exit");
    hub.kill("SIGKILL");
    rmSync(data, { recursive: true, force: true });
  });

  for (const language of ["english", "spanish"]) {
    test(`every sheet reads on A4 and letter, ${language}`, async ({ page }) => {
      await page.goto(own);
      const base = new URL(own).origin;
      for (const kind of ["day", "as-built", "hand-over", "cab-card", "hand-signals"]) {
        await page.goto(`${base}/api/report/${kind}?language=${language}`);
        const chain = (await page.locator(".foot .head").textContent()) ?? "";
        expect(chain).toMatch(/^[0-9a-f]{64}$/);
        const pages = await proves(page, ["Alder Bend, lot 7", "2030-05-14", chain], `${kind}-${language}`);
        // Three pages to a card: the place, the number, the screen. Two machines.
        if (kind === "cab-card") expect(pages).toHaveLength(6);
        if (kind === "hand-signals") expect(pages).toHaveLength(1);
      }
    });
  }

  test("no sheet needs more width than a phone has, but for tables, which move by themselves", async ({ page }) => {
    await page.goto(own);
    await page.setViewportSize({ width: 360, height: 740 });
    for (const kind of ["day", "as-built", "hand-over", "cab-card", "hand-signals"]) {
      await page.goto(`${new URL(own).origin}/api/report/${kind}`);
      expect(await page.evaluate(() => document.documentElement.scrollWidth), kind).toBeLessThanOrEqual(360);
    }
  });
});

/** As long as a name may be. */
const name = (at: number) => `Wwww Mmmmm Wwwwwwwwww ${String(at).padStart(2, "0")}`;
const LONG = "the truck came round the barricade while the bucket was over the trench and nobody had seen it ".repeat(2);

crewTest("a day with more than a page can hold still has one page before the rest", async ({ crew, page }) => {
  const { hub } = crew;
  for (let at = 0; at < 14; at++) await hub.letsIn(name(at), "ground");
  for (let at = 1; at <= 16; at++) {
    const { first } = await hub.say({ kind: "stop_all", why: `${at} ${LONG}`.slice(0, 200) });
    await hub.say({ kind: "lift_stop", press: first, why: `${at} looked at by all, ${LONG}`.slice(0, 200) });
  }
  await hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 300 * FOOT, y: 300 * FOOT } });
  await hub.signsIn(page);
  for (const [language, formats] of [["english", FORMATS], ["spanish", ["Letter"]]] as const) {
    await page.goto(`http://127.0.0.1:${hub.port}/api/report/day?language=${language}`);
    for (const format of formats) {
      const pages = await print(page, format, crewTest.info().outputPath(`long-${language}-${format}.pdf`));
      holdsTogether(pages, ["Mill yard"]);
      const on = await reads(page, pages);
      const first = (await pieces(page)).findIndex((one) => /^(Thedayinfull|Eldíacompleto)$/.test(one.letters));
      expect(on[first], `${language} ${format}`).toBe(1);
      // What is left out is counted.
      expect(pages[0]?.letters).toMatch(/more:onthepagesbehind|más:enlashojasquesiguen/);
    }
  }
});
