/** The desk's plan of the site: the field pages' own drawing, with marks by state in shape and pattern and names that lie on nothing;
 * the wheel, a drag and keys move it, and what is pressed is told to the page. */
import type { ComponentChildren } from "preact";
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import { around } from "../../../parts/plan";
import type { MachineCard, MarkCard, Point, Sheet } from "../../../wire";
import { t } from "../words";
import { type Labels, labels } from "./labels";
import { type Shown, signBoxes, type Text, textsOf, wideIn } from "./names";
import { PlanKeys } from "./plan_keys";
import { Drawing, Names, Things } from "./plan_layers";
import {
  barOf,
  inSight,
  nearer,
  onGround,
  onScreen,
  pushed,
  type Room,
  type Sight,
  type Spot,
  whole,
} from "./sight";
import { Legend } from "./signs";
import { circlesOf, linedThings, type Thing } from "./things";

/** The plan's letters. */
const FONT = "700 13px";
/** A press that slides farther than this is a drag, px. */
const DRAG = 4;
/** How much nearer one turn of the wheel comes, and how far a key moves, of the room. */
const TURN = 1.2;
const STEP = 0.25;

interface SitePlanProps {
  sheet: Sheet;
  machines: readonly MachineCard[];
  marks: readonly MarkCard[];
  picked: Thing | null;
  onPick: (thing: Thing) => void;
  /** What is drawn strongly: a target that is being changed. */
  fresh?: string | null;
  /** A press anywhere tells a place of the ground instead of picking a thing. */
  onPlace?: ((at: Point) => void) | null;
  /** The page tells what the signs mean in another place. */
  noLegend?: boolean;
  /** What a page draws over it, where the ground lies on the screen now. */
  over?: (sight: Sight, room: Room) => ComponentChildren;
}

export function SitePlan(props: SitePlanProps) {
  const {
    sheet,
    machines,
    marks,
    picked,
    onPick,
    fresh = null,
    over,
    onPlace = null,
    noLegend = false,
  } = props;
  const words = t();
  const box = useRef<HTMLDivElement>(null);
  const room = useRoom(box);
  const [seen, setSeen] = useState<Sight | null>(null);
  const site = useMemo(() => around(sheet, { machines }), [sheet, placesOf(machines)]);
  const most = whole(site, room);
  const sight = seen ?? most;
  const lines = useMemo(() => linedThings(sheet), [sheet]);
  const cards = useMemo(() => new Map(marks.map((one) => [one.id, one])), [marks]);
  const shown: Shown = { sheet, machines, marks: cards, lines, picked };
  const named = useNames(shown, sight, room);
  const zoom = (by: number, at: Spot = { x: room.wide / 2, y: room.high / 2 }) => {
    const next = nearer(sight, by, at, room, most);
    setSeen(next === most ? null : next);
  };
  const push = (dx: number, dy: number) => setSeen(pushed(sight, dx, dy));
  const drag = useDrag(push);
  useWheel(box, zoom);
  const place = (event: MouseEvent) => {
    if (!onPlace || (event.target as Element).closest(".handle")) return;
    event.stopPropagation();
    const { left, top } = (event.currentTarget as Element).getBoundingClientRect();
    onPlace(onGround({ x: event.clientX - left, y: event.clientY - top }, sight, room));
  };
  const out = sheet.marks.filter((one) => !inSight(onScreen(one.place, sight, room), room)).length;
  return (
    <figure class="site-plan">
      <div class={`site-plan-room ${onPlace ? "placing" : ""}`} ref={box} {...drag}>
        {/* biome-ignore lint/a11y/useSemanticElements: a drawing has no fieldset. */}
        <svg
          viewBox={`0 0 ${room.wide} ${room.high}`}
          role="group"
          aria-label={words.planOf(sheet.site)}
          onKeyDown={walks}
          onClickCapture={place}
        >
          <Drawing shown={shown} sight={sight} room={room} fresh={fresh} />
          <Names found={named.found} texts={named.texts} onPick={onPick} />
          <Things
            shown={shown}
            sight={sight}
            room={room}
            counted={named.found.counted}
            onPick={onPick}
            onNear={(at) => zoom(3, at)}
          />
          {over?.(sight, room)}
          <Measure sight={sight} room={room} />
        </svg>
      </div>
      <PlanKeys
        onZoom={(by) => zoom(by)}
        onMove={(x, y) => push(-x * room.wide * STEP, -y * room.high * STEP)}
        onAll={() => setSeen(null)}
      />
      {!noLegend && <Legend />}
      <figcaption>
        {named.found.rest.length > 0 && <strong>{words.desk.noRoom(named.found.rest.length)} </strong>}
        {out > 0 && <strong>{words.desk.outOfSight(out)} </strong>}
        {words.planNote}
      </figcaption>
    </figure>
  );
}

