/** How far the marks ended from their targets: counts in bars of half a tenth, each with its count. */
import { useCallback } from "preact/hooks";
import { FOOT } from "../../../grade";
import { shownNumber } from "../../../show";
import type { Review } from "../../../wire";
import { t } from "../words";
import { Chart, INK, type Library, PAPER } from "./chart";

/** Whether a last reading still speaks for its mark: what was before a change is no final difference. */
export function stands(one: Review["built"][number]): boolean {
  return !one.changed && one.void == null && one.doubt !== "open";
}

/** Counts of final differences in bars of half a tenth. */
export function bars(devs: readonly number[]): Map<number, number> {
  const found = new Map<number, number>();
  for (const dev of devs) {
    // A bar below the target has no sign of its own at zero.
    const bar = Math.round(dev / (FOOT / 20)) + 0;
    found.set(bar, (found.get(bar) ?? 0) + 1);
  }
  return found;
}

export function Differences({ review }: { review: Review }) {
  const words = t().review;
  const draw = useCallback(
    ({ rectY, ruleX, ruleY, text }: Library, width: number) => {
      const found = bars(review.built.flatMap((one) => (one.mean == null || !stands(one) ? [] : [one.mean])));
      const counts = [...found].map(([bar, many]) => ({ at: bar / 20, many }));
      const ends = [-0.1, 0.1, ...counts.map((one) => one.at)];
      return {
        height: 240,
        marginLeft: 40,
        x: {
          domain: [Math.min(...ends) - 0.025, Math.max(...ends) + 0.025],
          ticks: Math.max(3, Math.floor(width / 90)),
          tickFormat: (feet: number) => shownNumber(feet, 2),
          label: null,
        },
        y: { ticks: 4, label: null },
        marks: [
          rectY(counts, {
            x1: (one) => one.at - 0.025,
            x2: (one) => one.at + 0.025,
            y: "many",
            insetLeft: 2,
            insetRight: 2,
            fill: "none",
            stroke: INK,
            strokeWidth: 1.5,
          }),
          ruleX([0], { stroke: INK, strokeDasharray: "6 4", strokeWidth: 2 }),
          text(counts, {
            x: "at",
            y: "many",
            text: (one) => String(one.many),
            dy: -10,
            stroke: PAPER,
            strokeWidth: 6,
            fill: INK,
          }),
          ruleY([0], { stroke: INK, strokeWidth: 2 }),
        ],
      };
    },
    [review],
  );
  if (review.built.every((one) => one.mean == null)) return <p>{words.none}</p>;
  return (
    <Chart
      name={words.differences}
      note={words.differencesNote}
      legend={[
        ["bar", words.legend.howMany],
        ["dashes", words.legend.onTarget],
      ]}
      draw={draw}
    />
  );
}
