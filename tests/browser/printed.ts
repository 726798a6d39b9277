/** A sheet as Chromium prints it, read back from the PDF by poppler: what stands on which page, and where. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "@playwright/test";

export const FORMATS = ["A4", "Letter"] as const;

/** A word of a page with the box round it, in points from the upper left corner. */
interface Word {
  text: string;
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** A page: its size in points, its words with their boxes, and all its letters in the order of the sheet, without blanks. */
export interface PrintedPage {
  width: number;
  height: number;
  words: Word[];
  letters: string;
}

/** What the sheet says, in its own order: a heading, a row, a point, a sentence. */
interface Piece {
  kind: "heading" | "row" | "text";
  letters: string;
  /** Rows of one table have one number. */
  table: number;
}

/** A program of poppler's over a file. */
function poppler(args: string[]): string {
  try {
    return execFileSync("pdftotext", args, { encoding: "utf8", maxBuffer: 1 << 28 });
  } catch (error) {
    throw new Error(`pdftotext can't read what was printed (${error}). Debian: apt-get install poppler-utils.`);
  }
}

const NAMED: Record<string, string> = { lt: "<", gt: ">", amp: "&", quot: '"', apos: "'" };
const plain = (text: string) => text.replace(/&(lt|gt|amp|quot|apos);/g, (_, name) => NAMED[name] ?? "");
const solid = (text: string) => text.normalize("NFKC").replace(/[\s\u2060\u00ad]/g, "");

/** Prints the sheet that a page shows. */
export async function print(page: Page, format: (typeof FORMATS)[number], keep?: string): Promise<PrintedPage[]> {
  const folder = mkdtempSync(join(tmpdir(), "rodcall-print-"));
  try {
    const file = join(folder, "sheet.pdf");
    const pdf = await page.pdf({ format, printBackground: true });
    writeFileSync(file, pdf);
    if (keep) writeFileSync(keep, pdf);
    const boxes = poppler(["-bbox", file, "-"]);
    const letters = poppler(["-raw", file, "-"]).split("\f");
    const pages = [...boxes.matchAll(/<page width="([\d.]+)" height="([\d.]+)">(.*?)<\/page>/gs)];
    return pages.map(([, width, height, body], at) => ({
      width: Number(width),
      height: Number(height),
      letters: solid(letters[at] ?? ""),
      words: [
        ...(body ?? "").matchAll(/<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">(.*?)<\/word>/g),
      ].map(([, left, top, right, bottom, text]) => ({
        text: plain(text ?? ""),
        left: Number(left),
        right: Number(right),
        top: Number(top),
        bottom: Number(bottom),
      })),
    }));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Every piece of the sheet as its document has it. */
export async function pieces(page: Page): Promise<Piece[]> {
  const said = await page.evaluate(() => {
    const tables = [...document.querySelectorAll("table.rows")];
    const wanted = "h2, h3, table.rows tbody tr, li, p, figcaption, .boxes > div";
    return [...document.querySelectorAll<HTMLElement>(`main :is(${wanted})`)]
      .filter((one) => !one.closest("header, .run, svg") && one.parentElement?.closest("li, p, figcaption") === null)
      .map((one) => ({
        // What a drawing's heading heads has no words of its own to be found by.
        kind: /^H\d$/.test(one.tagName) && one.nextElementSibling?.tagName !== "svg" ? "heading" : one.tagName === "TR" ? "row" : "text",
        letters: one.textContent ?? "",
        table: tables.findIndex((table) => table.contains(one)),
      }));
  });
  return said
    .map((one) => ({ ...one, kind: one.kind as Piece["kind"], letters: solid(one.letters) }))
    .filter((one) => one.letters !== "");
}

/** The page of each piece, found one behind the other; what is torn over two pages, or not there whole, is an error. */
export function pagesOf(pieces: Piece[], pages: PrintedPage[]): number[] {
  let at = 0;
  let from = 0;
  return pieces.map((piece) => {
    for (let page = at; page < pages.length; page++) {
      const found = pages[page]?.letters.indexOf(piece.letters, page === at ? from : 0) ?? -1;
      if (found < 0) continue;
      at = page;
      from = found + piece.letters.length;
      return page;
    }
    throw new Error(`Behind page ${at + 1} there is no whole “${piece.letters}”: it is torn or cut.`);
  });
}
