/** A target's elevations typed by a second person, who does not see the first. */
import { useState } from "preact/hooks";
import { Field } from "../../parts/field";
import { said } from "../../said";
import { sheet } from "../../state";
import { withUnit } from "../ground/sums";
import { Pick, Sends } from "./form";
import { c } from "./words";

export function TypeAgain() {
  const words = c();
  const waiting = sheet.value?.to_prove ?? [];
  const [target, setTarget] = useState("");
  const [typed, setTyped] = useState<Record<number, string>>({});
  const one = waiting.find((it) => it.target === target);
  if (waiting.length === 0) return <p>{words.allTyped}</p>;
  const values = one?.values.map((_, i) => withUnit(typed[i] ?? "")) ?? [];
  const ready = one !== undefined && values.every((value) => value !== "");
  return (
    <>
      <p>{words.unseen}</p>
      <Pick
        name={words.target}
        value={target}
        options={waiting.map((it) => it.target)}
        onPick={(id) => {
          setTarget(id);
          setTyped({});
        }}
      />
      {one?.values.map((what, i) => (
        <Field
          key={what.english}
          name={said(what)}
          value={typed[i] ?? ""}
          text
          onValue={(value) => setTyped({ ...typed, [i]: value })}
        />
      ))}
      <Sends
        command={
          ready && one ? { kind: "prove_target", target: one.target, revision: one.revision, values } : null
        }
      />
    </>
  );
}
