/** The address holds the page and what is asked of it. */
import { beforeEach, expect, test, vi } from "vitest";
import { goTo, hashOf, place, placeIn, refine } from "./address";

beforeEach(() => {
  vi.useFakeTimers();
  history.replaceState(null, "", "/");
  dispatchEvent(new PopStateEvent("popstate"));
});

test("what goes into an address comes back, whatever is typed", () => {
  const asked = { words: "50 % & more = 3?#", mark: "N-04", day: "" };
  const there = placeIn(hashOf({ page: "log", asked }));
  expect(there).toEqual({ page: "log", asked: { words: asked.words, mark: "N-04" } });
  expect(placeIn("")).toEqual({ page: "", asked: {} });
  expect(hashOf({ page: "", asked: {} })).toBe("");
});

test("a step is in the address at once, what is typed after a while and in the same place", () => {
  const steps = history.length;
  goTo("log", {});
  expect(location.hash).toBe("#log");
  refine("log", { words: "d" });
  refine("log", { words: "do" });
  expect(place.value.asked).toEqual({ words: "do" });
  expect(location.hash).toBe("#log");
  vi.runAllTimers();
  expect(location.hash).toBe("#log?words=do");
  expect(history.length).toBe(steps + 1);
});

test("a step after what was just typed leaves it in the address behind", () => {
  goTo("log", {});
  refine("log", { words: "down" });
  goTo("log", { words: "down", mark: "P-1" });
  expect(location.hash).toBe("#log?words=down&mark=P-1");
});

test("back and forward are followed", () => {
  goTo("log", { mark: "P-1" });
  history.replaceState(null, "", "/#review?part=told");
  dispatchEvent(new PopStateEvent("popstate"));
  expect(place.value).toEqual({ page: "review", asked: { part: "told" } });
});

test("a page is found as it was left", () => {
  goTo("log", { mark: "P-2" });
  goTo("now");
  goTo("log");
  expect(place.value.asked).toEqual({ mark: "P-2" });
});
