/** A chart in ink: as wide as its place, redrawn when that changes; its legend and what it says in words stand under it. */
import type { PlotOptions } from "@observablehq/plot";
import type { ComponentChildren } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { late } from "../../../late";
import { timeOfDay } from "../../../show";
import { t } from "../words";
import { Legend, type Sign } from "./legend";

const library = late(() => import("./plot"));
export type Library = NonNullable<typeof library.script.value>;

/** Ink and paper of the page's theme; a pattern by its name. No hue. */
export const INK = "var(--ink)";
export const PAPER = "var(--paper)";
export const HATCH = "url(#ink-hatch)";
export const DOTS = "url(#ink-dots)";

/** A scale over moments of the site's clock. */
export const clockScale = (from: number, to: number): PlotOptions["x"] => ({
  type: "time",
  domain: [new Date(from), new Date(Math.max(to, from + 1))],
  tickFormat: (at: Date) => timeOfDay(at.getTime()),
  label: null,
});

/** Wider than this on paper, its words would be too small there. */
const WIDE_ON_PAPER = 900;

interface ChartProps {
  name: string;
  note?: string;
  legend?: readonly (readonly [Sign, string])[];
  /** The picture for this width, in CSS pixels. Must be one function for as long as it draws the same. */
  draw: (library: Library, width: number) => PlotOptions;
  /** Narrower than this it is scrolled instead. */
  least?: number;
  /** What lies over the picture, for its width. */
  over?: (width: number) => ComponentChildren;
}

export function Chart({ name, note, legend, draw, least = 0, over }: ChartProps) {
  const place = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  const script = library.script.value;
  useEffect(library.ask, []);
  useEffect(() => {
    const box = place.current?.parentElement;
    if (!box) return;
    const seen = new ResizeObserver(() => setWidth(Math.max(least, box.clientWidth)));
    seen.observe(box);
    return () => seen.disconnect();
  }, [least]);
  useEffect(() => {
    const box = place.current;
    if (!script || width === 0 || !box) return;
    const paint = (wide: number) => box.replaceChildren(picture(script, draw, wide, name));
    paint(width);
    // Before the browser lays paper out, and back again: nothing of it waits for another paint of the page.
    const onPaper = () => paint(Math.min(width, WIDE_ON_PAPER));
    const onScreen = () => paint(width);
    addEventListener("beforeprint", onPaper);
    addEventListener("afterprint", onScreen);
    return () => {
      removeEventListener("beforeprint", onPaper);
      removeEventListener("afterprint", onScreen);
    };
  }, [script, width, draw, name]);
  return (
    <figure class="chart">
      <Patterns />
      <div class="chart-window">
        {!script && <p>{t().loading}</p>}
        <div ref={place} />
        {script && width > 0 && over?.(width)}
      </div>
      {(legend || note) && (
        <figcaption>
          {legend && <Legend of={legend} />}
          {note}
        </figcaption>
      )}
    </figure>
  );
}

function picture(script: Library, draw: ChartProps["draw"], width: number, name: string): Element {
  const drawn = script.plot({
    width,
    marginTop: 24,
    marginRight: 18,
    marginBottom: 34,
    marginLeft: 52,
    className: "ink",
    ...draw(script, width),
  });
  // The hub's pages run no style but their own: the library's few rules stand in charts.css.
  drawn.querySelector("style")?.remove();
  // One picture with one name: what it is drawn of has none of its own.
  for (const part of drawn.querySelectorAll("g[aria-label]")) part.removeAttribute("aria-label");
  drawn.setAttribute("role", "img");
  drawn.setAttribute("aria-label", name);
  return drawn;
}

/** Patterns stand for hues: a span is told by its hatch. */
function Patterns() {
  return (
    <svg class="chart-patterns" aria-hidden="true">
      <defs>
        <pattern id="ink-hatch" width="8" height="8" patternUnits="userSpaceOnUse">
          <path d="M0 8L8 0M-2 2L2 -2M6 10L10 6" stroke="var(--ink)" stroke-width="2" />
        </pattern>
        <pattern id="ink-dots" width="7" height="7" patternUnits="userSpaceOnUse">
          <circle cx="3" cy="3" r="1.6" fill="var(--ink)" />
        </pattern>
      </defs>
    </svg>
  );
}
