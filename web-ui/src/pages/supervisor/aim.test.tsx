/** An aim names what its page showed; refused, it is still there with what was typed. */
import { render } from "preact";
import { act } from "preact/test-utils";
import { expect, it, vi } from "vitest";
import { FOOT } from "../../grade";
import { sheet, supervisor } from "../../state";
import type { Command, Sheet, Supervisor } from "../../wire";
import { AimPanel } from "./aim";

const said: Command[] = [];
const english = "Somebody has set the aim on PAD to -0.10 ft since.";
const refused = { kind: "refused", refused: { kind: "overtaken", english, spanish: "" } };
const taken = { kind: "answer", answer: { outcome: { kind: "done" } } };
vi.mock("../../hub", async (real) => ({
  ...(await real<object>()),
  say: (command: Command) => {
    said.push(command);
    return Promise.resolve(said.length === 1 ? refused : taken);
  },
}));

const root = document.createElement("div");
document.body.append(root);

function shows(aim: number | null) {
  const aims = aim === null ? [] : [{ on: "PAD", aim }];
  supervisor.value = { aims } as unknown as Supervisor;
}

const why = () => [...root.querySelectorAll("input")].at(-1) as HTMLInputElement;
const submits = () =>
  act(async () => {
    root.querySelector("form")?.dispatchEvent(new Event("submit", { bubbles: true, cancelable: true }));
  });

it("names the aim that was seen, keeps what was typed when another stands, and then names that one", async () => {
  sheet.value = { targets: [{ id: "PAD", revision: 2 }], marks: [] } as unknown as Sheet;
  shows(null);
  let closed = 0;
  act(() => {
    render(<AimPanel onClose={() => closed++} />, root);
  });
  act(() => {
    why().value = "gravel is dear";
    why().dispatchEvent(new Event("input", { bubbles: true }));
  });
  // Somebody else sets one while the words are typed.
  act(() => shows(-FOOT / 10));
  await submits();
  expect(said[0]).toMatchObject({ kind: "set_aim", on: ["PAD"], seen: [{ on: "PAD", aim: 0, revision: 2 }] });
  expect([closed, why().value]).toEqual([0, "gravel is dear"]);
  expect(root.querySelector("[role=alert].trouble")?.textContent).toBe(english);
  await submits();
  expect(said[1]).toMatchObject({ seen: [{ on: "PAD", aim: -FOOT / 10, revision: 2 }] });
  expect(closed).toBe(1);
});
