/** What the signs of a chart mean: each is drawn as in the chart, its word beside it. */
export type Sign =
  | "free"
  | "hatch"
  | "dots"
  | "ink"
  | "line"
  | "dashed"
  | "dashes"
  | "thin"
  | "whisker"
  | "dot"
  | "ring"
  | "cross"
  | "stroke"
  | "bar";

const FRAME = { x: 1, y: 2, width: 30, height: 12, stroke: "var(--ink)", "stroke-width": 1.5 };
const LINE = { stroke: "var(--ink)", fill: "none" };

function drawn(sign: Sign) {
  switch (sign) {
    case "free":
      return <rect {...FRAME} fill="var(--paper)" />;
    case "hatch":
      return <rect {...FRAME} fill="url(#ink-hatch)" />;
    case "dots":
      return <rect {...FRAME} fill="url(#ink-dots)" />;
    case "ink":
      return <rect {...FRAME} fill="var(--ink)" />;
    case "line":
      return <path {...LINE} d="M0 8H32" stroke-width="2.5" />;
    case "dashed":
      return <rect {...FRAME} fill="none" stroke-dasharray="2 3" />;
    case "dashes":
      return <path {...LINE} d="M0 8H32" stroke-width="2.5" stroke-dasharray="6 4" />;
    case "thin":
      return <path {...LINE} d="M0 2L30 13M30 9V16" stroke-width="1" />;
    case "whisker":
      return (
        <g>
          <path {...LINE} d="M16 1V15M12 1H20M12 15H20" stroke-width="1.5" />
          <circle cx="16" cy="8" r="3.5" fill="var(--ink)" />
        </g>
      );
    case "dot":
      return <circle cx="16" cy="8" r="5" fill="var(--ink)" />;
    case "ring":
      return <circle cx="16" cy="8" r="4.5" fill="var(--paper)" stroke="var(--ink)" stroke-width="2" />;
    case "cross":
      return <path {...LINE} d="M11 3L21 13M21 3L11 13" stroke-width="2" />;
    case "stroke":
      return <path {...LINE} d="M16 0V16" stroke-width="2" />;
    case "bar":
      return <path {...LINE} d="M8 16V3H24V16" stroke-width="1.5" />;
  }
}

export function Legend({ of }: { of: readonly (readonly [Sign, string])[] }) {
  return (
    <ul class="legend">
      {of.map(([sign, word]) => (
        <li key={sign}>
          <svg width="32" height="16" aria-hidden="true">
            {drawn(sign)}
          </svg>{" "}
          {word}
        </li>
      ))}
    </ul>
  );
}
