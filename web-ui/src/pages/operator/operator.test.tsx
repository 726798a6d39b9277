/** The cab's page shows a number only while everything behind it is alive. */
import { render } from "preact";
import { act } from "preact/test-utils";
import { beforeEach, describe, expect, it } from "vitest";
import { FOOT } from "../../grade";
import { half } from "../../parts/call";
import { notes } from "../../sound";
import { beats, bye, halted, linked, me, now, operator, unkept } from "../../state";
import type { CallText, CallView, Me } from "../../wire";
import { call, view, who } from "./given";
import { OperatorPage } from "./operator";
import { numberEms, Section } from "./section";
import { tuneOf } from "./tunes";

const root = document.createElement("div");
document.body.append(root);
const numbers = () => root.querySelectorAll(".number").length;

beforeEach(() => {
  act(() => {
    render(null, root);
    me.value = who;
    operator.value = view;
    now.value = 2_000;
    linked.value = true;
    bye.value = null;
    halted.value = false;
    unkept.value = null;
    render(<OperatorPage />, root);
  });
});

describe("the cab's page", () => {
  it("shows the live call", () => {
    expect(numbers()).toBe(1);
    expect(root.querySelector(".told")?.getAttribute("aria-label")).toContain("DOWN 3");
  });

  it("says HAND DIG, a rule of depth and a face that is left beside the call", () => {
    act(() => {
      operator.value = {
        ...view,
        screen: {
          kind: "call",
          call: {
            ...call,
            labels: ["hand_dig"],
            warnings: [
              {
                zone: "Z",
                rule: "egress",
                state: "next_tenth",
                limit: 4 * FOOT,
                left: (8 * FOOT) / 100,
                depth: (392 * FOOT) / 100,
                section: "s",
              },
            ],
          },
        },
        faces_left: [
          { zone: "Z", name: "north face", why: { kind: "slough" }, since: 1_000, strip: 11.94 * FOOT },
        ],
      };
    });
    expect(root.querySelector(".hand-dig")?.textContent).toContain("HAND DIG");
    expect(root.querySelector(".depth-warning")?.textContent).toContain("0.08 ft left to 4 ft");
    expect(root.querySelector(".ground-strip.left")?.textContent).toContain("nobody within 12 ft");
  });

  it("says in which part of the keep-out somebody stands, and that it may be the blind side", () => {
    const reminder = {
      who: "RT",
      mark: "N-04",
      nearness: { kind: "inside", by: 10 * FOOT },
      zone: "reach",
      loud: false,
    } as const;
    act(() => {
      operator.value = { ...view, screen: { kind: "call", call: { ...call, reminder } } };
    });
    const strip = root.querySelector(".strip")?.textContent;
    expect(strip).toContain("RT AT N-04");
    expect(strip).toContain("IN YOUR REACH, MAYBE ON YOUR BLIND SIDE");
  });

  it("shows no number to a machine that must leave a face", () => {
    act(() => {
      const left = { kind: "leave_face", alarm: 1, zone: "Z", name: "north face", since: 1_000 } as const;
      operator.value = { ...view, screen: { ...left, why: { kind: "pins", pins: "C1-C2" } } };
    });
    expect(numbers()).toBe(0);
    expect(root.textContent).toContain("GET AWAY FROM THE FACE");
    expect(root.textContent).toContain("Pins C1-C2 open too fast");
  });

  it("starts the number's clock anew with each heartbeat", () => {
    const armed = () => root.querySelector(".living")?.className;
    const before = armed();
    act(() => {
      beats.value++;
    });
    expect(armed()).not.toBe(before);
    expect(root.querySelector(".no-link")?.className.endsWith(String(armed()).slice(-7))).toBe(true);
  });

  it("takes the number away when the link is lost", () => {
    act(() => {
      linked.value = false;
    });
    expect(numbers()).toBe(0);
    expect(root.textContent).toContain("WATCH THE GROUND PERSON");
  });

  it("takes the number away when the call has grown old on the hub's clock", () => {
    act(() => {
      now.value = 60_000;
    });
    expect(numbers()).toBe(0);
    expect(root.textContent).toContain("OLD – ASK");
  });

  it("takes the number away when another phone is the screen", () => {
    act(() => {
      operator.value = { ...view, device: "m2" };
    });
    expect(numbers()).toBe(0);
  });

  it("shows no number under a stop, and says who pressed", () => {
    act(() => {
      operator.value = {
        ...view,
        screen: { kind: "stop", press: 1, by: "RT", why: "", since: 1_000, all: true },
      };
    });
    expect(numbers()).toBe(0);
    expect(root.textContent).toContain("RT pressed STOP");
  });

  it("shows no number of a hub that can't keep its log, and STOP all the same, said to be in no log", () => {
    act(() => {
      halted.value = true;
    });
    expect(numbers()).toBe(0);
    expect(root.textContent).toContain("NO NUMBERS – USE HANDS");
    act(() => {
      unkept.value = { by: "RT", why: "under the bank", since: 1_500, machine: "EX-2" };
    });
    expect(root.querySelector(".stop-screen")).toBeNull();
    act(() => {
      unkept.value = { by: "RT", why: "under the bank", since: 1_500 };
    });
    expect(root.querySelector(".stop-screen")?.textContent).toContain("under the bank");
    expect(root.querySelector(".stop-screen")?.textContent).toContain("not in the log");
  });

  it("says what holds the work where a call was ended, and that a machine is off the site", () => {
    act(() => {
      operator.value = {
        ...view,
        screen: {
          kind: "old",
          mark: "N-04",
          why: "held",
          held: { english: "The paint of GAS is gone.", spanish: "Se borró la marca de GAS." },
          since: 1_900,
        },
      };
    });
    expect(numbers()).toBe(0);
    expect(root.textContent).toContain("The paint of GAS is gone.");
    act(() => {
      operator.value = { ...view, screen: { kind: "off_site" } };
    });
    expect(root.textContent).toContain("MACHINE NOT ON THE SITE FILE");
  });

  it("names who is in under STOP, and still does when the link is cut", () => {
    const people = [
      { visit: "v-1", person: "RT", device: "g1", stage: "in" as const, since: 1_000, not_answered: false },
    ];
    const down = { by: "OW", since: 900 };
    act(() => {
      operator.value = {
        ...view,
        screen: { kind: "way_in" },
        way_in: { phase: "occupied", down, people },
      };
    });
    expect(numbers()).toBe(0);
    expect(root.textContent).toContain("RT IS IN");
    expect(root.querySelector(".release.outline")).not.toBeNull();
    act(() => {
      linked.value = false;
    });
    expect(root.textContent).toContain("RT IN. STAND STILL.");
  });

  it("draws grade as ground flush with the line, without a number and without motion", () => {
    act(() => {
      const message = { ...call.message, correction: "grade", verdict: "on" } as CallView["message"];
      const texts = call.texts.map((text) => ({ ...text, word: "GRADE", amount: "", unit_word: "" }));
      operator.value = { ...view, screen: { kind: "call", call: { ...call, message, texts } } };
    });
    expect(root.querySelector(".section.grade .soil .hatch")).not.toBeNull();
    expect(root.querySelector(".section.grade .target-line")).not.toBeNull();
    expect(root.querySelector(".section.grade polyline")).toBeNull();
  });

  it("says that nobody has asked, and to look all the same", () => {
    expect(root.textContent).toContain("NOBODY HAS ASKED TO COME IN – LOOK ANYWAY");
  });

  it("lets half, body and tone agree", () => {
    expect(half(call.message)).toBe("down");
    expect(root.querySelector(".section.down .soil")).not.toBeNull();
    const { tune, tenths } = tuneOf(call);
    expect([tune, Math.round(tenths)]).toEqual(["down", 3]);
    const falling = notes(tune, tenths);
    expect(falling).toHaveLength(3);
    expect(falling.every((note) => note.to < note.from)).toBe(true);
  });
});

