/** The things of a site that the desk's plan shows and that can be pressed: their kinds, where they lie, which lines are drawn. */
import { FOOT, runCorners } from "../../../grade";
import { TAIL_MARGIN } from "../../../parts/plan";
import type { ExceptionKind, MachineCard, MarkCard, Point, Sheet } from "../../../wire";

export type Kind =
  | "mark"
  | "machine"
  | "line"
  | "buried"
  | "overhead"
  | "face"
  | "ticket"
  | "pile"
  | "structure"
  | "benchmark"
  | "target";

/** A thing of the site, by its kind and name. */
export interface Thing {
  kind: Kind;
  id: string;
}

export const same = (one: Thing | null, other: Thing | null): boolean =>
  one?.kind === other?.kind && one?.id === other?.id;

/** A thing that is drawn as a line, with its corners. */
export interface Lined extends Thing {
  points: readonly Point[];
}

/** The things that are drawn as lines, the gravest last: of two that lie over each other the last one is pressed. */
export function linedThings(sheet: Sheet): Lined[] {
  return [
    ...sheet.targets.flatMap((one) =>
      outlinesOf(sheet, one.id).map((points) => lined("target", one.id, points)),
    ),
    ...sheet.tickets.map((one) => lined("ticket", one.id, closed(one.area))),
    ...sheet.structures.map((one) => lined("structure", one.id, one.points)),
    ...sheet.piles.map((one) => lined("pile", one.id, round(one.at, one.across / 2))),
    ...sheet.faces.flatMap((one) =>
      [one.toe, one.daylight]
        .filter((points) => points.length > 1)
        .map((points) => lined("face", one.id, points)),
    ),
    ...sheet.lines.map((one) => lined("line", one.id, one.points)),
    ...sheet.overheads.map((one) => lined("overhead", one.id, one.points)),
    ...sheet.utilities.map((one) => lined("buried", one.id, one.points)),
  ];
}

const lined = (kind: Kind, id: string, points: readonly Point[]): Lined => ({ kind, id, points });

const closed = (points: readonly Point[]): readonly Point[] => (points[0] ? [...points, points[0]] : points);

/** A target's outline, line and edges, as they are drawn. */
function outlinesOf(sheet: Sheet, id: string): (readonly Point[])[] {
  const target = sheet.targets.find((one) => one.id === id);
  const drawn = sheet.drawn.find((one) => one.id === id)?.drawn;
  const shape = target?.grade.shape;
  const corners = target?.grade.within ?? (shape?.kind === "run" ? runCorners(shape) : null);
  return [
    ...(corners ? [closed(corners)] : []),
    ...(drawn && shape?.kind !== "run" && drawn.line.length > 1 ? [drawn.line] : []),
    ...(drawn?.edges ?? []),
  ];
}

/** How many straights a circle is taken for: none lies farther from it than a fiftieth of a hundredth of its radius. */
const STRAIGHTS = 96;

function round({ x, y }: Point, radius: number): Point[] {
  return Array.from({ length: STRAIGHTS + 1 }, (_, i) => {
    const angle = (i / STRAIGHTS) * 2 * Math.PI;
    return { x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) };
  });
}

/** The circles round machines as they are drawn: the keep-out, the bucket's reach, the tail with its margin. */
export function circlesOf(sheet: Sheet, machines: readonly MachineCard[]): Point[][] {
  return machines.flatMap(({ id, keep_out, place }) => {
    if (!place) return [];
    const reach = sheet.machines.find((one) => one.id === id)?.reach;
    const radii = reach ? [reach.reach_at_ground, reach.tail_radius + TAIL_MARGIN * FOOT] : [];
    return [keep_out, ...radii].map((radius) => round(place.at, radius));
  });
}

/** Places along a line where its name may stand: the middle first, then toward its ends; few, however many corners it has. */
export function alongOf(points: readonly Point[]): Point[] {
  const steps = points.slice(1).map((to, i) => {
    const from = points[i] ?? to;
    return { from, to, long: Math.hypot(to.x - from.x, to.y - from.y) };
  });
  const all = steps.reduce((sum, one) => sum + one.long, 0);
  return [0.5, 0.3, 0.7, 0.15, 0.85, 0.05, 0.95].flatMap((part) => {
    let left = part * all;
    for (const { from, to, long } of steps) {
      if (left <= long && long > 0) {
        const on = left / long;
        return [{ x: from.x + (to.x - from.x) * on, y: from.y + (to.y - from.y) * on }];
      }
      left -= long;
    }
    return [];
  });
}

/** How a mark stands, as its sign shows it. */
export type Standing =
  | "unread"
  | "spot"
  | "on"
  | "high"
  | "low"
  | "too_close_high"
  | "too_close_low"
  | "again";

export function standingOf(card: MarkCard | undefined): Standing {
  if (!card) return "unread";
  if (card.counts.kind !== "counts") return "again";
  return card.verdict ?? "spot";
}

/** Whether somebody has to see to a mark: its name has room before others. */
export const waits = (card: MarkCard | undefined): boolean =>
  !!card && (card.needs_ruling || !["on", "spot"].includes(standingOf(card)));

/** The thing of the site that something is about which needs somebody; nothing where it is about none that is drawn. */
export function thingOf(what: ExceptionKind): Thing | null {
  switch (what.kind) {
    case "paint_gone":
      return { kind: "buried", id: what.utility };
    case "crossing_too_near":
      return { kind: "buried", id: what.crossing.utility };
    case "line_struck": {
      const [line] = what.struck.lines;
      return line ? { kind: "buried", id: line } : null;
    }
    case "ticket_waits":
      return { kind: "ticket", id: what.ticket.id };
    case "ties_first": {
      const [mark] = what.marks;
      return mark ? { kind: "mark", id: mark } : null;
    }
    case "cant":
      return what.mark ? { kind: "mark", id: what.mark } : { kind: "machine", id: what.machine };
    case "target_not_seen":
    case "target_typed_apart":
      return { kind: "target", id: what.target };
    case "face_left":
    case "inspection_due":
    case "daylight_over":
    case "pile_at_crest":
      return { kind: "face", id: what.zone };
    default:
      if ("mark" in what) return { kind: "mark", id: what.mark };
      return "machine" in what ? { kind: "machine", id: what.machine } : null;
  }
}
