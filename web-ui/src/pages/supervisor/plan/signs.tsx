/** The signs of marks on the desk's plan, from the cab's own section: the thick line is the target, soil above it is solid, what is
 * missing below it hollow; flush ground is hatched. No hue. */
import { t } from "../words";
import type { Standing } from "./things";

/** How far a sign reaches from its mark, px. */
export const REACH = 9;

export function Sign({ of }: { of: Standing }) {
  switch (of) {
    case "unread":
      return <path class="sign-line" d="M-6 0H6M0 -6V6" />;
    case "spot":
      return (
        <g>
          <path class="sign-line thin" d="M-4 0H4M0 -4V4" />
          <circle class="sign-hollow" r="7" />
        </g>
      );
    case "again":
      return (
        <g>
          <path class="sign-line thin" d="M-4 0H4M0 -4V4" />
          <circle class="sign-hollow dotted" r="8" />
        </g>
      );
    case "high":
      return (
        <g>
          <path class="sign-solid" d="M-7 1A7 7.5 0 0 1 7 1Z" />
          <path class="sign-line" d="M-9 2H9" />
        </g>
      );
    case "low":
      return (
        <g>
          <path class="sign-hollow" d="M-7 0A7 7.5 0 0 0 7 0" />
          <path class="sign-line" d="M-9 -1H9" />
        </g>
      );
    case "too_close_high":
      return (
        <g>
          <path class="sign-hollow dashed" d="M-7 1A7 7.5 0 0 1 7 1" />
          <path class="sign-line" d="M-9 2H9" />
        </g>
      );
    case "too_close_low":
      return (
        <g>
          <path class="sign-hollow dashed" d="M-7 0A7 7.5 0 0 0 7 0" />
          <path class="sign-line" d="M-9 -1H9" />
        </g>
      );
    case "on":
      return (
        <g>
          <path class="sign-line" d="M-9 -2H9" />
          <path class="sign-line thin" d="M-7 4L-3 -1M-2 4L2 -1M3 4L7 -1" />
        </g>
      );
  }
}

/** A benchmark: a point on a foot. */
export function BenchmarkSign() {
  return <path class="sign-hollow" d="M0 -7L6 5H-6ZM0 -1V1" />;
}

/** What the signs mean, each beside its word. */
export function Legend() {
  const words = t().desk;
  const shown: [Standing, string][] = [
    ["high", words.signs.high],
    ["on", words.signs.on],
    ["low", words.signs.low],
    ["too_close_high", words.signs.too_close],
    ["again", words.signs.again],
    ["unread", words.signs.unread],
    ["spot", words.signs.spot],
  ];
  return (
    <ul class="legend" aria-label={words.legend}>
      {shown.map(([of, name]) => (
        <li key={of}>
          <svg viewBox="-11 -11 22 22" aria-hidden="true">
            <Sign of={of} />
          </svg>
          {name}
        </li>
      ))}
    </ul>
  );
}
