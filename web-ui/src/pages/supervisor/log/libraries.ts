/** What LOG takes of libraries, and its words, in a script that comes when it is opened. It shares nothing with other scripts. */
export {
  constructTable,
  createSortedRowModel,
  rowSortingFeature,
  tableFeatures,
} from "@tanstack/table-core";
export { storeReactivityBindings } from "@tanstack/table-core/store-reactivity-bindings";
export {
  elementScroll,
  measureElement,
  observeElementOffset,
  observeElementRect,
  Virtualizer,
} from "@tanstack/virtual-core";
export { log as words } from "../../../words.gen/log";
