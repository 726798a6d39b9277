/** The states of the cab's screen, one by one and together: what its layout is measured in. Invented. */
import { LANGUAGES } from "./languages.ts";

/** A foot in tenth-micrometres. */
const FOOT = 3_048_000;

type Text = { word: string; amount: string; unit_word: string; warning?: string; exact?: string; unit?: string };

/** A text in each language and unit: what is not told otherwise reads alike in all. */
function texts(text: Text) {
  const units = ["tenths", "feet_inches", "millimetres"];
  return LANGUAGES.flatMap(({ id: language }) =>
    units.map((unit) => ({
      language,
      unit,
      warning: "",
      exact: "ground 0.30 ft HIGH ± 0.02",
      spoken: "",
      line: `${text.word} ${text.amount}`.trim(),
      ...text,
    })),
  );
}

let id = 9_000_000;

function call(text: Text, message: object, more: object = {}) {
  const now = Date.now();
  id++;
  return {
    screen: {
      kind: "call",
      call: {
        id,
        machine: "EX-1",
        mark: "N-04",
        target: "North wall footing",
        message,
        texts: texts(text),
        labels: [],
        by: "RT",
        made_at: now,
        sent_at: now,
        stale_at: now + 3_600_000,
        state: { kind: "sent" },
        warnings: [],
        ...more,
      },
    },
  };
}

const measured = (correction: unknown, hundredths: number) => ({
  kind: "measured",
  correction,
  dev: (hundredths * FOOT) / 100,
  amount: (hundredths * FOOT) / 100,
  verdict: hundredths > 0 ? "high" : "low",
});

const half = (half_tenths: number) => ({ half_tenths });

const beside = {
  who: "RT",
  mark: "N-04",
  nearness: { kind: "inside", by: 10 * FOOT },
  zone: "reach",
  loud: false,
  beside: false,
};

const face = { zone: "Z", name: "north face", why: { kind: "slough" }, since: 0, strip: 11.94 * FOOT };
const near = { kind: "tail_at_wall", structure: "HOUSE", apart: 9 * FOOT, needs: 10 * FOOT };
const slew = {
  agreed: [],
  note: "",
  since: 0,
  sides: [
    { machine: "EX-1", keeps_out_of: "east" },
    { machine: "EX-2", keeps_out_of: "west" },
  ],
};

const entry = (stage: string, person = "RT") => ({
  visit: `visit-of-${person}`,
  person,
  device: `phone-of-${person}`,
  mark: "N-04",
  stage,
  since: Date.now(),
  not_answered: false,
});

const down = () =>
  call({ word: "DOWN", amount: "3", unit_word: "TENTHS" }, measured({ down: half(6) }, 30));

/** Where each state comes from: its view, and what is expected of its number. */
export interface CabState {
  view: () => object;
  /** Its figures, where it shows a number. */
  number?: string;
  /** The keys that must be in reach. */
  keys?: (string | RegExp)[];
}

const none = { near: [], slews: [], faces_left: [], hand_dig: [], struck: [], spotter: null };
const nobody = { phase: "working", people: [], down: null };
const quiet = { ...none, way_in: nobody, stand: null };

const shows = (more: object, view: () => object) => () => ({ ...quiet, ...view(), ...more });

