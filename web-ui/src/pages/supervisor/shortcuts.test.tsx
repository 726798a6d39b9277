/** Which presses of the keyboard are meant for the page. */
import { expect, test } from "vitest";
import { meantFor, type Shortcut } from "./shortcuts";

const LIST: Shortcut[] = ["n", "/", "Escape", "ArrowDown"].map((key) => ({
  key,
  name: key,
  act: () => undefined,
}));

function pressedIn(html: string, key: string, more: KeyboardEventInit = {}): KeyboardEvent {
  document.body.innerHTML = html;
  let heard: KeyboardEvent | undefined;
  document.body.onkeydown = (event) => {
    heard = event;
  };
  const at = document.body.firstElementChild ?? document.body;
  at.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, ...more }));
  if (!heard) throw new Error("not heard");
  return heard;
}

test("a letter acts on the page, and is a letter in a field", () => {
  expect(meantFor(pressedIn("<div></div>", "n"), LIST, true)?.key).toBe("n");
  expect(meantFor(pressedIn("<input />", "n"), LIST, true)).toBeUndefined();
  expect(meantFor(pressedIn("<select></select>", "ArrowDown"), LIST, true)).toBeUndefined();
});

test("Esc leaves a field's page, too; the browser's own keys stay its own", () => {
  expect(meantFor(pressedIn("<input />", "Escape"), LIST, true)?.key).toBe("Escape");
  expect(meantFor(pressedIn("<div></div>", "n", { ctrlKey: true }), LIST, true)).toBeUndefined();
});

test("letters that are taken off do nothing; the arrows still act", () => {
  expect(meantFor(pressedIn("<div></div>", "n"), LIST, false)).toBeUndefined();
  expect(meantFor(pressedIn("<div></div>", "ArrowDown"), LIST, false)?.key).toBe("ArrowDown");
});
