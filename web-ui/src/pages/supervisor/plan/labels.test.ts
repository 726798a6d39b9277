/** Names on the desk's plan: over no line, no sign, no other name, and none is lost, on many random plans of 60 marks. */
import { describe, expect, it } from "vitest";
import type { Rect } from "./cells";
import { HIGH, type Labels, labels, leader, type Named } from "./labels";
import type { Spot } from "./sight";

const ROOM = { wide: 640, high: 600 };
const CLEAR = 7;

const sign = ({ x, y }: Spot): Rect => ({ left: x - 6, top: y - 6, right: x + 6, bottom: y + 6 });

function overlap(a: Rect, b: Rect): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** Whether a straight runs through a box, told apart from the code under test: by many points on it. */
function through(from: Spot, to: Spot, box: Rect): boolean {
  for (let step = 0; step <= 500; step++) {
    const x = from.x + ((to.x - from.x) * step) / 500;
    const y = from.y + ((to.y - from.y) * step) / 500;
    if (x > box.left && x < box.right && y > box.top && y < box.bottom) return true;
  }
  return false;
}

/** What is wrong with the names of a plan, in words. */
function faults(
  found: Labels,
  named: readonly Named[],
  lines: readonly Spot[][],
  signs: readonly Rect[],
): string[] {
  const wrong: string[] = [];
  const boxes = [
    ...found.placed,
    ...found.counted.map((one) => ({ ...one, id: `count of ${one.ids.join()}` })),
  ];
  boxes.forEach((one, i) => {
    if (one.box.left < 0 || one.box.top < 0 || one.box.right > ROOM.wide || one.box.bottom > ROOM.high)
      wrong.push(`${one.id} leaves the room`);
    for (const other of boxes.slice(i + 1)) {
      if (overlap(one.box, other.box)) wrong.push(`${one.id} on ${other.id}`);
    }
    if (signs.some((of) => overlap(of, one.box))) wrong.push(`${one.id} on a sign`);
    for (const line of lines) {
      for (let at = 1; at < line.length; at++) {
        if (through(line[at - 1] as Spot, line[at] as Spot, one.box)) wrong.push(`${one.id} on a line`);
      }
    }
  });
  for (const led of found.placed.filter((one) => one.led)) {
    const [from, to] = leader(led);
    for (const other of boxes) {
      if (other.id !== led.id && through(from, to, other.box))
        wrong.push(`the straight to ${led.id} on ${other.id}`);
    }
  }
  const told = [
    ...found.placed.map((one) => one.id),
    ...found.counted.flatMap((one) => one.ids),
    ...found.rest,
  ].sort();
  if (
    told.join() !==
    named
      .map((one) => one.id)
      .sort()
      .join()
  )
    wrong.push("a mark is lost or told twice");
  return wrong;
}

/** A small generator that prints its seed by the test's name (Park and Miller, 1988). */
function random(seed: number): () => number {
  let at = seed;
  return () => {
    at = (at * 16_807) % 2_147_483_647;
    return at / 2_147_483_647;
  };
}

function plan(seed: number, marks: number, near: number) {
  const next = random(seed);
  const spot = (): Spot => ({ x: next() * ROOM.wide, y: next() * ROOM.high });
  const middle = spot();
  const named: Named[] = Array.from({ length: marks }, (_, i) => {
    const at = next() < near ? { x: middle.x + next() * 60, y: middle.y + next() * 60 } : spot();
    return {
      id: `M-${String(i + 1).padStart(2, "0")}`,
      anchors: [at],
      clear: CLEAR,
      wide: 50 + next() * 60,
      short: 45,
    };
  }).filter(({ anchors: [at] }) => at && at.x <= ROOM.wide && at.y <= ROOM.high);
  const lines = Array.from({ length: 9 }, () => [spot(), spot(), spot()]);
  const signs = named.map((one) => sign(one.anchors[0] as Spot));
  return { named, lines, signs };
}

describe("names on the desk's plan", () => {
  for (let seed = 1; seed <= 40; seed++) {
    it(`of 60 marks lie on nothing and lose none, seed ${seed}`, () => {
      const { named, lines, signs } = plan(seed, 60, seed % 4 === 0 ? 0.8 : 0.1);
      const found = labels(named, ROOM, lines, signs);
      expect(faults(found, named, lines, signs)).toEqual([]);
    });
  }

  it("stand at the right of a mark that has all the room", () => {
    const found = labels([{ id: "A", anchors: [{ x: 300, y: 300 }], clear: CLEAR, wide: 40 }], ROOM, [], []);
    expect(found.placed).toEqual([
      {
        id: "A",
        anchor: { x: 300, y: 300 },
        led: false,
        short: false,
        box: { left: 310, top: 300 - HIGH / 2, right: 350, bottom: 300 + HIGH / 2 },
      },
    ]);
  });

  it("go to the left at the right edge, and off with a straight where lines leave no room beside", () => {
    const edge = labels([{ id: "A", anchors: [{ x: 630, y: 300 }], clear: CLEAR, wide: 40 }], ROOM, [], []);
    expect(edge.placed[0]?.box.right).toBe(620);
    const bars = [285, 292, 300, 308, 315].map((y) => [
      { x: 0, y },
      { x: 640, y },
    ]);
    const off = labels([{ id: "A", anchors: [{ x: 300, y: 300 }], clear: CLEAR, wide: 40 }], ROOM, bars, []);
    expect(off.placed[0]?.led).toBe(true);
    expect(off.counted).toEqual([]);
  });

  it("are counted where they stand when a heap has no room, and all come when it is seen nearer", () => {
    const at = (i: number, scale: number) => ({
      x: 320 + (i % 8) * scale,
      y: 300 + Math.floor(i / 8) * scale,
    });
    const heap = (scale: number) => {
      const spots = Array.from({ length: 60 }, (_, i) => at(i, scale));
      const named = spots.map((spot, i) => ({ id: `${i}`, anchors: [spot], clear: CLEAR, wide: 70 }));
      const inside = named.filter(({ anchors: [spot] }) => spot && spot.x < ROOM.wide && spot.y < ROOM.high);
      const signs = inside.map((one) => sign(one.anchors[0] as Spot));
      return { found: labels(inside, ROOM, [], signs), inside, signs };
    };
    const far = heap(3);
    expect(faults(far.found, far.inside, [], far.signs)).toEqual([]);
    expect(far.found.counted.length).toBeGreaterThan(0);
    const near = heap(90);
    expect(near.inside.length).toBeGreaterThan(8);
    expect(near.found.placed.length).toBe(near.inside.length);
  });

  it("say their short form where there is no room for the long one", () => {
    const one = { id: "A", anchors: [{ x: 30, y: 13 }], clear: CLEAR, wide: 90, short: 30 };
    const found = labels([one], { wide: 76, high: 26 }, [], []);
    expect(found.placed.map(({ short, box }) => [short, box.right - box.left])).toEqual([[true, 30]]);
  });

  it("that come first have room before the others", () => {
    const two = ["first", "second"].map((id) => ({ id, anchors: [{ x: 8, y: 13 }], clear: CLEAR, wide: 40 }));
    const tight = { wide: 66, high: 26 };
    const found = labels(two, tight, [], []);
    expect(found.placed.map((one) => one.id)).toEqual(["first"]);
    expect([...found.counted.flatMap((one) => one.ids), ...found.rest]).toEqual(["second"]);
  });
});
