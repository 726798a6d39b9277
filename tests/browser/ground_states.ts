/** The states of the ground person's phone that are looked at and measured, each reached as a crew reaches it. */
import type { Page } from "@playwright/test";
import { type Crew, expect, FOOT, hold, type Phone, sendsReading, typeRod } from "./crew.ts";

/** Marks as on a day's work, faces and a buried line: added to the yard. Invented. */
export const FULL_YARD = `
[excavation]
competent = ["PN"]

[[face]]
id = "BANK"
name = "north bank"
kind = "face"
toe = [["0 ft", "225 ft", "100 ft"], ["60 ft", "225 ft", "100 ft"]]
bank = "left"
ground = { flat = { elevation = "110 ft" } }
pins = ["C1-C2"]
target = "PAD"

[[face]]
id = "EAST"
name = "east bank"
kind = "face"
toe = [["0 ft", "325 ft", "100 ft"], ["60 ft", "325 ft", "100 ft"]]
bank = "left"
ground = { flat = { elevation = "110 ft" } }
pins = ["C3-C4"]
target = "PAD"

[[utility]]
id = "MAIN"
kind = "gas"
points = [["231 ft", "0 ft"], ["231 ft", "40 ft"]]
outside = "2 in"

[[line]]
id = "SETBACK"
kind = "setback"
points = [["0 ft", "-40 ft"], ["120 ft", "-40 ft"]]
keep = "left"
no_cross = true
doubt = "0.02 ft"
${Array.from({ length: 60 }, (_, n) => {
  const name = `N-${String(n + 1).padStart(2, "0")}`;
  return `
[[mark]]
id = "${name}"
target = "${n % 10 === 9 ? "DRAIN" : "PAD"}"
at = ["${130 + (n % 10) * 12} ft", "${60 + Math.floor(n / 10) * 12} ft"]
`;
}).join("")}`;

export const key = (page: Page, name: string | RegExp) =>
  page.getByRole("button", typeof name === "string" ? { name, exact: true } : { name });

export async function press(page: Page, ...names: (string | RegExp)[]): Promise<void> {
  for (const name of names) await key(page, name).click();
}

export interface Yard {
  crew: Crew;
  ground: Phone;
  cab: Phone;
}

/** A state: its name, how it is reached from the one before it, and the text that shows that it stands. */
export interface State {
  name: string;
  reach: (yard: Yard) => Promise<void>;
}

const near = { x: 20 * FOOT, y: 30 * FOOT };
const far = { x: 300 * FOOT, y: 300 * FOOT };

/** What is typed, sent, asked and lost. */
export const READING: State[] = [
  { name: "empty", reach: async () => undefined },
  { name: "typed", reach: ({ ground }) => typeRod(ground.page, "4.70") },
  {
    name: "typed-stop",
    reach: async ({ crew, ground }) => {
      await crew.hub.say({ kind: "stop_all", why: "somebody in the cut" });
      await expect(ground.page.locator(".all-stop")).toBeVisible();
    },
  },
  {
    name: "typed-stop-no-link",
    reach: async ({ ground }) => {
      ground.link.cut();
      await expect(ground.page.getByText("No link to the hub", { exact: false })).toBeVisible();
    },
  },
  {
    name: "not-sent",
    reach: async ({ ground }) => {
      await press(ground.page, "SEND");
      await expect(ground.page.getByText("1 NOT SENT – USE HANDS")).toBeVisible();
    },
  },
  {
    name: "held",
    reach: async ({ crew, ground }) => {
      await crew.hub.say({ kind: "lift_stop", press: Number.MAX_SAFE_INTEGER, why: "looked round" });
      ground.link.mend();
      await expect(ground.page.locator(".held-words")).toBeVisible();
    },
  },
  {
    name: "sent",
    reach: async ({ ground }) => {
      await ground.page.locator(".held-words").getByRole("button", { name: "SEND", exact: true }).click();
      await expect(ground.page.getByText("ON THE CAB'S SCREEN", { exact: true })).toBeVisible();
    },
  },
  {
    name: "asked",
    reach: async ({ ground }) => {
      await press(ground.page, "READ AGAIN");
      await sendsReading(ground.page, "3.70");
      await expect(ground.page.getByRole("alertdialog")).toBeVisible();
    },
  },
  {
    name: "by-eye",
    reach: async ({ ground }) => {
      await press(ground.page, "READ IT AGAIN", "BY EYE");
    },
  },
  {
    name: "inches",
    reach: async ({ ground }) => {
      await press(ground.page, "CANCEL", "Rod A");
      await ground.page.getByRole("group", { name: "Rod", exact: true }).getByRole("button", { name: "B" }).click();
      await press(ground.page, "CLOSE");
      for (const digit of ["4", "ft", "1", "0", "in", "7/8"]) await press(ground.page, digit);
    },
  },
];

