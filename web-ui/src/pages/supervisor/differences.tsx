/** What differs between the site in force and another, thing by thing, and what that touches. */
import type { SiteDifference, Touched } from "../../wire";
import { t } from "./words";

interface DifferencesProps {
  differences: readonly SiteDifference[];
  touches: Touched;
}

export function Differences({ differences, touches }: DifferencesProps) {
  const words = t();
  const out = touches.marks.filter((one) => one.still_in === false);
  return (
    <>
      {touches.marks.length > 0 && (
        <p>
          {words.touches(
            touches.marks.map((one) => one.mark).join(", "),
            out.map((one) => one.mark).join(", "),
          )}
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
