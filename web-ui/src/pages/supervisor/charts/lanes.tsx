/** The day as lanes over time: machines, their screens, lasers, people. A pattern and a word say what, never a hue. */
import { useCallback } from "preact/hooks";
import { timeOfDay } from "../../../show";
import type { LaneWhat, Review } from "../../../wire";
import { t } from "../words";
import { Chart, clockScale, DOTS, HATCH, INK, type Library, PAPER } from "./chart";

const TALL = 30;
const LEFT = 120;
/** Narrower than this, the words of the spans have no room. */
const LEAST = 620;
/** The room that a letter of a span's word takes, CSS pixels. */
const LETTER = 8;

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

interface LanesProps {
  review: Review;
  onReplay?: (at: number) => void;
  /** A moment that is marked by a line through all lanes. */
  at?: number;
}

export function Lanes({ review, onReplay, at }: LanesProps) {
  const words = t().review;
  const pressed = onReplay !== undefined;
  const draw = useCallback(
    ({ barX, gridX, text }: Library, width: number) => {
      const nameOf = (lane: Review["lanes"][number]) => `${words.laneOf[lane.of.kind]} ${lane.of.name}`;
      const spans = review.lanes.flatMap((lane) =>
        lane.spans.map((span) => ({
          lane: nameOf(lane),
          from: new Date(span.from),
          to: new Date(span.to),
          fill: fill(span.what),
          word: wordOf(span.what),
        })),
      );
      const wide = (one: (typeof spans)[number]) =>
        ((one.to.getTime() - one.from.getTime()) / Math.max(1, review.to - review.from)) * (width - LEFT);
      return {
        height: review.lanes.length * TALL + 34,
        marginTop: 4,
        marginBottom: 30,
        marginLeft: LEFT,
        x: { ...clockScale(review.from, review.to), ticks: Math.floor(width / 80) },
        y: { domain: review.lanes.map(nameOf), padding: 0.2, label: null, tickSize: 0 },
        marks: [
          gridX({ stroke: INK, strokeOpacity: 1, strokeWidth: 0.5 }),
          ...[PAPER, "none", HATCH, DOTS, INK].map((ink) =>
            barX(
              spans.filter((one) => one.fill === ink),
              {
                y: "lane",
                x1: "from",
                x2: "to",
                fill: ink,
                stroke: INK,
                strokeWidth: 1.5,
                title: (one) => `${timeOfDay(one.from.getTime())}–${timeOfDay(one.to.getTime())} ${one.word}`,
                ...(pressed ? { href: (one) => `#${one.from.getTime()}` } : {}),
              },
            ),
          ),
          text(
            spans.filter((one) => one.fill !== INK && wide(one) > one.word.length * LETTER + 12),
            {
              y: "lane",
              x: "from",
              text: "word",
              textAnchor: "start",
              dx: 6,
              stroke: PAPER,
              strokeWidth: 6,
              fill: INK,
              pointerEvents: "none",
            },
          ),
        ],
      };
    },
    [review, pressed, words],
  );
  return (
    <Chart
      name={words.lanes}
      note={words.lanesNote}
      draw={draw}
      least={LEAST}
      now={at}
      onPress={onReplay && ((what) => onReplay(Number(what)))}
    />
  );
}
