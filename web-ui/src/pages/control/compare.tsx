/** Two lasers that stand: one point shot from both says whether they agree. */
import { useState } from "preact/hooks";
import { setUpName } from "../../given_names";
import { Field } from "../../parts/field";
import { ground } from "../../state";
import { Pick, Sends, useRod } from "./form";
import { c } from "./words";

export function Compare() {
  const words = c();
  const standing = (ground.value?.set_ups ?? []).map((one) => one.id);
  const [first, setFirst] = useState("");
  const [second, setSecond] = useState("");
  const [rod, rodField] = useRod();
  const [from_first, setFromFirst] = useState("");
  const [from_second, setFromSecond] = useState("");
  if (standing.length < 2) return <p>{words.twoNeeded}</p>;
  const whole = first && second && first !== second && rod && from_first && from_second;
  return (
    <>
      <p>{words.compareNote}</p>
      {rodField}
      <Pick name={words.setUp(1)} value={first} options={standing} onPick={setFirst} read={setUpName} />
      <Field name={rodFrom(first)} value={from_first} onValue={setFromFirst} text />
      <Pick name={words.setUp(2)} value={second} options={standing} onPick={setSecond} read={setUpName} />
      <Field name={rodFrom(second)} value={from_second} onValue={setFromSecond} text />
      <Sends
        command={whole ? { kind: "compare_set_ups", first, second, rod, from_first, from_second } : null}
      />
    </>
  );
}

/** The rod's question; a set-up that is not picked yet has no name. */
const rodFrom = (setUp: string) => (setUp ? c().rodFrom(setUpName(setUp)) : c().rodFromUnpicked);
