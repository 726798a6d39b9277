/** GOT IT is for a number that was seen; what must be seen lies over everything. */
import { render } from "preact";
import { act } from "preact/test-utils";
import { beforeEach, describe, expect, it } from "vitest";
import { FOOT } from "../../grade";
import { openPanels } from "../../parts/urgent";
import { bye, cabPage, linked, me, now, operator } from "../../state";
import type { CallView, Operator } from "../../wire";
import { call, view, who } from "./given";
import { OperatorPage } from "./operator";

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
    render(<OperatorPage />, root);
  });
});

describe("what is seen in the cab", () => {
  it("offers GOT IT while the number is in view, and not under LOOK, PLAN, a panel or a stop", () => {
    const got = () => root.querySelector(".fades .key.got") !== null;
    expect(got()).toBe(true);
    const loud = {
      who: "RT",
      mark: "N-04",
      nearness: { kind: "inside", by: FOOT },
      loud: true,
      beside: false,
    } as const;
    const shows = (reminder: CallView["reminder"]) =>
      act(() => {
        operator.value = { ...view, screen: { kind: "call", call: { ...call, reminder: reminder ?? null } } };
      });
    shows(loud);
    expect([got(), root.querySelector(".loud") !== null]).toEqual([false, true]);
    // Nobody knows where the machine stands: LOOK beside the number.
    shows({ ...loud, nearness: { kind: "place_unknown" }, beside: true });
    expect([got(), root.querySelector(".loud") !== null]).toEqual([true, false]);
    expect(root.querySelector(".strip.beside")?.textContent).toContain("LOOK");
    act(() => {
      openPanels.value++;
    });
    expect(got()).toBe(false);
    act(() => {
      openPanels.value--;
      operator.value = {
        ...view,
        screen: { kind: "stop", press: 1, by: "RT", why: "", since: 1_000, all: true },
      };
    });
    expect(got()).toBe(false);
  });

  it("does not bring LOOK back once it has been looked", () => {
    const reminder = {
      who: "RT",
      mark: "N-04",
      nearness: { kind: "inside", by: FOOT },
      loud: true,
      beside: false,
    } as const;
    const loud: Operator = { ...view, screen: { kind: "call", call: { ...call, id: 8, reminder } } };
    const stop = { kind: "stop", press: 1, by: "RT", why: "", since: 1_000, all: true } as const;
    act(() => {
      operator.value = loud;
    });
    act(() => [...root.querySelectorAll("button")].find((one) => one.textContent === "EYE CONTACT")?.click());
    expect(root.querySelector(".loud")).toBeNull();
    act(() => {
      operator.value = { ...view, screen: stop };
    });
    act(() => {
      operator.value = loud;
    });
    expect(root.querySelector(".loud")).toBeNull();
    expect(numbers()).toBe(1);
  });

  it("closes whatever panel is open when something graver comes, and has it over one that is opened under it", () => {
    const dialog = () => root.querySelector("[role=dialog]");
    const press = (text: string) =>
      act(() => [...root.querySelectorAll("button")].find((one) => one.textContent === text)?.click());
    const asks = {
      visit: "v-2",
      person: "RT",
      device: "g1",
      stage: "asked" as const,
      since: 1_000,
      not_answered: false,
    };
    const graver: [string, () => void][] = [
      [
        "a stop",
        () => {
          const stop = {
            kind: "stop",
            press: 1,
            by: "RT",
            why: "",
            since: 1_000,
            all: true,
          } as const;
          operator.value = { ...view, screen: stop };
        },
      ],
      [
        "a further press",
        () => {
          const stop = {
            kind: "stop",
            press: 2,
            by: "RT",
            why: "",
            since: 1_000,
            all: true,
          } as const;
          operator.value = { ...view, screen: stop };
        },
      ],
      [
        "an ask",
        () => {
          operator.value = {
            ...view,
            screen: { kind: "way_in" },
            way_in: { phase: "asked", people: [asks] },
          };
        },
      ],
      [
        "an entry without a word",
        () => {
          const people = [{ ...asks, stage: "unconfirmed" as const }];
          operator.value = { ...view, screen: { kind: "way_in" }, way_in: { phase: "unconfirmed", people } };
        },
      ],
      [
        "a face to leave",
        () => {
          const face = { kind: "leave_face", alarm: 1, zone: "Z", name: "north face", since: 9_000 } as const;
          operator.value = { ...view, screen: { ...face, why: { kind: "slough" } } };
        },
      ],
      [
        "no link",
        () => {
          linked.value = false;
        },
      ],
    ];
    for (const [what, comes] of graver) {
      press("CAN'T");
      expect(dialog(), what).not.toBeNull();
      act(comes);
      expect(dialog(), what).toBeNull();
    }
    act(() => {
      linked.value = true;
      graver[0]?.[1]();
    });
    press("SCREEN");
    expect(dialog()?.textContent).toContain("RT pressed STOP");
  });

  it("tells the hub what it can't give: a covered number, no sound", () => {
    expect(cabPage.value).toEqual({ covered: false, mute: true });
    act(() => {
      openPanels.value++;
    });
    expect(cabPage.value?.covered).toBe(true);
    act(() => {
      openPanels.value--;
    });
  });
});
