/** In which order the lines stand: the table's columns, each with what it is sorted by. */
import type { ColumnDef } from "@tanstack/table-core";
import { said } from "../../../said";
import type { LogLine } from "../../../wire";
import { VERDICTS } from "./filter";
import { library } from "./late";
import { logWords } from "./words";

export const COLUMNS = ["seq", "made", "by", "kind", "machine", "mark", "verdict", "text"] as const;
export type Column = (typeof COLUMNS)[number];

export interface Order {
  by: Column;
  /** The greatest or newest first. */
  descending: boolean;
}

export const NEWEST_FIRST: Order = { by: "seq", descending: true };

/** As it stands in the address: `-made`; the newest first when it says nothing that there is. */
export function orderIn(text: string | undefined): Order {
  const name = (text ?? "").replace(/^-/, "");
  const by = COLUMNS.find((one) => one === name);
  return by ? { by, descending: text?.startsWith("-") ?? false } : NEWEST_FIRST;
}

export function orderText({ by, descending }: Order): string {
  if (by === NEWEST_FIRST.by && descending) return "";
  return `${descending ? "-" : ""}${by}`;
}

/** What a press on a column's head does: sorts by it, the newest first where it is a time or a number; once more, the other way. */
export function pressed(order: Order, by: Column): Order {
  if (order.by === by) return { by, descending: !order.descending };
  return { by, descending: by === "seq" || by === "made" };
}

/** N-2 before N-10. */
const names = new Intl.Collator(undefined, { numeric: true });

/** What a line is sorted by in a column; none where it has nothing there, and then it comes last. */
function value(line: LogLine, by: Column): string | number | undefined {
  switch (by) {
    case "seq":
      return line.seq;
    case "made":
      return line.made_at;
    case "by":
      return line.by;
    case "kind":
      return kindWord(line.kind);
    case "machine":
      return line.machine ?? undefined;
    case "mark":
      return line.mark ?? undefined;
    case "verdict":
      return line.verdict == null ? undefined : VERDICTS.indexOf(line.verdict);
    case "text":
      return said(line);
  }
}

function compared(a: string | number, b: string | number): number {
  return typeof a === "number" && typeof b === "number" ? a - b : names.compare(String(a), String(b));
}

/** The word for a kind of entry; a kind that this page does not know yet stands as the log has it. */
export function kindWord(kind: string): string {
  return (logWords().kinds as Readonly<Record<string, string>>)[kind] ?? kind;
}

/** What the table can do beside its rows: it sorts. */
function features() {
  const { createSortedRowModel, rowSortingFeature, storeReactivityBindings, tableFeatures } = library();
  return tableFeatures({
    coreReactivityFeature: storeReactivityBindings(),
    rowSortingFeature,
    sortedRowModel: createSortedRowModel(),
  });
}
type Features = ReturnType<typeof features>;

const columns: ColumnDef<Features, LogLine>[] = COLUMNS.map((by) => ({
  id: by,
  accessorFn: (line) => value(line, by),
  sortUndefined: "last",
  sortFn: (one, other) => compared(one.getValue(by) as string, other.getValue(by) as string),
}));

/** Puts lines into an order. Those that are alike keep the order in which they come, the newest first. */
export function sorter(): (lines: readonly LogLine[], order: Order) => readonly LogLine[] {
  const table = library().constructTable<Features, LogLine>({
    features: features(),
    columns,
    data: [],
    getRowId: (line) => String(line.seq),
  });
  return (lines, { by, descending }) => {
    // So they come from the hub.
    if (by === NEWEST_FIRST.by && descending) return lines;
    table.setOptions((before) => ({ ...before, data: lines as LogLine[] }));
    table.setSorting([{ id: by, desc: descending }]);
    return table.getRowModel().rows.map((row) => row.original);
  };
}
