/** The thing that is being typed, over the plan: its line as it would run, and a handle on each place to drag or to move by arrows. */
import { useRef } from "preact/hooks";
import { FOOT } from "../../../grade";
import type { Point } from "../../../wire";
import { onGround, onScreen, type Room, type Sight } from "../plan/sight";
import { t } from "../words";
import type { DraftPlace } from "./places";

/** An arrow moves a place by so much; with Shift by ten times as much. */
const STEP = FOOT / 10;

interface HandlesProps {
  id: string;
  places: readonly DraftPlace[];
  /** An area comes back to where it began. */
  closed: boolean;
  sight: Sight;
  room: Room;
  onMove: (path: string, to: Point) => void;
}

export function Handles({ id, places, closed, sight, room, onMove }: HandlesProps) {
  const words = t();
  const held = useRef<string | null>(null);
  const spots = places.map((one) => onScreen(one.point, sight, room));
  const run = [...spots, ...(closed && spots[0] ? [spots[0]] : [])]
    .map((one) => `${one.x},${one.y}`)
    .join(" ");
  const drag = (event: PointerEvent, path: string) => {
    if (held.current !== path) return;
    const plan = (event.currentTarget as Element).closest("svg")?.getBoundingClientRect();
    if (plan)
      onMove(path, onGround({ x: event.clientX - plan.left, y: event.clientY - plan.top }, sight, room));
  };
  const arrow = (event: KeyboardEvent, { path, point }: DraftPlace) => {
    const by = { ArrowRight: [1, 0], ArrowLeft: [-1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
    if (!by) return;
    event.preventDefault();
    event.stopPropagation();
    const far = STEP * (event.shiftKey ? 10 : 1);
    onMove(path, { x: point.x + (by[0] ?? 0) * far, y: point.y + (by[1] ?? 0) * far });
  };
  return (
    <g class="handles">
      <polyline class="plan-target fresh" points={run} />
      {places.map((one, i) => {
        const spot = spots[i] ?? { x: 0, y: 0 };
        const name = words.desk.handle(id || words.newThing, i + 1);
        return (
          // biome-ignore lint/a11y/useSemanticElements: a drawing has no slider.
          <g
            key={one.path}
            class="handle"
            role="button"
            tabindex={0}
            aria-label={name}
            transform={`translate(${spot.x} ${spot.y})`}
            onPointerDown={(event) => {
              event.stopPropagation();
              held.current = one.path;
              event.currentTarget.setPointerCapture(event.pointerId);
            }}
            onPointerMove={(event) => drag(event, one.path)}
            onPointerUp={() => {
              held.current = null;
            }}
            onPointerCancel={() => {
              held.current = null;
            }}
            onKeyDown={(event) => arrow(event, one)}
          >
            <title>{name}</title>
            <circle r="10" />
            {places.length > 1 && (
              <text text-anchor="middle" y="4">
                {i + 1}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
