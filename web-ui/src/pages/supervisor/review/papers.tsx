/** PAPER: sheets that print and open without the hub, and tables for programs. */
import { language } from "../../../state";
import type { Review, Table } from "../../../wire";
import { snake } from "../../../words/covers";
import { t } from "../words";
import { sheet, table } from "./ask";

const SHEETS = ["day", "as-built", "hand-over", "cab-card", "hand-signals"] as const;

/** Every table that the hub gives out; one that it adds is asked for here. */
const TABLES = Object.keys({
  "as-built.csv": 0,
  "readings.csv": 0,
  "calls.csv": 0,
  "checks.csv": 0,
  "hours.csv": 0,
  "costs.csv": 0,
  "loads.csv": 0,
  "patches.csv": 0,
  "tests.csv": 0,
  "rock.csv": 0,
  "edges.csv": 0,
  "exceptions.csv": 0,
  "open.csv": 0,
  "photos.csv": 0,
  "as-built.xml": 0,
  "marks.geojson": 0,
} satisfies Record<Table, 0>) as Table[];

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
            {words.sheetNames[snake(kind)]}
          </a>
        ))}
      </div>
      <p>{words.sheetsNote}</p>
      <h2>{words.tables}</h2>
      <div class="row wrap">
        {TABLES.map((file) => (
          <a key={file} class="key" href={table(file, review.day)} download>
            {words.tableNames[snake(file)]}
            <small>{file}</small>
          </a>
        ))}
      </div>
    </>
  );
}
