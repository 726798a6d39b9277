/** Is the laser itself true: turned by quarters before one rod, or read at two pegs from the middle and from near one. */
import { useState } from "preact/hooks";
import { feetTyped } from "../../parts/feet_typed";
import { Field } from "../../parts/field";
import { sheet } from "../../state";
import type { LaserTest } from "../../wire";
import { Pick, Sends, useRod } from "./form";
import { c } from "./words";

const TURNED = ["distance", "first", "first_turned", "second", "second_turned"] as const;
const TWO_PEG = ["middle_a", "middle_b", "near_a", "far_b", "to_a", "to_b"] as const;
/** These are tapes in feet; the others are rod values as the rod has them. */
const TAPES: readonly string[] = ["distance", "to_a", "to_b"];

export function Turned() {
  return <Test kind="turned" names={TURNED} />;
}

export function TwoPeg() {
  return <Test kind="two_peg" names={TWO_PEG} />;
}

interface TestProps {
  kind: LaserTest["kind"];
  names: typeof TURNED | typeof TWO_PEG;
}

function Test({ kind, names }: TestProps) {
  const words = c();
  const [laser, setLaser] = useState("");
  const [rod, rodField] = useRod();
  const [typed, setTyped] = useState<Record<string, string>>({});
  const read = (name: string) => {
    const text = (typed[name] ?? "").trim();
    return TAPES.includes(name) ? feetTyped(text) : text || null;
  };
  const values = Object.fromEntries(names.map((name) => [name, read(name)]));
  const whole = laser && rod && Object.values(values).every((value) => value !== null);
  return (
    <>
      <p>{words.notes[kind]}</p>
      <Pick
        name={words.laser}
        value={laser}
        options={(sheet.value?.lasers ?? []).map((one) => one.id)}
        onPick={setLaser}
      />
      {rodField}
      {names.map((name) => (
        <Field
          key={name}
          name={words.read[name]}
          value={typed[name] ?? ""}
          onValue={(value) => setTyped({ ...typed, [name]: value })}
          text
        />
      ))}
      <Sends
        command={whole ? { kind: "test_laser", laser, rod, test: { kind, ...values } as LaserTest } : null}
      />
    </>
  );
}
