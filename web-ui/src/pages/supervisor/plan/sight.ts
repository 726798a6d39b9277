/** Which part of the ground the desk's plan shows, and where a place of it lies on the screen. North is up. */
import { FOOT } from "../../../grade";
import type { Point } from "../../../wire";

/** The plan's room on the screen, px. */
export interface Room {
  wide: number;
  high: number;
}

/** A place on the screen, px from the room's upper left corner. */
export interface Spot {
  x: number;
  y: number;
}

/** What lies in the middle of the room, feet, and how many px a foot has. */
export interface Sight {
  east: number;
  north: number;
  scale: number;
}

/** A box of the ground, feet; `top` is its northern edge. */
export interface Ground {
  left: number;
  top: number;
  width: number;
  height: number;
}

/** Nobody needs to see less of the ground than so many feet. */
const NEAREST = 6;

/** The sight that shows all of a box. */
export function whole(box: Ground, room: Room): Sight {
  return {
    east: box.left + box.width / 2,
    north: box.top - box.height / 2,
    scale: Math.max(1e-6, Math.min(room.wide / box.width, room.high / box.height)),
  };
}

/** Nearer by a factor, or farther where it is under 1: the place under `at` stays there. Never farther than the whole. */
export function nearer(sight: Sight, by: number, at: Spot, room: Room, most: Sight): Sight {
  const scale = Math.min(Math.min(room.wide, room.high) / NEAREST, sight.scale * by);
  if (scale <= most.scale) return most;
  const [dx, dy] = [at.x - room.wide / 2, at.y - room.high / 2];
  return {
    east: sight.east + dx / sight.scale - dx / scale,
    north: sight.north - dy / sight.scale + dy / scale,
    scale,
  };
}

/** The ground pushed along by so many px. */
export function pushed(sight: Sight, dx: number, dy: number): Sight {
  return { ...sight, east: sight.east - dx / sight.scale, north: sight.north + dy / sight.scale };
}

/** Where a place of the ground lies on the screen. */
export function onScreen({ x, y }: Point, sight: Sight, room: Room): Spot {
  return {
    x: room.wide / 2 + (x / FOOT - sight.east) * sight.scale,
    y: room.high / 2 - (y / FOOT - sight.north) * sight.scale,
  };
}

/** Which place of the ground lies under a spot of the screen, in whole hundredths of a foot. */
export function onGround({ x, y }: Spot, sight: Sight, room: Room): Point {
  const hundredths = (feet: number) => Math.round(feet * 100) * (FOOT / 100);
  return {
    x: hundredths(sight.east + (x - room.wide / 2) / sight.scale),
    y: hundredths(sight.north - (y - room.high / 2) / sight.scale),
  };
}

/** Whether a spot lies within the room. */
export function inSight({ x, y }: Spot, room: Room): boolean {
  return x >= 0 && y >= 0 && x <= room.wide && y <= room.high;
}

/** A round length for the scale's bar, feet: 1, 2 or 5 of a power of ten, no more px than asked for. */
export function barOf(scale: number, most: number): number {
  const power = 10 ** Math.floor(Math.log10(most / scale));
  return [5, 2, 1].map((one) => one * power).find((feet) => feet * scale <= most) ?? power;
}
