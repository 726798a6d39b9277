/** Pictures of a day: plan with differences, runs with band and doubt, final differences, depth over time, how calls travelled. */
import { useEffect, useState } from "preact/hooks";
import { Plan } from "../../../parts/plan";
import { Profile } from "../../../parts/profile";
import { feet, signed, timeOfDay } from "../../../show";
import type { Moment, Review } from "../../../wire";
import { Delays } from "../charts/delays";
import { Depth } from "../charts/depth";
import { Differences, stands } from "../charts/differences";
import { Run } from "../charts/run";
import { t } from "../words";
import { moment } from "./ask";

export function Pictures({ review }: { review: Review }) {
  const words = t().review;
  const [end, setEnd] = useState<Moment | null>(null);
  const [trouble, setTrouble] = useState("");
  useEffect(() => {
    void moment(review.day, review.to).then((answer) => {
      setTrouble(answer.ok ? "" : answer.text);
      if (answer.ok) setEnd(answer.value);
    });
  }, [review.day, review.last]);
  const notes = new Map(
    review.built.flatMap((one) => (one.mean == null ? [] : [[one.mark, signed(one.mean)] as const])),
  );
  const sheet = end?.sheet ?? null;
  const dug = review.marks.filter((one) => one.readings.filter((read) => read.dev != null).length > 1);
  const [mark, setMark] = useState("");
  const chosen = dug.find((one) => one.mark === mark) ?? dug[0];
  return (
    <div class="pictures">
      {trouble && <p class="warning">{trouble}</p>}
      <section>
        <h2>{words.planDifferences}</h2>
        <div class="plan-and-list">
          {sheet && <Plan sheet={sheet} ground={null} notes={notes} />}
          <Final built={review.built} />
        </div>
      </section>
      <section>
        <h2>{words.runs}</h2>
        {sheet?.targets.map((target) => {
          const drawn = sheet.drawn.find((one) => one.id === target.id)?.drawn;
          if (!drawn?.profile.length) return null;
          return drawn.section ? (
            <Profile key={target.id} target={target} sheet={sheet} ground={end?.ground ?? null} />
          ) : (
            <Run key={target.id} target={target} sheet={sheet} built={review.built} />
          );
        })}
        <ul class="lines">
          {review.coverage.map((run) => (
            <li key={run.target}>
              {run.name}:{" "}
              {run.unproven.length > 0
                ? words.notProvenAt(
                    feet(run.unproven_length),
                    run.unproven.map((gap) => `${feet(gap.from)}–${feet(gap.to)}`).join(", "),
                  )
                : words.notProven(feet(run.unproven_length))}
            </li>
          ))}
        </ul>
      </section>
      <section>
        <h2>{words.differences}</h2>
        <Differences review={review} />
      </section>
      <section>
        <h2>{words.depth}</h2>
        {chosen ? (
          <>
            <label class="field no-print">
              <span>{t().mark}</span>
              <select value={chosen.mark} onChange={(event) => setMark(event.currentTarget.value)}>
                {dug.map((one) => (
                  <option key={one.mark}>{one.mark}</option>
                ))}
              </select>
            </label>
            <Depth mark={chosen} sheet={sheet} />
          </>
        ) : (
          <p>{words.none}</p>
        )}
      </section>
      <section>
        <h2>{words.delays}</h2>
        <Delays review={review} />
      </section>
    </div>
  );
}

/** Every mark with its last difference: on the plan a name gives way where two have no room. */
function Final({ built }: { built: Review["built"] }) {
  const words = t().review;
  return (
    <div class="final-list">
      <table>
        <thead>
          <tr>
            <th scope="col">{t().mark}</th>
            <th scope="col">{words.finalOf}</th>
            <th scope="col">{words.lastAt}</th>
          </tr>
        </thead>
        <tbody>
          {built.map((one) => (
            <tr key={one.mark}>
              <td>{one.mark}</td>
              <td>
                {one.mean == null ? "–" : signed(one.mean)}
                {one.mean != null && !stands(one) && "?"}
              </td>
              <td>
                {timeOfDay(one.at)} {one.by}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
