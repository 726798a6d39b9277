/** PAPER: sheets that print and open without the hub, and tables for programs. */
import { language } from "../../../state";
import type { Review } from "../../../wire";
import { t } from "../words";
import { sheet, table } from "./ask";

const SHEETS = ["day", "as-built", "hand-over", "cab-card", "hand-signals"] as const;
export function Papers({ review }: { review: Review }) {
  const words = t().review;
  return (
    <>
      <h2>{words.sheets}</h2>
      <div class="row wrap">
        {SHEETS.map((kind) => (
          <a
            key={kind}
            class="key"
            href={sheet(kind, review.day, language.value)}
            target="_blank"
            rel="noreferrer"
          >
            {words.sheetNames[kind]}
          </a>
        ))}
      </div>
      <p>{words.sheetsNote}</p>
      <h2>{words.tables}</h2>
      <div class="row wrap">
        {Object.entries(words.tableNames).map(([file, name]) => (
          <a key={file} class="key" href={table(file, review.day)} download>
            {name}
            <small>{file}</small>
          </a>
        ))}
      </div>
    </>
  );
}
