/** The profile of a run: what to dig to along the line, what is allowed either way, the last reading on each mark; of a face, its
 * toe, and the section square to it. */
import { useState } from "preact/hooks";
import { FOOT } from "../grade";
import { feet, shownNumber, signed } from "../show";
import type { Ground, MarkCard, ProfilePoint, SectionPoint, Sheet, SiteTarget } from "../wire";
import { t } from "../words_later";
import { Key } from "./keys";
import { gone } from "./last";

/** Heights are drawn this many times larger than lengths, so that a tenth can be seen. */
const TALLER = 6;
/** The profile is drawn so many times wider than the page at most. */
const MOST_WIDE = 8;

interface ProfileProps {
  target: SiteTarget;
  sheet: Pick<Sheet, "marks" | "drawn">;
  ground: Pick<Ground, "marks"> | null;
  /** Whether the readings stand under it as a table; not where the page lists them with more. */
  table?: boolean;
}

interface Shot {
  id: string;
  station: number;
  elevation: number;
  last: MarkCard;
}

export function Profile({ target, sheet, ground, table = true }: ProfileProps) {
  const words = t();
  const [wide, setWide] = useState(1);
  const drawn = sheet.drawn.find((one) => one.id === target.id)?.drawn;
  const profile = drawn?.profile ?? [];
  const first = profile[0];
  const end = profile[profile.length - 1];
  if (!first || !end) return null;
  const from = first.station / FOOT;
  const shots: Shot[] = sheet.marks
    .filter((mark) => mark.target === target.id)
    .flatMap((mark) => {
      const last = ground?.marks.find((one) => one.id === mark.id);
      if (!last || mark.station == null) return [];
      const station = mark.station / FOOT;
      return [{ id: mark.id, station, elevation: last.elevation / FOOT, last }];
    });
  const long = end.station / FOOT - from;
  const all = [...profile.map((one) => one.dig_to / FOOT), ...shots.map((one) => one.elevation)];
  const high = Math.max(...all) + 0.6;
  const low = Math.min(...all) - 0.6;
  const y = (elevation: number) => (high - elevation) * TALLER;
  const size = long / 34;
  const height = (high - low) * TALLER;
  const path = (off: number) =>
    profile.map((one) => `${one.station / FOOT - from},${y((one.dig_to + off) / FOOT)}`).join(" ");
  // Figures stand where they have room: along a vertical curve the points lie close.
  const stations = apart(profile, (one) => one.station / FOOT, size * 4);
  const heightOf = (one: ProfilePoint) => y(one.dig_to / FOOT);
  const heights = apart(profile, heightOf, size * 1.2);
  const shown = new Set(heights.map((one) => one.dig_to));
  const others = apart(
    profile.filter((one) => !shown.has(one.dig_to)),
    heightOf,
    size * 1.2,
  );
  return (
    <figure class="profile">
      <div class="plan-keys">
        <Key label={words.closer} onPress={() => setWide(Math.min(MOST_WIDE, wide * 2))}>
          +
        </Key>
        <Key label={words.farther} onPress={() => setWide(Math.max(1, wide / 2))}>
          −
        </Key>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls can be reached by keys. */}
      <div class="profile-window" tabIndex={0}>
        <svg
          style={wide > 1 ? { width: `${wide * 100}%`, maxHeight: "none" } : {}}
          viewBox={`${-size * 5} ${-size * 2} ${long + size * (others.length > 0 ? 11 : 7)} ${height + size * 5}`}
          role="img"
          aria-label={words.profileOf(target.name)}
        >
          <polyline class="profile-band" points={path(target.tolerance.high)} />
          <polyline class="profile-band" points={path(-target.tolerance.low)} />
          <polyline class="profile-target" points={path(0)} />
          {[...heights, ...others].map((one, i) => (
            <text
              key={one.dig_to}
              x={i < heights.length ? -size * 5 : long + size}
              y={heightOf(one) + size * 0.4}
              font-size={size * 1.1}
            >
              {feet(one.dig_to)}
            </text>
          ))}
          {stations.map((one) => (
            <text
              key={one.station}
              x={one.station / FOOT - from}
              y={height + size * 2}
              font-size={size * 1.1}
              text-anchor={one === end ? "end" : "start"}
            >
              {feet(one.station, 0)}
            </text>
          ))}
          {shots.map((shot) => (
            <g
              key={shot.id}
              class={gone(shot.last) ? "gone" : ""}
              transform={`translate(${shot.station - from} ${y(shot.elevation)})`}
            >
              <path class="profile-shot" d={`M${-size / 2} 0H${size / 2}M0 ${-size / 2}V${size / 2}`} />
              <text y={-size} font-size={size} text-anchor="middle">
                {shot.id}
                {gone(shot.last) && "?"}
              </text>
            </g>
          ))}
        </svg>
      </div>
      <figcaption>{words.profileNote(String(TALLER))}</figcaption>
      {drawn?.section && <Section corners={drawn.section} name={target.name} />}
      {table && (
        <table class="profile-table">
          <tbody>
            {shots.map((shot) => (
              <tr key={shot.id}>
                <th scope="row">{shot.id}</th>
                <td>{shownNumber(shot.station, 1)}</td>
                <td>{shownNumber(shot.elevation, 2)}</td>
                <td>{gone(shot.last) || (shot.last.dev == null ? "" : `${signed(shot.last.dev)} ft`)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </figure>
  );
}

/** The first, the last, and of those between the ones that stand this far from each that is kept. */
export function apart<T>(all: readonly T[], at: (one: T) => number, gap: number): T[] {
  const [first, ...rest] = all;
  const last = rest.pop();
  if (first === undefined) return [];
  const kept: T[] = [first];
  for (const one of last === undefined ? rest : [last, ...rest]) {
    if (kept.every((other) => Math.abs(at(other) - at(one)) >= gap)) kept.push(one);
  }
  return kept;
}

/** A face square to its toe: its corners with how far out and how far up they stand. */
function Section({ corners, name }: { corners: readonly SectionPoint[]; name: string }) {
  const words = t();
  const wide = Math.max(...corners.map((one) => one.out)) / FOOT;
  const tall = Math.max(...corners.map((one) => one.up)) / FOOT;
  const size = Math.max(wide, tall, 1) / 16;
  const at = (one: SectionPoint) => ({ x: one.out / FOOT, y: tall - one.up / FOOT });
  return (
    <>
      <svg
        class="section"
        viewBox={`${-size} ${-size} ${wide + size * 8} ${tall + size * 3}`}
        role="img"
        aria-label={words.sectionOf(name)}
      >
        <polyline
          class="profile-target"
          points={corners.map((one) => `${at(one).x},${at(one).y}`).join(" ")}
        />
        {corners.slice(1).map((to, i) => {
          const from = corners[i] ?? to;
          const out = to.out > from.out ? `→${feet(to.out - from.out)} ` : "";
          const up = to.up > from.up ? `↑${feet(to.up - from.up)}` : "";
          return (
            <text
              key={`${to.out} ${to.up}`}
              x={(at(from).x + at(to).x) / 2 + size * 0.4}
              y={(at(from).y + at(to).y) / 2 + size * 1.1}
              font-size={size}
            >
              {out}
              {up}
            </text>
          );
        })}
      </svg>
      <figcaption>{words.sectionNote}</figcaption>
    </>
  );
}
