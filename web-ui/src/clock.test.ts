/** The hub's clock on the phone. */
import { describe, expect, it } from "vitest";
import { HubClock } from "./clock";

function clocks() {
  const time = { here: 0, wall: 0 };
  const clock = new HubClock(
    () => time.here,
    () => time.wall,
    null,
  );
  return { time, clock };
}

describe("the hub's clock", () => {
  it("trusts the answer with the shortest way", () => {
    const { time, clock } = clocks();
    time.here = 900;
    clock.answered(100, 50_000);
    time.here = 1_020;
    clock.answered(1_000, 60_000);
    // The middle of the short way is 1 010 here, 60 000 there.
    expect(clock.now()).toBe(60_010);
  });

  it("runs as fast as the hub's does", () => {
    const { time, clock } = clocks();
    clock.heard(1_000, 60);
    time.here = 2_000;
    expect(clock.now()).toBe(121_000);
  });

  it("tells a beat of now from one that lay in a sleeping phone", () => {
    const { time, clock } = clocks();
    clock.answered(0, 100_000);
    time.here = 10_000;
    expect(clock.fresh(110_000)).toBe(true);
    expect(clock.fresh(104_000)).toBe(false);
  });
});
