/** The day as lanes over time: machines, their screens, lasers, people, and what was out of the ordinary. They are what a replay is moved by: a press, a finger or the arrows set its moment, and at the right stands what each lane says then. */
import { useCallback, useState } from "preact/hooks";
import { said } from "../../../said";
import { timeOfDay } from "../../../show";
import type { LaneWhat, Review } from "../../../wire";
import { t } from "../words";
import { Chart, clockScale, DOTS, HATCH, INK, type Library, PAPER } from "./chart";

const LEFT = 152;
/** Room at the right for what a lane says at the moment. */
const RIGHT = 150;
const EDGE = 16;
/** Under the lanes: the hours. */
const HOURS = 26;
/** Narrower than this, the words of the spans have no room. */
const LEAST = 620;
/** The room that a letter of a span's word takes, CSS pixels. */
const LETTER = 8;
/** The finest step, ms: a call may be painted and pressed within a second. */
export const GRAIN = 250;

function fill(what: LaneWhat): string {
  switch (what.kind) {
    case "does":
      return what.doing === "digging" ? PAPER : what.doing === "stopped" ? INK : HATCH;
    case "showing":
    case "proven":
      return PAPER;
    case "hidden":
    case "check_due":
    case "asks_in":
      return DOTS;
    case "lost":
    case "in_doubt":
      return INK;
    case "in":
      return what.unconfirmed || what.lost ? INK : HATCH;
    case "unproven":
      return HATCH;
    case "on_site":
      return "none";
  }
}

function wordOf(what: LaneWhat): string {
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

const nameOf = (lane: Review["lanes"][number]) => `${t().review.laneOf[lane.of.kind]} ${lane.of.name}`;

/** What a lane says at a moment; nothing where nothing was known. */
export function saysAt(lane: Review["lanes"][number], at: number): string {
  const span = lane.spans.find((one) => one.from <= at && at < one.to) ?? lastOf(lane, at);
  return span ? wordOf(span.what) : "";
}

/** The last span still holds at its own end, where the day ends. */
function lastOf(lane: Review["lanes"][number], at: number) {
  const last = lane.spans[lane.spans.length - 1];
  return last && last.to === at ? last : undefined;
}

/** The last moment is one that the steps can stand on. */
export const endOf = (review: Review) => review.from + Math.ceil((review.to - review.from) / GRAIN) * GRAIN;

/** Whether a lane says more than that somebody was there. */
export const tells = (lane: Review["lanes"][number]) => lane.spans.some((one) => one.what.kind !== "on_site");

interface LanesProps {
  review: Review;
  /** Of its lanes these. */
  lanes?: Review["lanes"];
  /** The moment that is shown, when one is. */
  at?: number;
  /** How high a lane is, px. */
  tall?: number;
  /** The moment is moved to. */
  onMove?: (at: number) => void;
  /** A moment is chosen: by a press, or by Enter. */
  onPick?: (at: number) => void;
}

export function Lanes({ review, lanes = review.lanes, at, tall = 28, onMove, onPick }: LanesProps) {
  const words = t().review;
  const [marked, setMarked] = useState<number | null>(null);
  const shown = at ?? marked ?? review.from;
  const right = at === undefined ? EDGE : RIGHT;
  const draw = useLanes(review, lanes, tall, right);
  const high = (lanes.length + 1) * tall;
  const move = (moment: number) => {
    setMarked(moment);
    onMove?.(moment);
  };
  return (
    <Chart
      name={words.lanes}
      legend={[
        ["free", words.legend.free],
        ["hatch", words.legend.hatch],
        ["dots", words.legend.dots],
        ["ink", words.legend.ink],
      ]}
      draw={draw}
      least={LEAST}
      over={(width) => (
        <>
          <input
            type="range"
            class="lanes-at"
            style={{ left: `${LEFT}px`, width: `${width - LEFT - right}px`, height: `${high + HOURS}px` }}
            aria-label={words.slider}
            aria-valuetext={timeOfDay(shown, true)}
            min={review.from}
            max={endOf(review)}
            step={GRAIN}
            value={shown}
            onInput={(event) => move(Number(event.currentTarget.value))}
            onPointerUp={(event) => onPick?.(Number(event.currentTarget.value))}
            onKeyDown={(event) => {
              if (event.key === "Enter") onPick?.(Number(event.currentTarget.value));
            }}
          />
          <div
            class="lanes-now"
            style={{ left: `${LEFT + along(review, shown) * (width - LEFT - right)}px` }}
          />
          {at !== undefined && (
            <ul class="lanes-say" style={{ left: `${width - RIGHT + 8}px`, top: `${tall}px` }}>
              {lanes.map((lane) => (
                <li key={nameOf(lane)} style={{ height: `${tall}px` }}>
                  {saysAt(lane, Math.min(at, review.to))}
                </li>
              ))}
            </ul>
          )}
        </>
      )}
    />
  );
}

/** How far into the day a moment lies, 0 to 1. */
function along(review: Review, at: number): number {
  return Math.min(1, Math.max(0, (at - review.from) / Math.max(1, endOf(review) - review.from)));
}

/** One function for as long as it draws the same. */
function useLanes(review: Review, lanes: Review["lanes"], tall: number, right: number) {
  const words = t().review;
  return useCallback(
    ({ barX, gridX, text, tickX }: Library, width: number) => {
      const noted = words.legend.noted;
      const spans = lanes.flatMap((lane) =>
        lane.spans.map((span) => ({
          lane: nameOf(lane),
          from: new Date(span.from),
          to: new Date(span.to),
          fill: fill(span.what),
          word: wordOf(span.what),
        })),
      );
      const inner = width - LEFT - right;
      const wide = (one: (typeof spans)[number]) =>
        ((one.to.getTime() - one.from.getTime()) / Math.max(1, review.to - review.from)) * inner;
      return {
        height: (lanes.length + 1) * tall + HOURS,
        marginTop: 0,
        marginBottom: HOURS,
        marginLeft: LEFT,
        marginRight: right,
        style: { fontSize: `${Math.min(14, tall - 4)}px` },
        x: { ...clockScale(review.from, endOf(review)), ticks: Math.floor(inner / 80) },
        // A lane is as high as what stands beside it says it is.
        y: {
          domain: [noted, ...lanes.map(nameOf)],
          paddingInner: 0.2,
          paddingOuter: 0.1,
          round: false,
          label: null,
          tickSize: 0,
        },
        marks: [
          gridX({ stroke: INK, strokeOpacity: 1, strokeWidth: 0.5 }),
          ...[PAPER, "none", HATCH, DOTS, INK].map((ink) =>
            barX(
              spans.filter((one) => one.fill === ink),
              { y: "lane", x1: "from", x2: "to", fill: ink, stroke: INK, strokeWidth: 1.5 },
            ),
          ),
          tickX(review.exceptions, {
            x: (one: Review["exceptions"][number]) => new Date(one.said.at),
            y: () => noted,
            stroke: INK,
            strokeWidth: 3,
            title: (one: Review["exceptions"][number]) => `${timeOfDay(one.said.at)} ${said(one.said)}`,
          }),
          text(
            spans.filter((one) => one.fill !== INK && wide(one) > one.word.length * LETTER + 12),
            {
              y: "lane",
              x: "from",
              text: "word",
              textAnchor: "start",
              dx: 6,
              stroke: PAPER,
              strokeWidth: 5,
              fill: INK,
            },
          ),
        ],
      };
    },
    [review, lanes, tall, right, words],
  );
}
