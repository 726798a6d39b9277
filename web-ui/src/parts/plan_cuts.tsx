/** Cuts on the plan: toes, where they come to daylight, buried lines by pattern and word, the ground that is located. */
import { FOOT } from "../grade";
import type { OverheadLine, Pile, Point, Sheet, SheetFace, Utility } from "../wire";
import { t } from "../words_later";

function path(points: readonly Point[]): string {
  return points.map((point) => `${point.x / FOOT},${-point.y / FOOT}`).join(" ");
}

interface CutLinesProps {
  sheet: Sheet;
  size: number;
  /** Their names stand elsewhere. */
  bare?: boolean;
}

export function CutLines({ sheet, size, bare = false }: CutLinesProps) {
  return (
    <g>
      {sheet.tickets.map((ticket) => (
        <polygon key={ticket.id} class="plan-located" points={path(ticket.area)} />
      ))}
      {sheet.structures.map((one) => (
        <polyline key={one.id} class="plan-structure" points={path(one.points)} />
      ))}
      {sheet.piles.map((one) => (
        <Heap key={one.id} one={one} size={size} bare={bare} />
      ))}
      {sheet.faces.map((face) => (
        <Face key={face.id} one={face} size={size} bare={bare} />
      ))}
      {sheet.overheads.map((one) => (
        <Overhead key={one.id} one={one} size={size} bare={bare} />
      ))}
      {sheet.utilities.map((one) => (
        <Buried key={one.id} one={one} size={size} bare={bare} />
      ))}
    </g>
  );
}

interface Drawn<Of> {
  one: Of;
  size: number;
  bare: boolean;
}

function Face({ one: face, size, bare }: Drawn<SheetFace>) {
  const middle = face.daylight[Math.floor(face.daylight.length / 2)];
  return (
    <g>
      <polyline class="plan-toe" points={path(face.toe)} />
      {face.daylight.length > 1 && (
        <polyline class={`plan-daylight ${face.over ? "over" : ""}`} points={path(face.daylight)} />
      )}
      {middle && !bare && (
        <text
          class="plan-name"
          text-anchor="middle"
          x={middle.x / FOOT}
          y={-middle.y / FOOT + size}
          font-size={size * 0.8}
        >
          {t().cuts.daylight} {face.id}
        </text>
      )}
    </g>
  );
}

function Heap({ one, size, bare }: Drawn<Pile>) {
  const [x, y] = [one.at.x / FOOT, -one.at.y / FOOT];
  return (
    <g>
      <circle class="plan-structure" cx={x} cy={y} r={one.across / FOOT / 2} />
      {!bare && (
        <text class="plan-name" text-anchor="middle" x={x} y={y} font-size={size * 0.8}>
          {one.id}
        </text>
      )}
    </g>
  );
}

function Overhead({ one, size, bare }: Drawn<OverheadLine>) {
  const at = one.points[0];
  return (
    <g>
      <polyline class="plan-overhead" points={path(one.points)} />
      {at && !bare && (
        <text class="plan-name" x={at.x / FOOT + size} y={-at.y / FOOT - size * 0.3} font-size={size * 0.8}>
          {t().crew.overheadLine} {one.id}
        </text>
      )}
    </g>
  );
}

function Buried({ one, size, bare }: Drawn<Utility>) {
  const at = one.points[0];
  return (
    <g>
      <polyline class={`plan-buried ${one.kind}`} points={path(one.points)} />
      {at && !bare && (
        <text class="plan-name" x={at.x / FOOT + size} y={-at.y / FOOT - size * 0.3} font-size={size * 0.8}>
          {t().cuts.kinds[one.kind]}
          {one.id.toUpperCase() !== t().cuts.kinds[one.kind] && ` ${one.id}`}
        </text>
      )}
    </g>
  );
}
