/**
 * A line that nobody may cross. No hub knows which way a cab faces, so its side is a side of the compass: a word, and a small
 * plan with north at the top beside it; never a side of the screen, which would be somebody's left or right.
 */
import type { CallView, Compass } from "../../wire";
import { t } from "../../words";

/** Before the number: which line, and to which side of the mark it lies. */
export function LineSide({ call }: { call: CallView }) {
  const side = call.line;
  if (!side) return null;
  return (
    <p class="line-side">
      {side.lies && <Plan to={side.lies} />}
      <span>
        {side.name} {side.lies && <strong>{t().toThe(t().crew.compass[side.lies])}</strong>}
      </span>
    </p>
  );
}

/** From north round by the east, in eighths of a turn. */
const ROUND: readonly Compass[] = [
  "north",
  "north_east",
  "east",
  "south_east",
  "south",
  "south_west",
  "west",
  "north_west",
];

/** The plan: north up, the mark in the middle, hatched beyond the line. */
function Plan({ to }: { to: Compass }) {
  return (
    <svg class="line-plan" viewBox="-50 -64 100 114" aria-hidden="true">
      <defs>
        <pattern id="beyond" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path d="M0 0V9" class="beyond-stroke" />
        </pattern>
        <clipPath id="plan-edge">
          <path d="M-47-47H47V47H-47z" />
        </clipPath>
      </defs>
      <g clip-path="url(#plan-edge)">
        <g transform={`rotate(${ROUND.indexOf(to) * 45})`}>
          <path d="M-90-90H90V-22H-90z" fill="url(#beyond)" />
          <path d="M-90-22H90M-90-14H90" class="beyond-edge" />
        </g>
      </g>
      <path d="M-47-47H47V47H-47z" class="beyond-edge" />
      <circle r="7" cx="0" cy="0" />
      <text y="-50" text-anchor="middle">
        {t().northLetter}
      </text>
    </svg>
  );
}
