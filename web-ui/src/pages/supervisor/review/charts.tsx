/** Charts of a day, drawn in ink: what is far from its target, how a bottom came down, how long a call took. */
import { FOOT } from "../../../grade";
import { timeOfDay } from "../../../show";
import type { MarkHistory, Review, Sheet } from "../../../wire";
import { t } from "../words";

const WIDE = 640;
const TALL = 240;
const LEFT = 52;
const BELOW = 34;

/** Counts of final differences in bars of half a tenth; each bar says its count. */
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
  const found = bars(review.built.flatMap((one) => (one.mean == null ? [] : [one.mean])));
  if (found.size === 0) return <p>{words.none}</p>;
  const first = Math.min(-2, ...found.keys());
  const last = Math.max(2, ...found.keys());
  const most = Math.max(...found.values());
  const wide = (WIDE - 20) / (last - first + 1);
  const x = (bar: number) => 10 + (bar - first) * wide;
  const all = Array.from({ length: last - first + 1 }, (_, i) => first + i);
  return (
    <figure class="chart">
      <svg viewBox={`0 0 ${WIDE} ${TALL}`} role="img" aria-label={words.differences}>
        {all.map((bar) => {
          const many = found.get(bar) ?? 0;
          const tall = (many / most) * (TALL - BELOW - 30);
          return (
            <g key={bar}>
              {many > 0 && (
                <rect class="bar" x={x(bar) + 2} width={wide - 4} y={TALL - BELOW - tall} height={tall} />
              )}
              {many > 0 && (
                <text x={x(bar) + wide / 2} y={TALL - BELOW - tall - 5} text-anchor="middle">
                  {many}
                </text>
              )}
              <text x={x(bar) + wide / 2} y={TALL - 14} text-anchor="middle">
                {(bar / 20).toFixed(2)}
              </text>
            </g>
          );
        })}
        <line class="axis" x1={8} x2={WIDE - 8} y1={TALL - BELOW} y2={TALL - BELOW} />
        <line class="axis dashed" x1={x(0) + wide / 2} x2={x(0) + wide / 2} y1={8} y2={TALL - BELOW} />
      </svg>
      <figcaption>{words.differencesNote}</figcaption>
    </figure>
  );
}

/** The readings of a mark over time; from each that was HIGH a thin line to when the hub expected the bottom at grade. */
export function Depth({ mark, sheet }: { mark: MarkHistory; sheet: Sheet | null }) {
  const words = t().review;
  const shots = mark.readings.flatMap((one) => (one.dev == null ? [] : [{ ...one, dev: one.dev / FOOT }]));
  const allowed = sheet?.marks.find((one) => one.id === mark.mark)?.tolerance;
  const high = (allowed?.high ?? 0) / FOOT;
  const low = (allowed?.low ?? 0) / FOOT;
  const arrivals = shots.flatMap((one) => (one.arrives == null ? [] : [one.arrives]));
  const times = [...shots.map((one) => one.at), ...arrivals];
  const [from, to] = [Math.min(...times), Math.max(...times)];
  const top = Math.max(high, ...shots.map((one) => one.dev)) + 0.1;
  const bottom = Math.min(-low, ...shots.map((one) => one.dev)) - 0.1;
  const x = (at: number) => LEFT + ((at - from) / Math.max(1, to - from)) * (WIDE - LEFT - 30);
  const y = (dev: number) => 10 + ((top - dev) / (top - bottom)) * (TALL - 10 - BELOW);
  const taken = shots.filter((one) => one.became === "taken");
  return (
    <figure class="chart">
      <svg viewBox={`0 0 ${WIDE} ${TALL}`} role="img" aria-label={`${words.depth} ${mark.mark}`}>
        <rect class="band" x={LEFT} width={WIDE - LEFT - 10} y={y(high)} height={y(-low) - y(high)} />
        <line class="axis" x1={LEFT} x2={WIDE - 10} y1={y(0)} y2={y(0)} />
        <text x={LEFT - 6} y={y(0) + 4} text-anchor="end">
          0
        </text>
        <text x={LEFT - 6} y={y(top - 0.1) + 4} text-anchor="end">
          {`${top - 0.1 > 0 ? "+" : ""}${(top - 0.1).toFixed(2)}`}
        </text>
        <polyline class="curve" points={taken.map((one) => `${x(one.at)},${y(one.dev)}`).join(" ")} />
        {taken.map(
          (one) =>
            one.arrives != null && (
              <g key={`arrives ${one.seq}`}>
                <line class="thin" x1={x(one.at)} y1={y(one.dev)} x2={x(one.arrives)} y2={y(0)} />
                <path
                  class="axis"
                  d={`M${x(one.arrives)} ${y(0) - 7}v14`}
                  aria-label={timeOfDay(one.arrives)}
                />
              </g>
            ),
        )}
        {shots.map((one) => (
          <g key={one.seq}>
            <title>{`${timeOfDay(one.at)} ${one.by} ${one.text}`}</title>
            {one.became === "taken" ? (
              <circle class="point" cx={x(one.at)} cy={y(one.dev)} r={5} />
            ) : (
              <path class="axis" d={`M${x(one.at) - 5} ${y(one.dev) - 5}l10 10m0 -10l-10 10`} />
            )}
          </g>
        ))}
        <text x={LEFT} y={TALL - 8}>
          {timeOfDay(from)}
        </text>
        <text x={WIDE - 10} y={TALL - 8} text-anchor="end">
          {timeOfDay(to)}
        </text>
      </svg>
      <figcaption>{words.depthNote}</figcaption>
    </figure>
  );
}

