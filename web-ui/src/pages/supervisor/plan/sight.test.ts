/** The desk's plan keeps the place under the pointer, shows all of the ground at first, and gives places back as they were. */
import { describe, expect, it } from "vitest";
import { FOOT } from "../../../grade";
import { barOf, nearer, onGround, onScreen, pushed, whole } from "./sight";

const ROOM = { wide: 600, high: 400 };
const BOX = { left: 5_000, top: 5_100, width: 100, height: 100 };
const ALL = whole(BOX, ROOM);
const place = (x: number, y: number) => ({ x: x * FOOT, y: y * FOOT });

describe("the desk's plan", () => {
  it("shows all of the ground at first, north up", () => {
    expect(ALL).toEqual({ east: 5_050, north: 5_050, scale: 4 });
    expect(onScreen(place(5_050, 5_100), ALL, ROOM)).toEqual({ x: 300, y: 0 });
    expect(onScreen(place(5_100, 5_000), ALL, ROOM)).toEqual({ x: 500, y: 400 });
  });

  it("comes nearer about the place under the pointer, and never farther than the whole", () => {
    const at = { x: 450, y: 90 };
    const near = nearer(ALL, 3, at, ROOM, ALL);
    expect(onGround(at, near, ROOM)).toEqual(onGround(at, ALL, ROOM));
    expect(nearer(near, 0.01, at, ROOM, ALL)).toEqual(ALL);
    // Six feet across the smaller side are near enough.
    expect(nearer(ALL, 1_000, at, ROOM, ALL).scale).toBeCloseTo(400 / 6);
  });

  it("is pushed along by the pointer", () => {
    const east = pushed(ALL, -40, 20);
    expect(onScreen(place(5_060, 5_055), east, ROOM)).toEqual(onScreen(place(5_050, 5_050), ALL, ROOM));
  });

  it("gives a place back in whole hundredths of a foot", () => {
    expect(onGround(onScreen(place(5_012.34, 5_071.5), ALL, ROOM), ALL, ROOM)).toEqual(
      place(5_012.34, 5_071.5),
    );
  });

  it("has a bar of a round length", () => {
    expect([barOf(4, 100), barOf(1, 100), barOf(40, 100), barOf(0.7, 100)]).toEqual([20, 100, 2, 100]);
  });
});
