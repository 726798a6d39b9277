/** For tests: a cab with a live call, as its page gets it. Invented. */
import { FOOT } from "../../grade";
import type { CallView, Me, Operator } from "../../wire";

export const call: CallView = {
  id: 7,
  machine: "EX-1",
  mark: "N-04",
  target: "North wall footing",
  message: {
    kind: "measured",
    correction: { down: { half_tenths: 6 } },
    dev: (30 * FOOT) / 100,
    amount: (30 * FOOT) / 100,
    verdict: "high",
  },
  texts: [
    {
      language: "english",
      unit: "tenths",
      word: "DOWN",
      amount: "3",
      unit_word: "TENTHS",
      warning: "",
      exact: "0.30 ft",
      spoken: "down three",
      line: "DOWN 3",
    },
  ],
  labels: [],
  by: "RT",
  made_at: 1_000,
  sent_at: 1_000,
  stale_at: 60_000,
  state: { kind: "sent" },
  warnings: [],
};

export const view: Operator = {
  site: "Invented",
  day: "2030-05-14",
  rain: { word: 0, at: null, since: null, by: "" },
  machine: "EX-1",
  shape: "square",
  works_on: ["North wall footing"],
  direction: "west",
  device: "m1",
  screen: { kind: "call", call },
  faces_left: [],
  struck: [],
  hand_dig: [],
  near: [],
  slews: [],
  way_in: { phase: "working", people: [] },
};

export const who: Me = {
  device: "m1",
  person: "OW",
  roles: ["operator"],
  asks_who: false,
  machine: "EX-1",
  language: "english",
  unit: "tenths",
  site: "Invented",
  day: "2030-05-14",
  build: "b",
};
