/** The plan: lines, targets, marks with their last verdict, machines where they were last said to stand. */
import { useState } from "preact/hooks";
import { FOOT, runCorners } from "../grade";
import type { Drawn, Ground, Line, MachineCard, Point, Sheet, SheetMark, SiteTarget } from "../wire";
import { t } from "../words_later";
import { Key } from "./keys";
import { lastShort } from "./last";
import { CutLines } from "./plan_cuts";
import { MarkSign, walks } from "./plan_mark";

/** A box of the ground in feet, north up: `top` is its northern edge. */
interface Box {
  left: number;
  top: number;
  width: number;
  height: number;
}

const MARGIN = 6;
/** Room for a machine's sign on each side, as a part of the width. */
const SIGN = 0.06;
const NEAREST = 12;
/** Round the tail, feet: hot also with the bucket down. */
export const TAIL_MARGIN = 3;

interface PlanProps {
  sheet: Sheet;
  ground: Ground | null;
  chosen?: string | null;
  /** What is drawn strongly: a target or a line that is being changed. */
  fresh?: string | null;
  onChoose?: (mark: string) => void;
  /** What stands beside a mark's name in place of its verdict. */
  notes?: Map<string, string>;
}

export function Plan({ sheet, ground, chosen = null, fresh = null, onChoose, notes }: PlanProps) {
  const words = t();
  const whole = around(sheet, ground);
  const [view, setView] = useState<Box | null>(null);
  const box = view ?? whole;
  const zoom = (by: number) => {
    const at = sheet.marks.find((mark) => mark.id === chosen);
    setView(zoomed(box, whole, by, view === null && at ? at.place : null));
  };
  const move = (x: number, y: number) =>
    setView({ ...box, left: box.left + (x * box.width) / 3, top: box.top + (y * box.height) / 3 });
  const size = box.width / 34;
  const leftward = (mark: SheetMark) => mark.place.x / FOOT > box.left + box.width * 0.6;
  const first = (mark: SheetMark) => mark.id === chosen || (notes?.has(mark.id) ?? false);
  // By keyboard the marks are one stop, and arrows go from mark to mark in the order of work.
  const reached = sheet.marks.find((mark) => mark.id === chosen) ?? sheet.marks[0];
  // A note is longer than a verdict.
  const named = roomFor(sheet.marks, { wide: size * (notes ? 8 : 6), tall: size * 1.2, leftward, first });
  return (
    <figure class="plan">
      <svg
        viewBox={`${box.left} ${-box.top} ${box.width} ${box.height}`}
        role={onChoose ? "group" : "img"}
        aria-label={words.planOf(sheet.site)}
        onKeyDown={onChoose && walks}
      >
        {sheet.targets.map((target) => (
          <Outline
            key={target.id}
            target={target}
            drawn={sheet.drawn.find((one) => one.id === target.id)?.drawn}
            fresh={target.id === fresh}
          />
        ))}
        <CutLines sheet={sheet} size={size} />
        {sheet.lines.map((line) => (
          <SiteLine key={line.id} line={line} size={size} />
        ))}
        {(ground?.machines ?? []).map((machine) => (
          <Machine
            key={machine.id}
            machine={machine}
            reach={sheet.machines.find((one) => one.id === machine.id)?.reach}
            size={size}
          />
        ))}
        {sheet.marks.map((mark) => (
          <MarkSign
            key={mark.id}
            mark={mark}
            size={size}
            state={
              notes ? (notes.get(mark.id) ?? "") : lastShort(ground?.marks.find((one) => one.id === mark.id))
            }
            named={named.has(mark.id)}
            chosen={mark.id === chosen}
            leftward={leftward(mark)}
            reached={mark === reached}
            onChoose={onChoose}
          />
        ))}
        <North box={box} size={size} />
      </svg>
      <div class="plan-keys">
        <Key label={words.closer} onPress={() => zoom(0.5)}>
          +
        </Key>
        <Key label={words.farther} onPress={() => zoom(2)}>
          −
        </Key>
        <Key label={words.westward} onPress={() => move(-1, 0)}>
          ◂
        </Key>
        <Key label={words.eastward} onPress={() => move(1, 0)}>
          ▸
        </Key>
        <Key label={words.northward} onPress={() => move(0, 1)}>
          ▴
        </Key>
        <Key label={words.southward} onPress={() => move(0, -1)}>
          ▾
        </Key>
        <Key onPress={() => setView(null)}>{words.allOfIt}</Key>
      </div>
      <figcaption>{words.planNote}</figcaption>
    </figure>
  );
}

