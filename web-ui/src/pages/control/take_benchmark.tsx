/** Points of lines of levels that closed; a supervisor takes one as a benchmark. */
import { useState } from "preact/hooks";
import { Field } from "../../parts/field";
import { feet, signed } from "../../show";
import type { Supervisor } from "../../wire";
import { Pick, Sends } from "./form";
import { c } from "./words";

export function TakeBenchmark({ levels }: { levels: Supervisor["levels"] }) {
  const words = c();
  const [taken, setTaken] = useState("");
  const [id, setId] = useState("");
  const [note, setNote] = useState("");
  const points = levels.flatMap(({ entry, run }) =>
    run.points.map((one) => ({ ...one, entry, name: `${one.point} (${run.from}–${run.to}, ${entry})` })),
  );
  if (points.length === 0) return null;
  const one = points.find((point) => point.name === taken);
  return (
    <section aria-label={words.takeBenchmark}>
      <h3>{words.takeBenchmark}</h3>
      {levels.map(({ entry, run }) => (
        <p key={entry}>
          {run.from}–{run.to}: {words.misses(signed(run.misclosure), feet(run.allowed, 3))}{" "}
          {run.points.map((it) => `${it.point} ${feet(it.elevation, 3)} ± ${feet(it.doubt, 3)}`).join(" · ")}
        </p>
      ))}
      <Pick name={words.point} value={taken} options={points.map((it) => it.name)} onPick={setTaken} />
      <Field name={words.newName} value={id} onValue={setId} text />
      <Field name={words.looks} value={note} onValue={setNote} text />
      <Sends
        command={
          one && id && note
            ? { kind: "add_benchmark", levels: one.entry, point: one.point, id, place: null, note }
            : null
        }
      />
    </section>
  );
}