/** Where machines stand, as one text: the box of the plan follows it and nothing else of them. */
const placesOf = (machines: readonly MachineCard[]) =>
  machines.map((one) => `${one.place?.at.x} ${one.place?.at.y}`).join();

/** The plan's room, as large as its place on the page; a page that can't measure has one all the same. */
function useRoom(box: { current: HTMLDivElement | null }): Room {
  const [room, setRoom] = useState<Room>({ wide: 640, high: 480 });
  useLayoutEffect(() => {
    const one = box.current;
    if (!one) return undefined;
    const measure = () => {
      const { clientWidth: wide, clientHeight: high } = one;
      if (wide > 0 && high > 0)
        setRoom((had) => (had.wide === wide && had.high === high ? had : { wide, high }));
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(one);
    return () => watch.disconnect();
  }, []);
  return room;
}

/** The names and where they stand; worked out again when something of them has changed, not with every heartbeat. */
function useNames(shown: Shown, sight: Sight, room: Room): { found: Labels; texts: Map<string, Text> } {
  const font = `${FONT} ${getComputedStyle(document.body).fontFamily}`;
  const texts = textsOf(shown, sight, room, wideIn(font));
  const key = JSON.stringify([texts.map((one) => [one.id, one.text]), sight, room, placesOf(shown.machines)]);
  return useMemo(() => {
    const spots = (points: readonly { x: number; y: number }[]) =>
      points.map((one) => onScreen(one, sight, room));
    const lines = [...shown.lines.map((one) => one.points), ...circlesOf(shown.sheet, shown.machines)].map(
      spots,
    );
    const found = labels(texts, room, lines, signBoxes(shown, sight, room));
    return { found, texts: new Map(texts.map((one) => [one.id, one])) };
  }, [key, shown.lines]);
}

/** A drag pushes the ground along; the press that ends it is none. */
function useDrag(push: (dx: number, dy: number) => void) {
  const at = useRef<{ x: number; y: number; moved: boolean } | null>(null);
  return {
    onPointerDown: (event: PointerEvent) => {
      at.current = event.button === 0 ? { x: event.clientX, y: event.clientY, moved: false } : null;
    },
    onPointerMove: (event: PointerEvent) => {
      const from = at.current;
      if (!from || event.buttons === 0) return;
      const [dx, dy] = [event.clientX - from.x, event.clientY - from.y];
      if (!from.moved && Math.hypot(dx, dy) < DRAG) return;
      if (!from.moved) (event.currentTarget as Element).setPointerCapture(event.pointerId);
      at.current = { x: event.clientX, y: event.clientY, moved: true };
      push(dx, dy);
    },
    onClickCapture: (event: MouseEvent) => {
      if (at.current?.moved) event.stopPropagation();
      at.current = null;
    },
  };
}

/** The wheel comes nearer about the pointer; the page behind stays where it is. */
function useWheel(box: { current: HTMLDivElement | null }, zoom: (by: number, at: Spot) => void): void {
  const newest = useRef(zoom);
  newest.current = zoom;
  useEffect(() => {
    const one = box.current;
    const turn = (event: WheelEvent) => {
      event.preventDefault();
      const { left, top } = (one as HTMLElement).getBoundingClientRect();
      newest.current(TURN ** (event.deltaY < 0 ? 1 : -1), {
        x: event.clientX - left,
        y: event.clientY - top,
      });
    };
    one?.addEventListener("wheel", turn, { passive: false });
    return () => one?.removeEventListener("wheel", turn);
  }, []);
}

/** By keyboard the plan is one stop; arrows go from thing to thing. */
function walks(event: KeyboardEvent): void {
  const by = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
  const plan = event.currentTarget;
  if (!by || !(plan instanceof Element)) return;
  const all = [...plan.querySelectorAll<SVGGElement>(".plan-thing")];
  const at = all.indexOf(document.activeElement as SVGGElement);
  if (at < 0) return;
  event.preventDefault();
  all[(at + by + all.length) % all.length]?.focus();
}

/** North, and a length to measure by. */
function Measure({ sight, room }: { sight: Sight; room: Room }) {
  const feet = barOf(sight.scale, 110);
  const y = room.high - 10;
  return (
    <g class="measure">
      <text x={room.wide - 34} y={20}>
        ↑N
      </text>
      <path d={`M10 ${y - 5}V${y}H${10 + feet * sight.scale}V${y - 5}`} />
      <text x={14} y={y - 5}>
        {t().desk.bar(String(feet))}
      </text>
    </g>
  );
}
