/** The wire is typed: what is misspelt does not compile. The compiler is the test; at run time there is nothing to see. */
import { expect, it } from "vitest";
import type { Command, FromHub, ToHub } from "./wire";

/** Lines that must not compile: `tsc` fails on a directive that hides no error. */
const misspelt: unknown[] = [
  // @ts-expect-error There is no such kind.
  { kind: "stop_al" } satisfies Command,
  // @ts-expect-error The field is `why`.
  { kind: "stop_all", reason: "gas" } satisfies Command,
  // @ts-expect-error A press that says nothing more has no fields.
  { kind: "check_me", why: "tired" } satisfies Command,
  // @ts-expect-error What is wrong is named.
  { kind: "wrong_number" } satisfies Command,
  // @ts-expect-error A number, not its text.
  { kind: "wrong_number", reading: "7" } satisfies Command,
  // @ts-expect-error A view has its topic's shape.
  { kind: "view", topic: "operator", seq: 1, view: { machines: [] } } satisfies FromHub,
  // @ts-expect-error The phone says `have`, with a call.
  { kind: "have", calls: 7 } satisfies ToHub,
];

const right: Command[] = [
  { kind: "stop_all", why: "gas" },
  { kind: "check_me" },
  { kind: "lift_stop", press: 7, why: "looked" },
];

it("holds commands that compile, beside those that do not", () => {
  expect([misspelt.length, right.length]).toEqual([7, 3]);
});
