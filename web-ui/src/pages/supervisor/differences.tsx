/** What differs between the site in force and another, thing by thing, and what that touches. */
import { dateOf, feet, timeOfDay } from "../../show";
import type { SiteDifference, Touched, TouchedMark, Undone } from "../../wire";
import { t } from "./words";

interface DifferencesProps {
  differences: readonly SiteDifference[];
  touches: Touched;
  /** What a page changed and this would undo. */
  undoes?: readonly Undone[];
}

/** A dig-to as it was or becomes: both of a step, a dash where there is none. */
function digTo(one: number | null | undefined, step: readonly number[] | null | undefined): string {
  if (step) return step.map((each) => feet(each)).join(" | ");
  return one == null ? "–" : feet(one);
}

/** Every mark's dig-to, as it was and as it becomes. */
function DigTos({ marks }: { marks: readonly TouchedMark[] }) {
  const words = t().wasNow;
  return (
    <div class="wide-table">
      <table>
        <thead>
          <tr>
            <th scope="col">{words.digTo}</th>
            <th scope="col">{words.was}</th>
            <th scope="col">{words.now}</th>
          </tr>
        </thead>
        <tbody>
          {marks.map((one) => (
            <tr key={one.mark}>
              <th scope="row">{one.mark}</th>
              <td>{digTo(one.was, one.were_at_step)}</td>
              <td>{digTo(one.now, one.are_at_step)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

export function Differences({ differences, touches, undoes = [] }: DifferencesProps) {
  const words = t();
  const out = touches.marks.filter((one) => one.still_in === false);
  return (
    <>
      {undoes.map((one) => (
        <p class="trouble" key={one.what}>
          {words.undoes(one.what, one.by, `${dateOf(one.at)} ${timeOfDay(one.at)}`, one.why)} {one.was ?? "–"}{" "}
          → {one.becomes ?? "–"}
        </p>
      ))}
      {touches.targets?.map((one) => (
        <p key={one.target}>
          <strong>{one.target}</strong>{" "}
          {words.layersTake(
            one.layers_were == null ? "–" : feet(one.layers_were),
            one.layers_are == null ? "–" : feet(one.layers_are),
          )}
          {one.more && ` · ${words.moreChanges}`}
        </p>
      ))}
      {touches.marks.length > 0 && <DigTos marks={touches.marks} />}
      {touches.marks.length > 0 && (
        <p>
          {out.length > 0
            ? words.touchesOut(listed(touches.marks), listed(out))
            : words.touches(listed(touches.marks))}
        </p>
      )}
      <div class="wide-table">
        <table>
          <thead>
            <tr>
              <th scope="col">{words.wasNow.what}</th>
              <th scope="col">{words.wasNow.was}</th>
              <th scope="col">{words.wasNow.now}</th>
            </tr>
          </thead>
          <tbody>
            {differences.map((one) => (
              <tr key={one.what}>
                <th scope="row">{one.what}</th>
                <td>{one.was ?? "–"}</td>
                <td>{one.now ?? "–"}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}

const listed = (marks: readonly { mark: string }[]) => marks.map((one) => one.mark).join(", ");
