/** The readings of a mark over time; from each that was HIGH a thin line to when the hub expected the bottom at grade. */
import { useCallback } from "preact/hooks";
import { FOOT } from "../../../grade";
import { shownNumber, timeOfDay } from "../../../show";
import type { MarkHistory, Sheet } from "../../../wire";
import { t } from "../words";
import { Chart, clockScale, INK, type Library } from "./chart";

export function Depth({ mark, sheet }: { mark: MarkHistory; sheet: Sheet | null }) {
  const words = t().review;
  const draw = useCallback(
    ({ dot, line, link, rectY, ruleX, ruleY }: Library) => {
      const shots = mark.readings.flatMap((one) =>
        one.dev == null ? [] : [{ ...one, dev: one.dev / FOOT, when: new Date(one.at) }],
      );
      const taken = shots.filter((one) => one.became === "taken");
      const awaited = taken.flatMap((one) =>
        one.arrives == null ? [] : [{ from: one.when, dev: one.dev, to: new Date(one.arrives) }],
      );
      const allowed = sheet?.marks.find((one) => one.id === mark.mark)?.tolerance;
      const [high, low] = [(allowed?.high ?? 0) / FOOT, -(allowed?.low ?? 0) / FOOT];
      const times = [...shots.map((one) => one.at), ...awaited.map((one) => one.to.getTime())];
      const [first, last] = [Math.min(...times), Math.max(...times)];
      const devs = [high, low, ...shots.map((one) => one.dev)];
      const said = (one: (typeof shots)[number]) => `${timeOfDay(one.at)} ${one.by} ${one.text}`;
      return {
        height: 260,
        marginLeft: 60,
        x: { ...clockScale(first, last), inset: 8 },
        y: {
          domain: [Math.min(...devs) - 0.1, Math.max(...devs) + 0.1],
          ticks: 5,
          tickFormat: (feet: number) => `${feet > 0 ? "+" : ""}${shownNumber(feet, 2)}`,
          label: null,
        },
        marks: [
          rectY([0], {
            x1: new Date(first),
            x2: new Date(last),
            y1: low,
            y2: high,
            fill: "none",
            stroke: INK,
            strokeDasharray: "2 3",
          }),
          ruleY([0], { stroke: INK, strokeWidth: 2 }),
          line(taken, { x: "when", y: "dev", stroke: INK, strokeWidth: 2 }),
          link(awaited, { x1: "from", y1: "dev", x2: "to", y2: 0, stroke: INK, strokeWidth: 0.8 }),
          ruleX(awaited, { x: "to", y1: -0.03, y2: 0.03, stroke: INK, strokeWidth: 2 }),
          dot(taken, { x: "when", y: "dev", r: 5, fill: INK, title: said }),
          dot(
            shots.filter((one) => one.became !== "taken"),
            { x: "when", y: "dev", r: 6, symbol: "times", stroke: INK, strokeWidth: 2, title: said },
          ),
        ],
      };
    },
    [mark, sheet],
  );
  return (
    <Chart
      name={`${words.depth} ${mark.mark}`}
      note={words.depthNote}
      legend={[
        ["dot", words.legend.taken],
        ["cross", words.legend.notTaken],
        ["dashed", words.legend.allowed],
        ["thin", words.legend.expected],
      ]}
      draw={draw}
    />
  );
}
