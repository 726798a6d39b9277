/** Cost over where the mean lands: a full line for soil, dashes for rock, the least of each marked. */
import { useCallback } from "preact/hooks";
import { money } from "../../../amounts";
import { FOOT } from "../../../grade";
import { signed } from "../../../show";
import type { Advice } from "../../../wire";
import { t } from "../words";
import { Chart, INK, type Library, PAPER } from "./chart";

interface AimProps {
  soil: Advice;
  rock: Advice | null;
  /** The sign of the user's money. */
  sign: string | undefined;
}

export function AimCurve({ soil, rock, sign }: AimProps) {
  const draw = useCallback(
    ({ dot, line, ruleX, ruleY, text }: Library, width: number) => {
      const curve = (of: Advice | null) =>
        (of?.curve ?? []).map((one) => ({ at: one.at / FOOT, cost: one.cost }));
      // Rock costs more: its figure stands over its curve, that of soil under it.
      const least = (of: Advice | null, dy: number) =>
        text(of ? [of] : [], {
          x: (one: Advice) => one.mean / FOOT,
          y: "cost",
          text: (one: Advice) => signed(one.mean),
          textAnchor: "start",
          fontWeight: "bold",
          dx: 9,
          dy,
        });
      return {
        height: 240,
        marginLeft: 60,
        marginRight: 26,
        x: {
          ticks: width < 420 ? 3 : 6,
          tickFormat: (at: number) =>
            Math.abs(at) < 1e-9 ? "0" : `${at < 0 ? "−" : "+"}${Math.abs(at).toFixed(2)}`,
          label: null,
        },
        y: {
          zero: true,
          ticks: 3,
          tickFormat: (cost: number) => money(cost, sign).replace(/\.\d+$/, ""),
          label: null,
        },
        marks: [
          ruleY([0], { stroke: INK, strokeWidth: 2 }),
          ruleX([0], { stroke: INK, strokeWidth: 0.6 }),
          line(curve(soil), { x: "at", y: "cost", stroke: INK, strokeWidth: 2.5 }),
          line(curve(rock), { x: "at", y: "cost", stroke: INK, strokeWidth: 2.5, strokeDasharray: "6 4" }),
          dot([soil, ...(rock ? [rock] : [])], {
            x: (one: Advice) => one.mean / FOOT,
            y: "cost",
            r: 5,
            fill: PAPER,
            stroke: INK,
            strokeWidth: 2.5,
          }),
          least(soil, 14),
          least(rock, -12),
        ],
      };
    },
    [soil, rock, sign],
  );
  const words = t().account;
  const { legend } = t().review;
  return (
    <Chart
      name={words.curve}
      note={words.curve}
      legend={[
        ["line", legend.soil],
        ...(rock ? ([["dashes", legend.rock]] as const) : []),
        ["ring", legend.least],
      ]}
      draw={draw}
    />
  );
}