/** The box round everything that has a place, machines too. */
export function around(sheet: Sheet, ground: { machines: readonly MachineCard[] } | null): Box {
  const points = [
    ...sheet.marks.map((mark) => mark.place),
    ...sheet.lines.flatMap((line) => line.points),
    ...sheet.drawn.flatMap((one) => [one.drawn.line, ...(one.drawn.edges ?? [])].flat()),
    ...sheet.targets.flatMap((one) => one.grade.within ?? []),
    ...sheet.benchmarks.flatMap((one) => (one.place ? [one.place] : [])),
    ...(ground?.machines ?? []).flatMap((one) => (one.place ? [one.place.at] : [])),
  ];
  const xs = points.map((point) => point.x / FOOT);
  const ys = points.map((point) => point.y / FOOT);
  // Reduced and not spread: an edge may have more places than a call has room for.
  const low = (all: number[]) => (all.length > 0 ? all.reduce((a, b) => Math.min(a, b)) : 0);
  const high = (all: number[]) => (all.length > 0 ? all.reduce((a, b) => Math.max(a, b)) : 1);
  const west = low(xs);
  const east = high(xs);
  const beside = Math.max(MARGIN, (east - west) * SIGN);
  const left = west - beside;
  const right = east + beside;
  const bottom = low(ys) - MARGIN;
  const top = high(ys) + MARGIN;
  return { left, top, width: right - left, height: top - bottom };
}

/** The box seen from nearer or farther, kept between a few feet and the whole. */
export function zoomed(box: Box, whole: Box, by: number, at: Point | null): Box {
  const width = Math.min(whole.width, Math.max(NEAREST, box.width * by));
  const height = (width * box.height) / box.width;
  if (width >= whole.width) return whole;
  const x = at ? at.x / FOOT : box.left + box.width / 2;
  const y = at ? at.y / FOOT : box.top - box.height / 2;
  return { left: x - width / 2, top: y + height / 2, width, height };
}

interface Names {
  /** The room of a name, feet. */
  wide: number;
  tall: number;
  /** Whether it stands to the left of its mark. */
  leftward: (mark: SheetMark) => boolean;
  /** Whose names have room before all others. */
  first: (mark: SheetMark) => boolean;
}

/** Marks whose names have room: one over another could be read by nobody; nearer, more of them have it. */
export function roomFor(marks: readonly SheetMark[], { wide, tall, leftward, first }: Names): Set<string> {
  const west = (mark: SheetMark) => mark.place.x / FOOT - (leftward(mark) ? wide : 0);
  const kept: SheetMark[] = [];
  for (const mark of [...marks].sort((a, b) => Number(first(b)) - Number(first(a)))) {
    const free = kept.every((other) => {
      const up = Math.abs(other.place.y - mark.place.y) / FOOT;
      return Math.abs(west(other) - west(mark)) > wide || up > tall;
    });
    if (free) kept.push(mark);
  }
  return new Set(kept.map((mark) => mark.id));
}

export function path(points: readonly Point[]): string {
  return points.map((point) => `${point.x / FOOT},${-point.y / FOOT}`).join(" ");
}

interface OutlineProps {
  target: SiteTarget;
  /** Where its line and its edges run, when it has any. */
  drawn: Drawn | undefined;
  fresh: boolean;
}

export function Outline({ target, drawn, fresh }: OutlineProps) {
  const shape = target.grade.shape;
  const corners = target.grade.within ?? (shape.kind === "run" ? runCorners(shape) : null);
  const kind = `plan-target ${fresh ? "fresh" : ""}`;
  return (
    <g>
      {corners && <polygon class={kind} points={path(corners)} />}
      {drawn && shape.kind !== "run" && <polyline class={kind} points={path(drawn.line)} />}
      {drawn?.edges?.map((edge) => (
        <polyline key={path(edge.slice(0, 2))} class={`${kind} edge`} points={path(edge)} />
      ))}
    </g>
  );
}

/** `bare`: its name stands elsewhere. */
export function SiteLine({ line, size, bare }: { line: Line; size: number; bare?: boolean }) {
  const at = line.points[0];
  return (
    <g>
      <polyline class={`plan-line ${line.no_cross ? "kept" : ""}`} points={path(line.points)} />
      {line.no_cross && <polyline class="plan-line inner" points={path(line.points)} />}
      {at && !bare && (
        <text class="plan-name" x={at.x / FOOT} y={-at.y / FOOT} font-size={size * 0.8}>
          {line.id}
        </text>
      )}
    </g>
  );
}

interface MachineProps {
  machine: MachineCard;
  reach: Sheet["machines"][number]["reach"] | undefined;
  size: number;
}

/** Around a machine: the tail's swing, hot also with the bucket down, the bucket's reach, the keep-out. */
export function Machine({ machine, reach, size }: MachineProps) {
  if (!machine.place) return null;
  const { x, y } = machine.place.at;
  return (
    <g transform={`translate(${x / FOOT} ${-y / FOOT})`}>
      <circle class="plan-reach" r={machine.keep_out / FOOT} />
      {reach && <circle class="plan-reach bucket" r={reach.reach_at_ground / FOOT} />}
      {reach && <circle class="plan-reach tail" r={reach.tail_radius / FOOT + TAIL_MARGIN} />}
      <rect class="plan-machine" x={-size} y={-size * 0.7} width={size * 2} height={size * 1.4} />
      <text class="plan-on" text-anchor="middle" dy={size * 0.3} font-size={size * 0.8}>
        {machine.id}
      </text>
    </g>
  );
}

function North({ box, size }: { box: Box; size: number }) {
  return (
    <text
      class="plan-name"
      x={box.left + box.width - size * 2}
      y={-box.top + size * 1.6}
      font-size={size * 1.2}
    >
      ↑N
    </text>
  );
}
