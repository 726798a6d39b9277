/** The profile of a run: the target in its steps, what is allowed either way, the last reading on each mark. */
import { digSteps, FOOT, stationOf } from "../grade";
import { feet, signed } from "../show";
import type { Ground, Sheet, SiteTarget } from "../wire";
import { t } from "../words";

/** Heights are drawn this many times larger than lengths, so that a tenth can be seen. */
const TALLER = 6;

interface ProfileProps {
  target: SiteTarget;
  sheet: Sheet;
  ground: Ground | null;
}

interface Shot {
  id: string;
  station: number;
  elevation: number;
  dev: number | null;
}

export function Profile({ target, sheet, ground }: ProfileProps) {
  const words = t();
  const steps = digSteps(target);
  const shape = target.grade.shape;
  if (!steps || shape.kind !== "run") return null;
  const shots: Shot[] = sheet.marks
    .filter((mark) => mark.target === target.id)
    .flatMap((mark) => {
      const last = ground?.marks.find((one) => one.id === mark.id);
      if (!last) return [];
      const station = stationOf(shape, mark.place) / FOOT;
      return [{ id: mark.id, station, elevation: last.elevation / FOOT, dev: last.dev ?? null }];
    });
  const long = shape.length / FOOT;
  const all = [...steps.map((one) => one.elevation / FOOT), ...shots.map((one) => one.elevation)];
  const high = Math.max(...all) + 0.6;
  const low = Math.min(...all) - 0.6;
  const y = (elevation: number) => (high - elevation) * TALLER;
  const size = long / 34;
  const height = (high - low) * TALLER;
  const band = { high: target.tolerance.high / FOOT, low: target.tolerance.low / FOOT };
  return (
    <figure class="profile">
      <svg
        viewBox={`${-size * 5} ${-size * 2} ${long + size * 7} ${height + size * 5}`}
        role="img"
        aria-label={words.profileOf(target.name)}
      >
        {steps.map((step, i) => {
          const from = step.from / FOOT;
          const to = (steps[i + 1]?.from ?? shape.length) / FOOT;
          const at = step.elevation / FOOT;
          return (
            <g key={step.from}>
              <rect
                class="profile-band"
                x={from}
                width={to - from}
                y={y(at + band.high)}
                height={(band.high + band.low) * TALLER}
              />
              <line class="profile-target" x1={from} x2={to} y1={y(at)} y2={y(at)} />
              <text x={-size * 5} y={y(at) + size * 0.4} font-size={size * 1.1}>
                {feet(step.elevation)}
              </text>
              <text x={from} y={height + size * 2} font-size={size * 1.1}>
                {feet(step.from, 0)}
              </text>
            </g>
          );
        })}
        {shots.map((shot) => (
          <g key={shot.id} transform={`translate(${shot.station} ${y(shot.elevation)})`}>
            <path class="profile-shot" d={`M${-size / 2} 0H${size / 2}M0 ${-size / 2}V${size / 2}`} />
            <text y={-size} font-size={size} text-anchor="middle">
              {shot.id}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>{words.profileNote(String(TALLER))}</figcaption>
      <table class="profile-table">
        <tbody>
          {shots.map((shot) => (
            <tr key={shot.id}>
              <th scope="row">{shot.id}</th>
              <td>{shot.station.toFixed(1)}</td>
              <td>{shot.elevation.toFixed(2)}</td>
              <td>{shot.dev === null ? "" : `${signed(shot.dev)} ft`}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </figure>
  );
}
