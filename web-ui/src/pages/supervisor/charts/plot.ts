/** What the pages take of the chart library, in a script that comes when a page with charts is opened. */
export {
  areaY,
  barX,
  dot,
  gridX,
  gridY,
  line,
  link,
  plot,
  rectY,
  ruleX,
  ruleY,
  text,
  tickX,
} from "@observablehq/plot";
