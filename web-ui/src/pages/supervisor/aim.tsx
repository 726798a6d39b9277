/** Where to aim, apart from the target: it changes what is told, never the verdict. */
import { useState } from "preact/hooks";
import { feetTyped } from "../../parts/feet_typed";
import { signed } from "../../show";
import { sheet, supervisor } from "../../state";
import type { AimSeen } from "../../wire";
import { WhyPanel } from "./panels";
import { t } from "./words";

/** What stands where the aim goes, as this page shows it now. */
function standing(on: string): AimSeen {
  const aim = supervisor.value?.aims.find((one) => one.on === on)?.aim ?? 0;
  const of = sheet.value?.marks.find((one) => one.id === on)?.target ?? on;
  const target = sheet.value?.targets.find((one) => one.id === of);
  return { on, aim, revision: target?.revision ?? 0 };
}

export function AimPanel({ onClose }: { onClose: () => void }) {
  const words = t();
  const targets = sheet.value?.targets.map((one) => one.id) ?? [];
  const marks = sheet.value?.marks.filter((one) => one.target).map((one) => one.id) ?? [];
  const [on, setOn] = useState(targets[0] ?? "");
  const [typed, setTyped] = useState("-0.03");
  // What somebody else sets while the words are typed is not overwritten with them.
  const [seen, setSeen] = useState(() => standing(on));
  const aim = feetTyped(typed);
  const pick = (id: string) => {
    setOn(id);
    setSeen(standing(id));
  };
  return (
    <WhyPanel
      title={words.aim}
      ask={words.why}
      act={words.aimSet}
      command={(why) => (aim === null || !on ? null : { kind: "set_aim", on: [on], aim, why, seen: [seen] })}
      onRefused={() => setSeen(standing(on))}
      onClose={onClose}
    >
      <label class="field">
        <span>{words.aimOn}</span>
        <select value={on} onChange={(event) => pick(event.currentTarget.value)}>
          {[...targets, ...marks].map((id) => (
            <option key={id} value={id}>
              {id}
            </option>
          ))}
        </select>
      </label>
      <p>{words.aimNow(on, signed(seen.aim), seen.revision)}</p>
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
