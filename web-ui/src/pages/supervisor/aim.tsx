/** Where to aim, apart from the target: it changes what is told, never the verdict. */
import { useState } from "preact/hooks";
import { feetTyped } from "../../parts/feet_typed";
import { sheet } from "../../state";
import { WhyPanel } from "./panels";
import { t } from "./words";

export function AimPanel({ onClose }: { onClose: () => void }) {
  const words = t();
  const targets = sheet.value?.targets.map((one) => one.id) ?? [];
  const marks = sheet.value?.marks.filter((one) => one.target).map((one) => one.id) ?? [];
  const [on, setOn] = useState(targets[0] ?? "");
  const [typed, setTyped] = useState("-0.03");
  const aim = feetTyped(typed);
  return (
    <WhyPanel
      title={words.aim}
      ask={words.why}
      act={words.aimSet}
      command={(why) => (aim === null || !on ? null : { kind: "set_aim", on: [on], aim, why })}
      onClose={onClose}
    >
      <label class="field">
        <span>{words.aimOn}</span>
        <select value={on} onChange={(event) => setOn(event.currentTarget.value)}>
          {[...targets, ...marks].map((id) => (
            <option key={id} value={id}>
              {id}
            </option>
          ))}
        </select>
      </label>
      <label class="field">
        <span>{words.aimHint}</span>
        <input
          inputMode="text"
          value={typed}
          aria-invalid={aim === null}
          onInput={(event) => setTyped(event.currentTarget.value)}
        />
      </label>
      {aim === null && <p class="trouble">{words.badNumber}</p>}
    </WhyPanel>
  );
}
