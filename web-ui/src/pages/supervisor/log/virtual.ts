/** Of thousands of rows only those in sight are there: which, and how much room the others take. */
import type { VirtualItem, Virtualizer } from "@tanstack/virtual-core";
import type { RefObject } from "preact";
import { useLayoutEffect, useReducer, useState } from "preact/hooks";
import { library } from "./late";

/** Rows that are there above and below those in sight. */
const BEYOND = 12;

export interface Window {
  rows: readonly VirtualItem[];
  /** Room above the first and below the last of them, px. */
  above: number;
  below: number;
  measure: (row: Element | null) => void;
  /** Brings a row into sight. */
  show: (index: number) => void;
}

interface Rows {
  count: number;
  /** How high a row is that has not been in sight yet, px. */
  high: number;
  keyOf: (index: number) => number;
}

export function useWindow(scroller: RefObject<HTMLElement | null>, { count, high, keyOf }: Rows): Window {
  const [, paint] = useReducer((times: number) => times + 1, 0);
  const { elementScroll, measureElement, observeElementOffset, observeElementRect } = library();
  const options = {
    count,
    getScrollElement: () => scroller.current,
    estimateSize: () => high,
    getItemKey: keyOf,
    overscan: BEYOND,
    scrollToFn: elementScroll,
    observeElementRect,
    observeElementOffset,
    measureElement,
    onChange: () => paint(0),
  };
  const [rows] = useState<Virtualizer<HTMLElement, Element>>(() => new (library().Virtualizer)(options));
  rows.setOptions(options);
  useLayoutEffect(() => rows._didMount(), [rows]);
  useLayoutEffect(() => rows._willUpdate());
  const shown = rows.getVirtualItems();
  return {
    rows: shown,
    above: shown[0]?.start ?? 0,
    below: Math.max(0, rows.getTotalSize() - (shown[shown.length - 1]?.end ?? 0)),
    measure: rows.measureElement,
    show: (index) => rows.scrollToIndex(index, { align: "auto" }),
  };
}
