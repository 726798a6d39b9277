/** One rod value in a panel: which benchmark it stands on, the rod, the keypad, SEND. */
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { readRod } from "../../grade";
import { Choice } from "../../parts/choice";
import { Keypad, textOf } from "../../parts/keypad";
import { Key } from "../../parts/keys";
import { sheet } from "../../state";
import { t } from "../../words_later";
import { choose, rod } from "./at";

interface RodStepProps {
  title: string;
  onSend: (text: string, rod: string) => void;
  children?: ComponentChildren;
}

export function RodStep({ title, onSend, children }: RodStepProps) {
  const [typed, setTyped] = useState("");
  const words = t();
  const on = rod.value;
  if (!on) return <p>{words.none}</p>;
  const text = textOf(on.unit, typed);
  const read = readRod(on, text);
  const send = () => read.ok && onSend(text, on.id);
  const rods = sheet.value?.rods ?? [];
  return (
    <div class="rod-step beside">
      <div class="beside-left">
        <p class="sent-line">{title}</p>
        {children}
        {rods.length > 1 && (
          <Choice
            title={words.whichRod}
            kind="chips"
            options={rods.map((one) => ({ id: one.id, name: one.id }))}
            chosen={on.id}
            onChoose={(id) => {
              choose({ rod: id });
              setTyped("");
            }}
          />
        )}
        {typed !== "" && !read.ok && <p class="trouble">{words.rodProblem[read.why]}</p>}
      </div>
      <Keypad pad={on.unit} typed={typed} label={words.ready} onTyped={setTyped} onSend={send} />
      <div class="send-row panel-send">
        <Key kind="send" disabled={!read.ok} why={read.ok ? null : words.rodProblem[read.why]} onPress={send}>
          {words.send}
        </Key>
      </div>
    </div>
  );
}