export const STATES: Record<string, CabState> = {
  "down-3": { view: shows({}, down), number: "3", keys: ["GOT IT"] },
  "down-3half": {
    view: shows({}, () => call({ word: "DOWN", amount: "3½", unit_word: "TENTHS" }, measured({ down: half(7) }, 35))),
    number: "3½",
  },
  "shave-half": {
    view: shows({}, () => call({ word: "SHAVE", amount: "½", unit_word: "TENTH" }, measured({ shave: half(1) }, 5))),
    number: "½",
  },
  "up-4": {
    view: shows({}, () =>
      call(
        { word: "UP", amount: "4", unit_word: "TENTHS", warning: "TOO DEEP – DON'T FILL" },
        measured({ up: half(8) }, -40),
      ),
    ),
    number: "4",
    keys: ["GOT IT"],
  },
  grade: {
    view: shows({}, () => call({ word: "GRADE", amount: "", unit_word: "" }, { ...measured("grade", 0), verdict: "on" })),
    keys: ["GOT IT"],
  },
  feet: {
    view: shows({}, () =>
      call({ word: "DOWN", amount: "1.4", unit_word: "FEET" }, measured({ down: { hundredths: 140 } }, 140)),
    ),
    number: "1.4",
  },
  inches: {
    view: shows({}, () =>
      call({ word: "DOWN", amount: "10 3/4", unit_word: "IN" }, measured({ down: half(18) }, 90)),
    ),
    number: "10 3/4",
  },
  "feet-inches": {
    view: shows({}, () =>
      call({ word: "DOWN", amount: "1 FT 1 7/8", unit_word: "IN" }, measured({ down: half(23) }, 116)),
    ),
    number: "1 FT 1 7/8",
  },
  millimetres: {
    view: shows({}, () => call({ word: "DOWN", amount: "91", unit_word: "MM" }, measured({ down: half(6) }, 30))),
    number: "91",
  },
  wait: {
    view: shows({}, () =>
      call({ word: "WAIT", amount: "", unit_word: "" }, { ...measured("wait", 11), verdict: "too_close_high" }),
    ),
  },
  "by-eye": {
    view: shows({}, () => call({ word: "COME TO ME", amount: "", unit_word: "" }, { kind: "by_eye", word: "come_to_me" })),
  },
  line: {
    view: shows({}, () =>
      call(
        { word: "LINE", amount: "2½", unit_word: "TENTHS", exact: "0.30 inside ± 0.035" },
        { kind: "edge", shot: { distance: FOOT / 3, guard: 1, standing: "near", half_tenths: 5 } },
        { line: { name: "CREEK", lies: "west" } },
      ),
    ),
    number: "2½",
  },
  "hand-dig": {
    view: shows({}, () =>
      call({ word: "DOWN", amount: "4", unit_word: "TENTHS" }, measured({ down: half(8) }, 40), {
        labels: ["hand_dig"],
      }),
    ),
    number: "4",
    keys: ["GOT IT"],
  },
  "look-strip": {
    view: shows({}, () =>
      call({ word: "DOWN", amount: "3", unit_word: "TENTHS" }, measured({ down: half(6) }, 30), { reminder: beside }),
    ),
    number: "3",
    keys: ["GOT IT"],
  },
  "three-strips": {
    view: shows({ near: [near], slews: [slew], faces_left: [face] }, () =>
      call({ word: "DOWN", amount: "3", unit_word: "TENTHS" }, measured({ down: half(6) }, 30), { reminder: beside }),
    ),
    number: "3",
    keys: ["GOT IT", "AGREED"],
  },
  "look-loud": {
    view: shows({}, () =>
      call({ word: "DOWN", amount: "3", unit_word: "TENTHS" }, measured({ down: half(6) }, 30), {
        reminder: { ...beside, loud: true },
      }),
    ),
    keys: ["EYE CONTACT"],
  },
  "where-i-stand": {
    view: shows({ stand: { since: null, near: null, old_at: null, called: "N-04" } }, () =>
      call({ word: "DOWN", amount: "3", unit_word: "TENTHS" }, measured({ down: half(6) }, 30), {
        reminder: { ...beside, zone: null, nearness: { kind: "place_unknown" }, loud: true, beside: true },
      }),
    ),
    number: "3",
    keys: ["GOT IT", /^I STAND AT N-04/],
  },
  "no-call": {
    view: shows({ stand: { since: null, near: null, old_at: null, called: "N-04" } }, () => ({
      screen: { kind: "no_call" },
    })),
    keys: [/^I STAND AT N-04/, "ELSEWHERE"],
  },
  withdrawn: {
    view: shows({ near: [near], slews: [slew], faces_left: [face] }, () => ({
      screen: { kind: "old", mark: "N-04", why: "withdrawn", since: 0 },
    })),
    keys: ["AGREED"],
  },
  held: {
    view: shows({}, () => ({
      screen: {
        kind: "old",
        mark: "N-04",
        why: "held",
        held: {
          english: "The paint of GAS is gone: have it marked again before anybody digs there.",
          spanish: "Se borró la marca de GAS.",
          portuguese: "A pintura de GAS se apagou.",
        },
        since: 0,
      },
    })),
  },
  pause: {
    view: shows({}, () => ({ screen: { kind: "pause", set_up: "S1", why: { kind: "bumped" }, since: 0 } })),
  },
  "new-target": {
    view: shows({}, () => ({
      screen: { kind: "new_target", target: "PAD", name: "North wall footing", revision: 2, since: 0 },
    })),
    keys: ["SEEN"],
  },
  stop: {
    view: shows({}, () => ({
      screen: { kind: "stop", press: 1, by: "RT", why: "somebody in the cut", since: Date.now(), all: true },
    })),
    keys: [/^BUCKET DOWN/],
  },
  "stop-while-in": {
    view: shows({ way_in: { phase: "occupied", people: [entry("in"), entry("asked", "JM")], down: null } }, () => ({
      screen: { kind: "stop", press: 1, by: "RT", why: "", since: Date.now(), all: true },
    })),
    keys: [/^BUCKET DOWN/],
  },
  asks: {
    view: shows({ way_in: { phase: "asked", people: [entry("asked")], down: null } }, () => ({
      screen: { kind: "way_in" },
    })),
    keys: [/^BUCKET DOWN/, "WAIT RT", "NO RT"],
  },
  "in-and-asks": {
    view: shows(
      { way_in: { phase: "occupied", people: [entry("in"), entry("asked", "JM")], down: { by: "OW", since: 0 } } },
      () => ({ screen: { kind: "way_in" } }),
    ),
    keys: [/^BUCKET DOWN/, "WAIT JM", "NO JM"],
  },
  "not-agreed": {
    view: shows({ way_in: { phase: "unconfirmed", people: [entry("unconfirmed")], down: null } }, () => ({
      screen: { kind: "way_in" },
    })),
    keys: [/^BUCKET DOWN/, /^RELEASE/],
  },
  "leave-face": {
    view: shows({}, () => ({
      screen: { kind: "leave_face", alarm: 1, zone: "Z", name: "north face", why: { kind: "slough" }, since: Date.now() },
    })),
    keys: ["I AM AWAY"],
  },
};
