/** The cab says where its machine stands, while nobody has said it lately: by a press that is held, and never by a slip. */
import { render } from "preact";
import { act } from "preact/test-utils";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { linked, me, now, operator } from "../../state";
import type { CabScreen, Command, StandCard } from "../../wire";
import { call, view, who } from "./given";
import { OperatorPage } from "./operator";

const said: Command[] = [];
vi.mock("../../hub", async (real) => ({
  ...(await real<object>()),
  say: (command: Command) => {
    said.push(command);
    return Promise.resolve({ kind: "answer", answer: { outcome: { kind: "done" } } });
  },
}));

const root = document.createElement("div");
document.body.append(root);

function shows(stand: StandCard, screen: CabScreen = { kind: "call", call }) {
  act(() => {
    operator.value = { ...view, screen, stand };
  });
}

const key = (name: string) =>
  [...root.querySelectorAll("button")].find((one) => one.textContent?.startsWith(name));

/** Pressed, and held for so long. */
function holds(name: string, ms: number) {
  act(() => {
    key(name)?.dispatchEvent(new MouseEvent("pointerdown", { bubbles: true }));
  });
  act(() => {
    vi.advanceTimersByTime(ms);
  });
  act(() => {
    key(name)?.dispatchEvent(new MouseEvent("pointerup", { bubbles: true }));
  });
}

beforeEach(() => {
  vi.useFakeTimers();
  said.length = 0;
  act(() => {
    me.value = who;
    operator.value = view;
    now.value = 2_000;
    linked.value = true;
    render(<OperatorPage />, root);
  });
});

afterEach(() => {
  act(() => render(null, root));
  vi.useRealTimers();
});

const nobody = { called: "N-04" };
const known = { since: 1_000, old_at: 5_000, near: "N-01", called: "N-04" };

describe("where the machine stands, said in its own cab", () => {
  it("offers the mark that was called while nobody has said, held and not tapped", () => {
    shows(nobody);
    expect(root.querySelector(".answer")?.textContent).toContain("I STAND AT N-04");
    holds("I STAND AT N-04", 100);
    expect(said).toEqual([]);
    holds("I STAND AT N-04", 1_000);
    expect(said).toEqual([{ kind: "stand_here", at: { kind: "mark", mark: "N-04" } }]);
  });

  it("says nothing while the place is known, and names the place that it showed once that is old", () => {
    shows(known);
    expect(key("STILL NEAR")).toBeUndefined();
    act(() => {
      now.value = 5_000;
    });
    holds("STILL NEAR N-01", 1_000);
    expect(said).toEqual([{ kind: "stand_here", at: { kind: "still", since: 1_000 } }]);
  });

  it("asks where there is no number either, and not under a stop or a face to leave", () => {
    shows({}, { kind: "no_call" });
    expect(root.textContent).toContain("Nobody has said where this machine stands.");
    expect(key("WHERE I STAND")).toBeDefined();
    expect(key("I STAND AT")).toBeUndefined();
    shows(nobody, { kind: "stop", press: 1, by: "RT", why: "", since: 1_000, all: true });
    expect(root.querySelector(".stand")).toBeNull();
    const face = { kind: "leave_face", alarm: 1, zone: "Z", name: "north face", since: 1_000 } as const;
    shows(nobody, { ...face, why: { kind: "slough" } });
    expect(root.querySelector(".stand")).toBeNull();
  });
});
