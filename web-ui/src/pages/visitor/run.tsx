/** One run as a visitor sees it: profile, what is proven, laser proof, tests, photos. */
import { setUpName } from "../../given_names";
import { gone } from "../../parts/last";
import { Profile } from "../../parts/profile";
import { said } from "../../said";
import { feet, signed, timeOfDay } from "../../show";
import type { VisitorRun } from "../../wire";
import { v } from "./words";

export function Run({ run }: { run: VisitorRun }) {
  const words = v();
  const { target } = run;
  return (
    <section aria-label={target.name}>
      <h2>{target.name}</h2>
      <p>
        {words.revision(target.revision)} ·{" "}
        {words.allowed(feet(target.tolerance.high), feet(target.tolerance.low))}
      </p>
      <Profile
        target={target}
        sheet={{ marks: run.marks, drawn: run.drawn }}
        ground={{ marks: run.shots }}
        table={false}
      />
      <Coverage run={run} />
      {run.shots.length === 0 ? (
        <p>{words.noReading}</p>
      ) : (
        <ul class="lines">
          {run.shots.map((shot) => (
            <li key={shot.id}>
              <span>
                <strong>{shot.id}</strong> {feet(shot.elevation)} ft
                {shot.dev != null && ` · ${signed(shot.dev)} ft`}
                {gone(shot) && ` · ${gone(shot)}`}{" "}
                <small>
                  {station(run, shot.id)} {shot.day} {timeOfDay(shot.at)}
                </small>
              </span>
              <span class="whole">{run.proven.includes(shot.id) ? words.proven : words.notProven}</span>
            </li>
          ))}
        </ul>
      )}
      <h3>{words.lasers}</h3>
      <ul class="lines">
        {run.lasers.map((one) => (
          <li key={one.set_up}>
            <span>
              <strong>
                {setUpName(one.set_up)} {one.laser}
              </strong>{" "}
              {one.state.kind === "in_doubt" && words.doubt}{" "}
              {one.good_at != null ? words.goodAt(timeOfDay(one.good_at)) : words.neverGood}
              {one.last_check &&
                ` · ${words.lastCheck(one.last_check.benchmark, signed(one.last_check.residual), timeOfDay(one.last_check.at))}`}
              {one.closed && ` · ${words.down}`}
            </span>
          </li>
        ))}
      </ul>
      <Tests run={run} />
      {run.photos.length > 0 && (
        <>
          <h3>{words.photos}</h3>
          <div class="photos">
            {run.photos.map((one) => (
              <figure key={one.photo}>
                <img src={`/api/photos/${one.sha256}`} alt={`${one.mark} ${one.words}`} loading="lazy" />
                <figcaption>
                  {one.mark} {one.by} {timeOfDay(one.at)} {one.words}
                </figcaption>
              </figure>
            ))}
          </div>
        </>
      )}
    </section>
  );
}

/** Where along the run a mark stands. */
function station(run: VisitorRun, id: string): string {
  const at = run.marks.find((mark) => mark.id === id)?.station;
  return at == null ? "" : `${v().station(feet(at, 0))} ·`;
}

function Coverage({ run }: { run: VisitorRun }) {
  const words = v();
  const all = run.coverage;
  if (!all) return null;
  if (all.unproven_length === 0) return <p>{words.allProven}</p>;
  const gaps = all.unproven.map((gap) => `${feet(gap.from, 0)}–${feet(gap.to, 0)}`).join(", ");
  return <p>{words.unproven(feet(all.unproven_length, 0), feet(all.to - all.from, 0), gaps)}</p>;
}

function Tests({ run }: { run: VisitorRun }) {
  const words = v();
  return (
    <>
      <h3>{words.tests}</h3>
      {run.tests.length === 0 && <p>{words.noTests}</p>}
      <ul class="lines">
        {run.tests.map((test) => (
          <li key={test.test}>
            <span>
              {words.byTester(test.mark, test.tester, timeOfDay(test.made_at))} {said(test)}
            </span>
            <strong>{words.standing[test.standing]}</strong>
          </li>
        ))}
      </ul>
    </>
  );
}
