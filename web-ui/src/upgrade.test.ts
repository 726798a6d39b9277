/** A page that an upgrade has overtaken is loaded anew, and never while something would be lost by it. */
import { afterEach, describe, expect, it } from "vitest";
import { onlyInMemory, waiting } from "./outbox";
import { mayLoad, scriptOf } from "./upgrade";

const hidden = (is: boolean) =>
  Object.defineProperty(document, "visibilityState", {
    configurable: true,
    get: () => (is ? "hidden" : "visible"),
  });

afterEach(() => {
  document.body.innerHTML = "";
  waiting.value = [];
  onlyInMemory.value = false;
  hidden(false);
});

it("reads which script a page names", () => {
  expect(scriptOf(`<script type="module" crossorigin src="/assets/index-a1.js"></script>`)).toBe(
    "/assets/index-a1.js",
  );
  expect(scriptOf("<p>The hub is starting.</p>")).toBe(null);
});

describe("the moment to load it", () => {
  it("has come when nobody sees the page and nothing is open", () => {
    hidden(true);
    expect(mayLoad()).toBe(true);
  });

  it("has not while somebody has just touched it", () => {
    expect(mayLoad()).toBe(false);
  });

  it.each([
    ["a panel", `<div class="panel"></div>`],
    ["a word that nobody has read", `<div class="notice"></div>`],
    ["somebody who is in", `<div class="in-bar"></div>`],
    ["somebody who is in, on READ", `<div class="facts in"></div>`],
    ["a question", `<div role="alertdialog"></div>`],
    ["a reading that is half typed", `<input class="window" value="4.7">`],
    ["words", `<textarea>seen, all out</textarea>`],
  ])("has not with %s on the page", (_what, html) => {
    hidden(true);
    document.body.innerHTML = html;
    expect(mayLoad()).toBe(false);
  });

  it("has not while words wait that this phone can't keep", () => {
    hidden(true);
    const kept = { key: "k", made_at: 1, device: "d", person: "RT", order: 1, failed: true, held: false };
    waiting.value = [{ ...kept, command: { kind: "add_note", words: "gate" } }];
    expect(mayLoad()).toBe(true);
    onlyInMemory.value = true;
    expect(mayLoad()).toBe(false);
  });
});
