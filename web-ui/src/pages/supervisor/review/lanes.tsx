/** The day as lanes over time: machines, their screens, lasers, people. A pattern and a word say what, never a hue. */
import { timeOfDay } from "../../../show";
import type { Lane, LaneWhat, Review } from "../../../wire";
import { t } from "../words";

const WIDE = 1000;
const LEFT = 120;
const TALL = 30;
const HOUR = 3_600_000;

/** How a span is drawn: plain, hatched, dotted, black, empty. */
type Fill = "plain" | "hatch" | "dots" | "black" | "empty";

function fill(what: LaneWhat): Fill {
  switch (what.kind) {
    case "does":
      return what.doing === "digging" ? "plain" : what.doing === "stopped" ? "black" : "hatch";
    case "showing":
    case "proven":
      return "plain";
    case "hidden":
    case "check_due":
    case "asks_in":
      return "dots";
    case "lost":
    case "in_doubt":
      return "black";
    case "in":
      return what.unconfirmed || what.lost ? "black" : "hatch";
    case "unproven":
      return "hatch";
    case "on_site":
      return "empty";
  }
}

export function wordOf(what: LaneWhat): string {
  const words = t();
  switch (what.kind) {
    case "does":
      return words.account.doing[what.doing];
    case "asks_in":
      return words.review.asksIn(what.machine);
    case "in":
      return words.review.isIn(what.machine, what.unconfirmed, what.lost);
    default:
      return words.review.spans[what.kind];
  }
}

interface LanesProps {
  review: Review;
  onReplay?: (at: number) => void;
  /** A moment that is marked by a line through all lanes. */
  at?: number;
}

export function Lanes({ review, onReplay, at }: LanesProps) {
  const words = t().review;
  const { from, to } = review;
  const x = (moment: number) => LEFT + ((moment - from) / Math.max(1, to - from)) * (WIDE - LEFT - 10);
  const hours: number[] = [];
  for (let hour = Math.ceil(from / HOUR) * HOUR; hour < to; hour += HOUR) hours.push(hour);
  const tall = review.lanes.length * TALL + 26;
  return (
    <figure class="lanes">
      <svg viewBox={`0 0 ${WIDE} ${tall}`} role="img" aria-label={words.lanes}>
        <defs>
          <pattern id="lane-hatch" width="8" height="8" patternUnits="userSpaceOnUse">
            <path d="M0 8L8 0M-2 2L2 -2M6 10L10 6" stroke="var(--ink)" stroke-width="2" />
          </pattern>
          <pattern id="lane-dots" width="7" height="7" patternUnits="userSpaceOnUse">
            <circle cx="3" cy="3" r="1.6" fill="var(--ink)" />
          </pattern>
        </defs>
        {hours.map((hour) => (
          <g key={hour}>
            <line class="lane-hour" x1={x(hour)} x2={x(hour)} y1={0} y2={tall - 20} />
            <text x={x(hour)} y={tall - 5} text-anchor="middle">
              {timeOfDay(hour)}
            </text>
          </g>
        ))}
        {review.lanes.map((lane, i) => (
          <OneLane
            key={`${lane.of.kind} ${lane.of.name}`}
            lane={lane}
            y={i * TALL}
            x={x}
            onReplay={onReplay}
          />
        ))}
        {at !== undefined && <line class="lane-now" x1={x(at)} x2={x(at)} y1={0} y2={tall - 20} />}
      </svg>
      <figcaption>{words.lanesNote}</figcaption>
    </figure>
  );
}

interface OneLaneProps {
  lane: Lane;
  y: number;
  x: (at: number) => number;
  onReplay: ((at: number) => void) | undefined;
}

function OneLane({ lane, y, x, onReplay }: OneLaneProps) {
  return (
    <g>
      <text x={4} y={y + TALL * 0.65}>
        {t().review.laneOf[lane.of.kind]} {lane.of.name}
      </text>
      {lane.spans.map((span) => {
        const wide = Math.max(1.5, x(span.to) - x(span.from));
        const word = wordOf(span.what);
        return (
          <g key={span.from} {...(onReplay ? { onClick: () => onReplay(span.from) } : {})}>
            <title>{`${timeOfDay(span.from)}–${timeOfDay(span.to)} ${word}`}</title>
            <rect
              class={`lane-span ${fill(span.what)}`}
              x={x(span.from)}
              width={wide}
              y={y + 4}
              height={TALL - 8}
            />
            {wide > word.length * 8 + 12 && fill(span.what) !== "black" && (
              <text class="lane-word" x={x(span.from) + 6} y={y + TALL * 0.65}>
                {word}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