/** Nothing can become a call. */
export const DOUBT: State[] = [
  {
    name: "no-target",
    reach: async ({ ground }) => {
      await press(ground.page, "MARKS", /^SPOT-1/);
      await typeRod(ground.page, "4.70");
    },
  },
  {
    name: "in-doubt",
    reach: async ({ crew, ground }) => {
      await press(ground.page, "MARKS", /^P-2/);
      await crew.hub.say({ kind: "say_bumped", set_up: "S1" });
      await expect(ground.page.getByText("SETUP-1 IN DOUBT", { exact: true })).toBeVisible();
      await typeRod(ground.page, "4.70");
    },
  },
];

/** Into the keep-out and out again. */
export const KEEP_OUT: State[] = [
  {
    name: "ask",
    reach: async ({ crew, ground }) => {
      await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: near });
      await expect(key(ground.page, "ASK EX-1 TO COME IN")).toBeVisible();
    },
  },
  {
    name: "ask-two",
    reach: async ({ crew, ground }) => {
      await crew.hub.say({ kind: "place_machine", machine: "EX-2", at: near });
      await expect(key(ground.page, "ASK EX-2 TO COME IN")).toBeVisible();
    },
  },
  {
    name: "outside-two",
    reach: async ({ ground }) => {
      await key(ground.page, /^NOT ENTERING/).first().click();
      await key(ground.page, /^NOT ENTERING/).first().click();
      await typeRod(ground.page, "4.70");
    },
  },
  {
    name: "stay-out",
    reach: async ({ crew, ground }) => {
      await crew.hub.say({ kind: "place_machine", machine: "EX-2", at: far });
      await press(ground.page, "ASK EX-1 TO COME IN");
      await expect(ground.page.getByText(/STAY OUT/).first()).toBeVisible();
    },
  },
  {
    name: "come-in",
    reach: async ({ cab, ground }) => {
      await hold(cab.page, "BUCKET DOWN · LEVER LOCKED", async () => {
        await expect(ground.page.getByText("BUCKET IS DOWN", { exact: false })).toBeVisible();
      });
    },
  },
  {
    name: "in",
    reach: async ({ ground }) => {
      await press(ground.page, "I GO IN");
      await expect(ground.page.getByText(/^YOU ARE IN/)).toBeVisible();
    },
  },
  { name: "in-typed", reach: ({ ground }) => typeRod(ground.page, "4.70") },
  {
    name: "in-stop",
    reach: async ({ crew, ground }) => {
      await crew.hub.say({ kind: "stop_all", why: "somebody in the cut" });
      await expect(ground.page.locator(".all-stop")).toBeVisible();
    },
  },
  {
    name: "in-stop-no-link",
    reach: async ({ ground }) => {
      ground.link.cut();
      await expect(ground.page.getByText("No link to the hub", { exact: false })).toBeVisible();
    },
  },
];

/** A panel or a page that is opened from READ, and closed again. */
const panel = (name: string, open: (string | RegExp)[], close: (string | RegExp)[]): State[] => [
  { name, reach: ({ ground }) => press(ground.page, ...open) },
  { name: "", reach: ({ ground }) => press(ground.page, ...close) },
];

/** What is opened. */
export const PANELS: State[] = [
  ...panel("edge", ["EDGE"], ["CANCEL"]),
  ...panel("more", ["MORE"], ["CLOSE"]),
  ...panel("with", [/^EX-1/], ["CLOSE"]),
  ...panel("laser", ["LASER"], ["READ"]),
  ...panel("start", ["LASER", /START CHECKS/], ["CLOSE", "READ"]),
  ...panel("check", ["LASER", "CHECK SHOT", /^BM-1/], ["CLOSE", "READ"]),
  ...panel("marks", ["MARKS"], ["READ"]),
  ...panel("plan", ["MARKS", "PLAN"], ["READ"]),
  ...panel("face", ["MARKS", "FACE"], ["CLOSE", "READ"]),
  ...panel("tools", ["MARKS", /^PAINT · TIES/], ["CLOSE", "READ"]),
  ...panel("sums", ["MARKS", /^PAINT · TIES/, "SUMS"], ["CLOSE", "READ"]),
  ...panel("work", ["MARKS", /^PAINT · TIES/, "WORK"], ["READ"]),
];
