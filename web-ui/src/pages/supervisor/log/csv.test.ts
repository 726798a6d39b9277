/** Lines as a table for other programs. */
import { expect, test } from "vitest";
import { csv, tabbed } from "./csv";
import { line } from "./given";

test("a row for each line under the heads, with the mark that says UTF-8", () => {
  const made_at = new Date(2030, 4, 14, 10, 5, 9, 7).getTime();
  const text = csv([
    line(12, {
      made_at,
      machine: "EX-1",
      verdict: "too_close_high",
      english: "DOWN 3",
      spanish: "BAJA 3",
      portuguese: "DESÇA 3",
    }),
  ]);
  expect(text).toBe(
    "\ufeffseq,at,made_at,by,device,kind,machine,mark,verdict,english,spanish,portuguese\r\n" +
      "12,2030-05-14 10:05:09.007,2030-05-14 10:05:09.007,RT,d-1,reading_taken,EX-1,,too_close_high,DOWN 3,BAJA 3,DESÇA 3\r\n",
  );
});

test("commas, quotes and new lines stay in their cell", () => {
  const text = csv([line(1, { english: 'It said "3", twice', spanish: "dos\nlíneas" })]);
  expect(text).toContain('"It said ""3"", twice","dos\nlíneas",Lançamento 1\r\n');
});

test("a line from before a language was there leaves that cell empty", () => {
  expect(csv([line(1, { portuguese: undefined })])).toContain(",Entry 1,Asiento 1,\r\n");
});

test("no cell is a formula for a spreadsheet", () => {
  expect(csv([line(1, { by: "=1+1", english: "-0.30 ft" })])).toContain(",'=1+1,");
  expect(csv([line(1, { english: "-0.30 ft" })])).toContain(",'-0.30 ft,");
  expect(tabbed([["@a", "b\tc\nd"]])).toBe("'@a\tb c d");
});
