/** The table of LOG: of thousands of lines those in sight are there; heads that sort; a line that is pressed opens beside it. */
import type { ComponentChildren } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";
import { said } from "../../../said";
import { dateOf, timeOfDay } from "../../../show";
import type { LogLine } from "../../../wire";
import { useMedia } from "./media";
import { COLUMNS, type Column, kindWord, type Order, pressed } from "./order";
import { useWindow } from "./virtual";
import { logWords } from "./words";

/** A line of one row, on the desk and where rows are a few words behind one another, px. */
const HIGH = 30;
const HIGH_ON_PHONE = 66;
/** From so much later on the hub's own time stands beside the time when it was made, ms. */
const LATE = 60_000;

interface TableProps {
  lines: readonly LogLine[];
  order: Order;
  /** Lines of several days: each says its own. */
  dated: boolean;
  open: number | null;
  /** The line that the arrows move from. */
  reached: number | null;
  onOrder: (order: Order) => void;
  onOpen: (seq: number) => void;
  /** Whether the newest lines are out of sight above. */
  onAway: (away: boolean) => void;
}

/** On a phone a line is its number, time and person over its words; where there is little room the words keep theirs. */
const ON_PHONE: readonly Column[] = ["seq", "made", "by", "text"];
const FEW: readonly Column[] = ["seq", "made", "by", "mark", "text"];
const FEWEST: readonly Column[] = ["seq", "made", "text"];

function useColumns(open: boolean): readonly Column[] {
  const phone = useMedia("(max-width: 700px)");
  const tablet = useMedia("(max-width: 1023px)");
  const narrow = useMedia("(max-width: 1279px)");
  const wide = useMedia("(min-width: 1701px)");
  if (phone) return ON_PHONE;
  if (tablet) return FEW;
  if (!open || wide) return COLUMNS;
  return narrow ? FEWEST : FEW;
}

export function LogTable(props: TableProps) {
  const { lines, order, dated, open, reached } = props;
  const columns = useColumns(open !== null);
  const words = logWords();
  const scroller = useRef<HTMLDivElement>(null);
  const rows = useWindow(scroller, {
    count: lines.length,
    high: columns === ON_PHONE ? HIGH_ON_PHONE : HIGH,
    keyOf: (index) => lines[index]?.seq ?? -index,
  });
  const at = lines.findIndex((line) => line.seq === (reached ?? open));
  // What is opened, and what the arrows come to, is in sight.
  useLayoutEffect(() => {
    if (at >= 0) rows.show(at);
  }, [reached ?? open]);
  // Another order or another filter begins at its top.
  useLayoutEffect(() => {
    if (at < 0 && scroller.current) scroller.current.scrollTop = 0;
  }, [order.by, order.descending]);
  return (
    <div
      class="log-rows"
      ref={scroller}
      onScroll={(event) => props.onAway(event.currentTarget.scrollTop > HIGH)}
    >
      <table class={dated ? "dated" : ""} aria-label={words.table} aria-rowcount={lines.length + 1}>
        <colgroup>
          {columns.map((column) => (
            <col key={column} class={`log-${column}`} />
          ))}
        </colgroup>
        <thead>
          <tr aria-rowindex={1}>
            {columns.map((column) => (
              <Head key={column} column={column} order={order} onOrder={props.onOrder} />
            ))}
          </tr>
        </thead>
        <tbody>
          <Room high={rows.above} />
          {rows.rows.map(({ index, key }) => {
            const line = lines[index];
            return (
              line && (
                <Row
                  key={key}
                  line={line}
                  index={index}
                  measure={rows.measure}
                  reach={at}
                  columns={columns}
                  {...props}
                />
              )
            );
          })}
          <Room high={rows.below} />
        </tbody>
      </table>
    </div>
  );
}

/** The room of rows that are not there. */
function Room({ high }: { high: number }) {
  return high > 0 ? <tr class="log-room" style={{ height: `${high}px` }} /> : null;
}

interface HeadProps {
  column: Column;
  order: Order;
  onOrder: (order: Order) => void;
}

function Head({ column, order, onOrder }: HeadProps) {
  const name = logWords().columns[column];
  const sorts = order.by === column;
  return (
    <th
      scope="col"
      class={`log-${column}`}
      aria-sort={sorts ? (order.descending ? "descending" : "ascending") : "none"}
    >
      <button type="button" onClick={() => onOrder(pressed(order, column))}>
        {name} <span aria-hidden="true">{sorts ? (order.descending ? "▾" : "▴") : ""}</span>
      </button>
    </th>
  );
}

interface RowProps extends TableProps {
  line: LogLine;
  index: number;
  measure: (row: Element | null) => void;
  /** Where the arrows stand. */
  reach: number;
  columns: readonly Column[];
}

function Row({ line, index, measure, reach, columns, open, dated, onOpen }: RowProps) {
  // One stop for the keyboard: the line that the arrows stand on, else the first.
  const stop = index === Math.max(0, reach);
  return (
    <tr
      ref={measure}
      data-index={index}
      data-seq={line.seq}
      aria-rowindex={index + 2}
      class={line.seq === open ? "open" : ""}
      onClick={() => onOpen(line.seq)}
    >
      {columns.map((column) => (
        <td key={column} class={`log-${column}`}>
          {column === "seq" ? (
            <button
              type="button"
              tabIndex={stop ? 0 : -1}
              aria-label={logWords().entry(line.seq)}
              aria-expanded={line.seq === open}
            >
              {line.seq}
            </button>
          ) : (
            cell(line, column, dated)
          )}
        </td>
      ))}
    </tr>
  );
}

function cell(line: LogLine, column: Exclude<Column, "seq">, dated: boolean): ComponentChildren {
  switch (column) {
    case "made":
      return (
        <>
          {dated && <span>{dateOf(line.made_at)}</span>} <span>{timeOfDay(line.made_at, true)}</span>
          {line.at - line.made_at >= LATE && <small> {logWords().came(timeOfDay(line.at, true))}</small>}
        </>
      );
    case "by":
      return line.by;
    case "kind":
      return kindWord(line.kind);
    case "machine":
      return line.machine;
    case "mark":
      return line.mark;
    case "verdict":
      return line.verdict && logWords().verdicts[line.verdict];
    case "text":
      return said(line);
  }
}
