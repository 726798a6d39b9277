/** Lines as a table for other programs: the hub's own columns, and their verdict. */
import { LANGUAGES } from "../../../languages";
import { eachSaid } from "../../../said";
import { dateOf, timeOfDay } from "../../../show";
import type { LogLine } from "../../../wire";

const COLUMNS = ["seq", "at", "made_at", "by", "device", "kind", "machine", "mark", "verdict", ...LANGUAGES];

/** `2030-05-14 07:31:00.250` on this laptop's clock. */
export function inFull(at: number): string {
  return `${dateOf(at)} ${timeOfDay(at, true)}.${String(new Date(at).getMilliseconds()).padStart(3, "0")}`;
}

function row(line: LogLine): string[] {
  return [
    String(line.seq),
    inFull(line.at),
    inFull(line.made_at),
    ...[
      line.by,
      line.device,
      line.kind,
      line.machine ?? "",
      line.mark ?? "",
      line.verdict ?? "",
      ...eachSaid(line),
    ].map(harmless),
  ];
}

/** A cell that a spreadsheet does not take for a formula. */
function harmless(cell: string): string {
  return /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
}

/** RFC 4180; spreadsheets take it for UTF-8 by the mark in front. */
export function csv(lines: readonly LogLine[]): string {
  const quoted = (cell: string) => (/[",\r\n]/.test(cell) ? `"${cell.replace(/"/g, '""')}"` : cell);
  const rows = [COLUMNS, ...lines.map(row)].map((cells) => cells.map(quoted).join(","));
  return `\ufeff${rows.join("\r\n")}\r\n`;
}

/** For pasting into a sheet or a letter: a tab between two cells, no cell of more than one line. */
export function tabbed(rows: readonly (readonly string[])[]): string {
  return rows.map((cells) => cells.map((cell) => harmless(cell.replace(/\s+/g, " "))).join("\t")).join("\n");
}

/** Hands a text to the browser as a file to keep. */
export function keepFile(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: "text/csv;charset=utf-8" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // Let go once the browser has taken it.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
