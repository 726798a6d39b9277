/** Keys of the keyboard that act on a page of the desk, and the panel behind `?` that lists them. Letters can be taken off. */
import { signal } from "@preact/signals";
import { useEffect, useRef, useState } from "preact/hooks";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { openPanels } from "../../parts/urgent";
import { remember, remembered } from "../../state";
import { t } from "./words";

export interface Shortcut {
  /** As the browser names it: `n`, `ArrowDown`. */
  key: string;
  name: string;
  act: () => void;
}

/** Whoever speaks to a machine, or brushes the keys, may want no letter to act (WCAG 2.2, 2.1.4). */
const KEPT = "rodcall.letters";
export const letters = signal(remembered(KEPT) !== "off");

function setLetters(on: boolean): void {
  letters.value = on;
  remember(KEPT, on ? "on" : "off");
}

/** Whether what is pressed there is meant for that field itself. */
function typesInto(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement && target.closest("input, select, textarea, [contenteditable]") !== null
  );
}

/** Where keys of this name are already used: Enter presses a key, the arrows push a slider. */
export function meantFor(event: KeyboardEvent, list: readonly Shortcut[], on: boolean): Shortcut | undefined {
  if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return undefined;
  if (typesInto(event.target) && event.key !== "Escape") return undefined;
  if (event.key.length === 1 && !on) return undefined;
  return list.find((one) => one.key === event.key);
}

/** Lets these keys act while the page is in sight and no panel lies over it. */
export function useShortcuts(list: readonly Shortcut[]): void {
  const now = useRef(list);
  now.current = list;
  useEffect(() => {
    const hear = (event: KeyboardEvent) => {
      if (openPanels.value > 0) return;
      const meant = meantFor(event, now.current, letters.value);
      if (!meant) return;
      event.preventDefault();
      meant.act();
    };
    addEventListener("keydown", hear);
    return () => removeEventListener("keydown", hear);
  }, []);
}

const SIGNS: Readonly<Record<string, string>> = {
  ArrowUp: "↑",
  ArrowDown: "↓",
  ArrowLeft: "←",
  ArrowRight: "→",
  Escape: "Esc",
  " ": "␣",
};

/** The key that opens the list, `?` too; and the page's own keys act. */
export function Shortcuts({ list }: { list: readonly Shortcut[] }) {
  const words = t().keys;
  const [open, setOpen] = useState(false);
  const all = [...list, { key: "?", name: words.these, act: () => setOpen(true) }];
  useShortcuts(all);
  return (
    <>
      <Key kind="small seldom no-print" onPress={() => setOpen(true)}>
        {words.help} <kbd>?</kbd>
      </Key>
      {open && (
        <Panel title={words.title} onClose={() => setOpen(false)}>
          <dl class="keys-listed">
            {all.map((one) => (
              <div key={one.key}>
                <dt>
                  <kbd>{SIGNS[one.key] ?? one.key}</kbd>
                </dt>
                <dd>{one.name}</dd>
              </div>
            ))}
          </dl>
          <Key pressed={letters.value} onPress={() => setLetters(!letters.value)}>
            {words.single}
          </Key>
          <p>{words.singleNote}</p>
        </Panel>
      )}
    </>
  );
}
