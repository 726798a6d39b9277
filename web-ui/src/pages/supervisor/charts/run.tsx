/** A run along its stations: what to dig to, what is allowed either way, each last reading with a whisker for how sure it is. */
import { useCallback } from "preact/hooks";
import { FOOT } from "../../../grade";
import { shownNumber } from "../../../show";
import type { Review, Sheet, SiteTarget } from "../../../wire";
import { t } from "../words";
import { Chart, INK, type Library } from "./chart";
import { stands } from "./differences";

/** Names of neighbours stand in so many rows, so that none lies on another. */
const ROWS = 3;
const ROW = 14;

interface RunProps {
  target: SiteTarget;
  sheet: Pick<Sheet, "marks" | "drawn">;
  built: Review["built"];
}

export function Run({ target, sheet, built }: RunProps) {
  const words = t().review;
  const draw = useCallback(
    ({ areaY, dot, line, link, ruleX, text }: Library, width: number) => {
      const profile = sheet.drawn.find((one) => one.id === target.id)?.drawn.profile ?? [];
      const along = profile.map((one) => ({ station: one.station / FOOT, at: one.dig_to / FOOT }));
      const [high, low] = [target.tolerance.high / FOOT, target.tolerance.low / FOOT];
      const shots = sheet.marks
        .flatMap((mark) => {
          const last = built.find((one) => one.mark === mark.id && one.target === target.id);
          if (!last || mark.station == null) return [];
          const at = last.elevation / FOOT;
          const guard = (last.guard ?? 0) / FOOT;
          return [
            {
              mark: stands(last) ? mark.id : `${mark.id}?`,
              station: mark.station / FOOT,
              at,
              up: at + guard,
              down: at - guard,
            },
          ];
        })
        .sort((one, other) => one.station - other.station);
      const heights = [
        ...along.flatMap((one) => [one.at + high, one.at - low]),
        ...shots.flatMap((s) => [s.up, s.down]),
      ];
      const cap = Math.max(1e-6, ((along[along.length - 1]?.station ?? 0) - (along[0]?.station ?? 0)) / 150);
      const caps = shots.flatMap((one) => [one.up, one.down].map((y) => ({ x: one.station, y })));
      const rows = Array.from({ length: ROWS }, (_, row) => shots.filter((_shot, i) => i % ROWS === row));
      return {
        height: 300,
        marginTop: ROW * (ROWS + 1),
        marginLeft: 64,
        x: { inset: 10, ticks: Math.max(3, Math.floor(width / 90)), label: null },
        y: {
          domain: [Math.min(...heights) - 0.05, Math.max(...heights) + 0.05],
          ticks: 6,
          tickFormat: (at: number) => shownNumber(at, 2),
          label: null,
        },
        marks: [
          areaY(along, {
            x: "station",
            y1: (one) => one.at - low,
            y2: (one) => one.at + high,
            fill: "none",
            stroke: INK,
            strokeDasharray: "2 3",
          }),
          line(along, { x: "station", y: "at", stroke: INK, strokeWidth: 2.5 }),
          ruleX(shots, { x: "station", y1: "down", y2: "up", stroke: INK, strokeWidth: 1.5 }),
          link(caps, {
            x1: (one) => one.x - cap,
            x2: (one) => one.x + cap,
            y: "y",
            stroke: INK,
            strokeWidth: 1.5,
          }),
          dot(shots, { x: "station", y: "at", r: 4, fill: INK }),
          ...rows.map((row, i) =>
            text(row, {
              x: "station",
              text: "mark",
              frameAnchor: "top",
              dy: -ROW * (i + 1),
              fontWeight: "bold",
              title: (one) => `${one.mark} ${shownNumber(one.at, 2)}`,
            }),
          ),
        ],
      };
    },
    [target, sheet, built],
  );
  return (
    <Chart
      name={t().profileOf(target.name)}
      note={`${target.name}. ${words.runNote}`}
      legend={[
        ["line", words.legend.target],
        ["dashed", words.legend.allowed],
        ["whisker", words.legend.sure],
      ]}
      draw={draw}
    />
  );
}