describe("a number in feet and inches", () => {
  it("stands whole on the cab's screen: feet, inches and the fraction", () => {
    const told = { ...call.texts[0], unit: "feet_inches", amount: "1 FT 1 3/4", unit_word: "IN" } as CallText;
    const page = document.createElement("div");
    me.value = { unit: "feet_inches", language: "english" } as Me;
    act(() => render(<Section call={{ ...call, texts: [told] }} />, page));
    const [feet, word, inches, fraction] = [...(page.querySelector(".number")?.children ?? [])];
    expect([feet?.textContent, word?.textContent, inches?.textContent]).toEqual(["1", "FT", "1"]);
    // Stacked: one figure over the other, a bar between them.
    expect([...(fraction?.children ?? [])].map((one) => one.textContent)).toEqual(["3", "", "4"]);
    render(null, page);
  });
});

describe("the width of a number", () => {
  it("grows with what is told", () => {
    expect(numberEms("3", false)).toBeLessThan(numberEms("3½", false));
    expect(numberEms("1.2", false)).toBeLessThan(numberEms("1.2", true));
    expect(numberEms("4 1/8", false)).toBeGreaterThan(numberEms("4", false));
    expect(numberEms("1 FT 1 3/4", false)).toBeGreaterThan(numberEms("1 FT 1", false));
  });
});
