/** How long each call took: a stroke up to when it was painted, a ring when it was acknowledged. */
import { useCallback } from "preact/hooks";
import { timeOfDay } from "../../../show";
import type { Review } from "../../../wire";
import { t } from "../words";
import { Chart, clockScale, INK, type Library, PAPER } from "./chart";

/** A call that took longer stands at the upper edge, with its seconds. */
const LONGEST = 30;

export function Delays({ review }: { review: Review }) {
  const words = t().review;
  const draw = useCallback(
    ({ dot, gridY, ruleX, ruleY, text }: Library) => {
      const since = (at: number | null | undefined, sent: number) =>
        at == null ? null : (at - sent) / 1_000;
      const calls = review.calls.map((call) => ({
        when: new Date(call.sent_at),
        shown: since(call.shown_at, call.sent_at),
        got: since(call.got_at, call.sent_at),
        title: `${timeOfDay(call.sent_at, true)} ${call.machine} ${call.mark ?? ""} ${call.english}`,
      }));
      const shown = calls.filter((one) => one.shown !== null);
      const got = calls.filter((one) => one.got !== null);
      const capped = (seconds: number | null) => Math.min(seconds ?? 0, LONGEST);
      return {
        height: 260,
        x: { ...clockScale(review.from, review.to), inset: 6 },
        y: { domain: [0, LONGEST], ticks: 3, tickFormat: (s: number) => `${s} s`, label: null },
        marks: [
          gridY({ ticks: 3, stroke: INK, strokeOpacity: 1, strokeWidth: 0.5 }),
          ruleY([0], { stroke: INK, strokeWidth: 2 }),
          ruleX(shown, {
            x: "when",
            y1: 0,
            y2: (one) => capped(one.shown),
            stroke: INK,
            strokeWidth: 2,
            title: "title",
          }),
          dot(got, {
            x: "when",
            y: (one) => capped(one.got),
            r: 4,
            fill: PAPER,
            stroke: INK,
            strokeWidth: 2,
            title: "title",
          }),
          dot(
            calls.filter((one) => one.shown === null),
            { x: "when", y: 0, dy: 8, r: 5, symbol: "times", stroke: INK, strokeWidth: 2, title: "title" },
          ),
          text(
            got.filter((one) => (one.got ?? 0) > LONGEST),
            { x: "when", y: LONGEST, dy: -12, text: (one) => one.got?.toFixed(0) ?? "" },
          ),
        ],
      };
    },
    [review],
  );
  return (
    <Chart
      name={words.delays}
      note={words.delaysNote}
      legend={[
        ["stroke", words.legend.painted],
        ["ring", words.legend.gotIt],
        ["cross", words.legend.neverPainted],
      ]}
      draw={draw}
    />
  );
}
