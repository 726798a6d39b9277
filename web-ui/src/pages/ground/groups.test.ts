/** Groups of marks, and how each mark stands. */
import { beforeEach, describe, expect, test } from "vitest";
import { ground } from "../../state";
import type { Ground, MarkCard, SheetMark } from "../../wire";
import { groupName, groupsOf, standingOf } from "./groups";

const mark = (id: string) => ({ id }) as SheetMark;
const marks = (stem: string, many: number, from = 1) =>
  Array.from({ length: many }, (_, n) => mark(`${stem}${String(from + n).padStart(2, "0")}`));

describe("groups of marks", () => {
  test("a mark among sixty stands in a group of ten, named from which to which", () => {
    const names = groupsOf(marks("N-", 60)).map(groupName);
    expect(names).toEqual(["N-01 – 10", "N-11 – 20", "N-21 – 30", "N-31 – 40", "N-41 – 50", "N-51 – 60"]);
  });

  test("few marks of several names share a group; every mark is in one and one alone", () => {
    const all = [...marks("P-", 3), mark("SPOT"), ...marks("W", 12), mark("B-2A")];
    const groups = groupsOf(all);
    expect(groups.flatMap((one) => one.marks)).toEqual(all);
    expect(groups.map(groupName)).toEqual(["P-01 – SPOT", "W01 – 10", "W11 – B-2A"]);
    expect(groups.every((one) => one.marks.length <= 10)).toBe(true);
  });

  test("no marks make no groups", () => {
    expect(groupsOf([])).toEqual([]);
  });
});

describe("how a mark stands", () => {
  const card = (change: Partial<MarkCard>) =>
    ({ id: "P-1", counts: { kind: "counts" }, verdict: "on", ...change }) as MarkCard;
  const shows = (one: MarkCard | null) => {
    ground.value = { marks: one ? [one] : [] } as unknown as Ground;
    return standingOf(mark("P-1"));
  };
  beforeEach(() => {
    ground.value = null;
  });

  test("what was too close, or counts no more, is to be read again", () => {
    expect(shows(card({}))).toBe("on");
    expect(shows(card({ verdict: "high" }))).toBe("high");
    expect(shows(card({ verdict: "low" }))).toBe("low");
    expect(shows(card({ verdict: "too_close_low" }))).toBe("again");
    expect(shows(card({ counts: { kind: "laser_in_doubt", set_up: "S1" } }))).toBe("again");
  });

  test("a spot, and a mark that nobody has read, stand in no list", () => {
    expect(shows(card({ verdict: null }))).toBeNull();
    expect(shows(null)).toBeNull();
  });
});
