/** What READ says before it sends, and what it tells to show by hand when nothing was sent. */
import { render } from "preact";
import { act } from "preact/test-utils";
import { beforeEach, describe, expect, it } from "vitest";
import { FOOT } from "../../grade";
import { ground, sheet } from "../../state";
import type { Ground, Sheet, TakeReading } from "../../wire";
import { chosen } from "./at";
import { ByHand, remembersEcho } from "./by_hand";
import { echo } from "./echo";

// HI 105.00, dig to 100.00: 4.70 is 0.30 high, 5.40 is 0.40 low (derived by hand).
const mark = {
  id: "P-1",
  dig_to: { at: 100 * FOOT },
  machine: "EX-1",
  tolerance: { high: FOOT / 10, low: FOOT / 5 },
  aim: 0,
  place: { x: 0, y: 0 },
  note: "",
};
const shot = {
  mark: "P-1",
  set_up: "S1",
  height: 105 * FOOT,
  square: 1,
  doubt: { benchmark: 0, backsight: 0, foresight: 0, surface: 0 },
  guard_factor: 0,
  before: [],
};
const setUp = { id: "S1", height: 105 * FOOT, state: { kind: "proven" } };
const signals = ["stop", "lower", "so_much"];
const started = { checks: [{ check: "hand_signals", said: { value: "OW and RT", signals } }] };

function stands(change: object = {}, of: object = {}) {
  sheet.value = {
    marks: [{ ...mark, ...of }],
    rods: [{ id: "A", unit: "feet_hundredths", length: 13 * FOOT, bracket: 0 }],
    lines: [],
  } as unknown as Sheet;
  ground.value = {
    set_ups: [setUp],
    machines: [{ id: "EX-1", marks_within: [], way_in: { people: [] } }],
    shots: [shot],
    marks: [],
    cuts: { faces: [] },
    start: started,
    ...change,
  } as unknown as Ground;
}

beforeEach(() => {
  chosen.value = { ...chosen.value, mark: "P-1", paper: null };
  stands();
});

describe("the echo", () => {
  it("says how the ground stands and what the cab would be told", () => {
    expect(echo("4.70", null)).toMatchObject({ ground: "HIGH 0.30 ft", call: "DOWN 3", kept: null });
    expect(echo("5.40", null)).toMatchObject({ ground: "LOW 0.40 ft", call: "UP 4", kept: null });
    expect(echo("5.00", null)).toMatchObject({ ground: "ON GRADE 0.00", call: "GRADE", kept: null });
  });

  const doubtful = { set_ups: [{ ...setUp, state: { kind: "in_doubt" } }], shots: [] };
  it.each([
    ["the laser is in doubt", doubtful, {}, "The laser is in doubt"],
    [
      "no second benchmark has proven it",
      { ...doubtful, set_ups: [{ ...setUp, state: { kind: "unproven" } }] },
      {},
      "in doubt",
    ],
    ["the mark has no target", {}, { dig_to: null }, "The mark has no target"],
    [
      "its target has nothing here",
      {},
      {
        dig_to: null,
        why_no_grade: { english: "P-1 lies outside of PAD.", spanish: "P-1 queda fuera de PAD." },
      },
      "outside of PAD",
    ],
    ["no machine is assigned", { machines: [] }, {}, "No machine is assigned"],
    ["the face over it was left", { shots: [{ ...shot, held: "face_left" }] }, {}, "face over it"],
  ])("names no call while %s, and says that it is kept and why", (_what, change, of, why) => {
    stands(change, of);
    const said = echo("4.70", null);
    expect(said.call).toBe("");
    expect(said.kept).toContain("Kept as a spot elevation");
    expect(said.kept).toContain(why);
    expect(said.ground).toBe("100.30 ft");
    // Before a digit is typed it says so, too.
    expect(echo("", null).kept).toBe(said.kept);
  });

  it("of a reading from paper says that no call goes out", () => {
    chosen.value = { ...chosen.value, paper: { at: 1, by: "RT" } };
    expect(echo("4.70", null)).toMatchObject({
      ground: "HIGH 0.30 ft",
      call: "",
      kept: "From paper: kept, no call goes out.",
    });
  });
});

describe("what was not sent", () => {
  const root = document.createElement("div");
  const reading = (text: string) =>
    ({
      kind: "take_reading",
      mark: "P-1",
      set_up: "S1",
      rod: "A",
      text,
      mode: "rod",
    }) as unknown as TakeReading;
  const shown = (command: TakeReading) => {
    act(() => {
      render(null, root);
      render(<ByHand command={command} />, root);
    });
    return root.textContent ?? "";
  };

  it("is shown by hand: the mark, the call as it was said, the signals that were agreed", () => {
    const down = reading("4.70");
    remembersEcho(down);
    expect(shown(down)).toContain("P-1: show DOWN 3");
    expect(shown(down)).toContain("Signal LOWER + SO MUCH, agreed: OW and RT");
    const up = reading("5.40");
    remembersEcho(up);
    expect(shown(up)).toContain("P-1: show UP 4");
    expect(shown(up)).toContain("No hand signal for it was agreed today");
  });

  it("is not shown while a STOP stands, nor where work is held since", () => {
    const down = reading("4.70");
    remembersEcho(down);
    const stop = { by: "PN", why: "", since: 1, all: true, press: 1 };
    stands({ machines: [{ id: "EX-1", marks_within: [], way_in: { people: [] }, stop }] });
    expect(shown(down)).toContain("STOP stands: show nothing before it is lifted.");
    expect(shown(down)).not.toContain("Signal");
    stands({ shots: [{ ...shot, held: "face_left" }] });
    expect(shown(down)).toContain("nothing to show");
    expect(shown(down)).not.toContain("DOWN 3");
  });

  it("without an echo, as of a place by two tapes, tells nobody to show anything", () => {
    expect(shown(reading("4.70"))).toContain("nothing to show");
  });
});
