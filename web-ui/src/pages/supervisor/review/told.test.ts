/** Times as a supervisor types them. */
import { expect, test } from "vitest";
import { momentTyped } from "./told";

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
