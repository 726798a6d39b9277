/** Times as a supervisor types them. */
import { expect, test } from "vitest";
import { FOOT } from "../../../grade";
import type { SheetMark } from "../../../wire";
import { askedOf, momentTyped } from "./told";

const morning = new Date(2030, 4, 14, 6, 40).getTime();

test("a time of day is taken on the day that is reviewed", () => {
  expect(momentTyped("10:05", morning)).toBe(new Date(2030, 4, 14, 10, 5).getTime());
  expect(momentTyped(" 6:40 ", morning)).toBe(morning);
});

test("the small hours of a day that goes on past midnight lie behind its evening", () => {
  const evening = new Date(2030, 4, 14, 20, 0).getTime();
  expect(momentTyped("01:30", evening)).toBe(new Date(2030, 4, 15, 1, 30).getTime());
});

test("what is no time of day is none", () => {
  for (const text of ["", "noon", "25:00", "10:65", "10", "10:5"]) {
    expect(momentTyped(text, morning)).toBeNull();
  }
});

const MARKS = [{ id: "P-1", place: { x: 3 * FOOT, y: 4 * FOOT } }] as unknown as SheetMark[];
const QUESTION = {
  machine: "EX-1",
  mark: "P-1",
  east: "",
  north: "",
  fromDay: "2030-05-14",
  from: "10:05",
  toDay: "2030-05-14",
  to: "11:30",
};

test("what stands on the page is asked, the last minute whole", () => {
  expect(askedOf(QUESTION, MARKS)).toEqual({
    machine: "EX-1",
    x: 3 * FOOT,
    y: 4 * FOOT,
    from: new Date(2030, 4, 14, 10, 5).getTime(),
    to: new Date(2030, 4, 14, 11, 30, 59, 999).getTime(),
  });
  expect(askedOf({ ...QUESTION, mark: "", east: "-1.5", north: "2" }, MARKS)).toMatchObject({
    x: -1.5 * FOOT,
    y: 2 * FOOT,
  });
});

test("nothing is asked that does not stand there", () => {
  expect(askedOf({ ...QUESTION, machine: "" }, MARKS)).toBe("machine");
  expect(askedOf({ ...QUESTION, mark: "" }, MARKS)).toBe("place");
  expect(askedOf({ ...QUESTION, mark: "P-9", east: "1", north: "1" }, MARKS)).toBe("place");
  expect(askedOf({ ...QUESTION, from: "soon" }, MARKS)).toBe("from");
  expect(askedOf({ ...QUESTION, fromDay: "" }, MARKS)).toBe("from");
  expect(askedOf({ ...QUESTION, to: "" }, MARKS)).toBe("to");
  expect(askedOf({ ...QUESTION, to: "9:00" }, MARKS)).toBe("order");
});
