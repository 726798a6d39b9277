/** A line of levels as the field book has it: from a benchmark over turning points to a benchmark. */
import { useState } from "preact/hooks";
import { Field } from "../../parts/field";
import { Key } from "../../parts/keys";
import { sheet } from "../../state";
import { Pick, Sends, useRod } from "./form";
import { c } from "./words";

interface Turn {
  backsight: string;
  foresight: string;
  point: string;
}

const fresh = (number: number): Turn => ({ backsight: "", foresight: "", point: `TP-${number}` });

export function Levels() {
  const words = c();
  const benchmarks = (sheet.value?.benchmarks ?? []).map((one) => one.id);
  const [from, setFrom] = useState("");
  const [to, setTo] = useState("");
  const [rod, rodField] = useRod();
  const [typed, setTyped] = useState<Turn[]>([fresh(1), fresh(2)]);
  const put = (i: number, part: Partial<Turn>) =>
    setTyped(typed.map((turn, at) => (at === i ? { ...turn, ...part } : turn)));
  // The line ends on the benchmark that it closes on, whatever the last point was to be called.
  const turns = typed.map((turn, i) => (i === typed.length - 1 ? { ...turn, point: to } : turn));
  const whole = turns.every((turn) => turn.backsight && turn.foresight && turn.point);
  return (
    <>
      <p>{words.levelsNote}</p>
      <Pick name={words.from} value={from} options={benchmarks} onPick={setFrom} />
      <Pick name={words.to} value={to} options={benchmarks} onPick={setTo} />
      {rodField}
      {turns.map((turn, i) => (
        <fieldset class="group" key={i}>
          <legend>{words.setUp(i + 1)}</legend>
          <Field
            name={behind(i === 0 ? from : turns[i - 1]?.point)}
            value={turn.backsight}
            onValue={(backsight) => put(i, { backsight })}
            text
          />
          {i < turns.length - 1 && (
            <Field name={words.point} value={turn.point} onValue={(point) => put(i, { point })} text />
          )}
          <Field
            name={turn.point ? words.ahead(turn.point) : words.aheadUnnamed}
            value={turn.foresight}
            onValue={(foresight) => put(i, { foresight })}
            text
          />
        </fieldset>
      ))}
      <div class="row">
        <Key onPress={() => setTyped([...typed, fresh(typed.length + 1)])}>{words.oneMore}</Key>
        {typed.length > 1 && <Key onPress={() => setTyped(typed.slice(0, -1))}>{words.oneLess}</Key>}
      </div>
      <Sends command={from && to && rod && whole ? { kind: "run_levels", from, to, rod, turns } : null} />
    </>
  );
}

/** A point that has no name yet is the point behind. */
const behind = (point: string | undefined) => (point ? c().behind(point) : c().behindUnnamed);