/** A call that took longer stands at the upper edge, with its seconds. */
const LONGEST = 30;

/** Each call: a stroke up to when it was painted, a ring when it was acknowledged. */
export function Delays({ review }: { review: Review }) {
  const words = t().review;
  const { from, to } = review;
  const x = (at: number) => LEFT + ((at - from) / Math.max(1, to - from)) * (WIDE - LEFT - 20);
  const y = (seconds: number) => TALL - BELOW - (Math.min(seconds, LONGEST) / LONGEST) * (TALL - BELOW - 24);
  const since = (at: number | null | undefined, sent: number) => (at == null ? null : (at - sent) / 1_000);
  return (
    <figure class="chart">
      <svg viewBox={`0 0 ${WIDE} ${TALL}`} role="img" aria-label={words.delays}>
        {[0, 10, 20, 30].map((seconds) => (
          <g key={seconds}>
            <line class="thin" x1={LEFT} x2={WIDE - 10} y1={y(seconds)} y2={y(seconds)} />
            <text x={LEFT - 6} y={y(seconds) + 4} text-anchor="end">
              {seconds} s
            </text>
          </g>
        ))}
        {review.calls.map((call) => {
          const shown = since(call.shown_at, call.sent_at);
          const got = since(call.got_at, call.sent_at);
          const at = x(call.sent_at);
          return (
            <g key={call.call}>
              <title>{`${timeOfDay(call.sent_at, true)} ${call.machine} ${call.mark ?? ""} ${call.english}`}</title>
              {shown === null ? (
                <path class="axis" d={`M${at - 4} ${y(0) + 4}l8 8m0 -8l-8 8`} />
              ) : (
                <line class="curve" x1={at} x2={at} y1={y(0)} y2={y(shown)} />
              )}
              {got !== null && <circle class="point" cx={at} cy={y(got)} r={4} />}
              {got !== null && got > LONGEST && (
                <text x={at} y={12} text-anchor="middle">
                  {got.toFixed(0)}
                </text>
              )}
            </g>
          );
        })}
        <text x={LEFT} y={TALL - 6}>
          {timeOfDay(from)}
        </text>
        <text x={WIDE - 10} y={TALL - 6} text-anchor="end">
          {timeOfDay(to)}
        </text>
      </svg>
      <figcaption>{words.delaysNote}</figcaption>
    </figure>
  );
}
