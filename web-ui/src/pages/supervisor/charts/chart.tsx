/** A chart in ink: as wide as its place, redrawn when that changes; what it says stands in words under it. */
import type { PlotOptions } from "@observablehq/plot";
import { useEffect, useRef, useState } from "preact/hooks";
import { late } from "../../../late";
import { timeOfDay } from "../../../show";
import { t } from "../words";

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

/** Wider than this, its words would be too small on paper. */
const MOST_WIDE = 900;

interface ChartProps {
  name: string;
  note?: string;
  /** The picture for this width, in CSS pixels. Must be one function for as long as it draws the same. */
  draw: (library: Library, width: number) => PlotOptions;
  /** Narrower than this it is scrolled instead. */
  least?: number;
  /** A value of the horizontal scale that a line is drawn at. */
  now?: number | undefined;
  /** A part of the picture with an `href` of `#…` was pressed. */
  onPress?: ((what: string) => void) | undefined;
}

export function Chart({ name, note, draw, least = 0, now, onPress }: ChartProps) {
  const pressed = onPress !== undefined;
  const place = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(0);
  const [at, setAt] = useState<((value: number) => number) | null>(null);
  const script = library.script.value;
  useEffect(library.ask, []);
  useEffect(() => {
    const box = place.current?.parentElement;
    if (!box) return;
    const seen = new ResizeObserver(() => setWidth(Math.max(least, Math.min(MOST_WIDE, box.clientWidth))));
    seen.observe(box);
    return () => seen.disconnect();
  }, [least]);
  useEffect(() => {
    const box = place.current;
    if (!script || width === 0 || !box) return;
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
    drawn.setAttribute("role", pressed ? "group" : "img");
    drawn.setAttribute("aria-label", name);
    box.replaceChildren(drawn);
    const scale = drawn.scale("x");
    setAt(() => (value: number) => Number(scale?.apply(value)));
  }, [script, width, draw, name, pressed]);
  const follow = (event: Event) => {
    const link = (event.target as Element).closest("a");
    const what = link?.getAttribute("href") ?? link?.getAttribute("xlink:href");
    if (!what?.startsWith("#")) return;
    event.preventDefault();
    onPress?.(what.slice(1));
  };
  return (
    <figure class="chart">
      <Patterns />
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the links inside are what is pressed. */}
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: a link answers to the keyboard by itself. */}
      <div class="chart-window" onClick={follow}>
        {!script && <p>{t().loading}</p>}
        <div ref={place} />
        {now !== undefined && at && <div class="chart-now" style={{ left: `${at(now)}px` }} />}
      </div>
      {note && <figcaption>{note}</figcaption>}
    </figure>
  );
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
