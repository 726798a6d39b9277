/** How a laser's plane is sloped along the site's east and north, as its own two dials say. */
import { useState } from "preact/hooks";
import { Key } from "../../parts/keys";
import type { LaserSlope } from "../../wire";
import { t } from "../../words_later";

/** A percentage as it is typed, as feet per foot; none when it is no number. */
export function risePerFoot(typed: string): number | null {
  const text = typed.trim().replace("−", "-").replace(",", ".").replace(/\s*%$/, "");
  return /^[+-]?\d+(\.\d+)?$/.test(text) ? Number(text) / 100 : null;
}

export function SlopeStep({ onChoose }: { onChoose: (slope: LaserSlope) => void }) {
  const words = t();
  const [typed, setTyped] = useState(["", ""]);
  const [east, north] = [risePerFoot(typed[0] ?? ""), risePerFoot(typed[1] ?? "")];
  return (
    <>
      <p>{words.slopeAs}</p>
      {[words.riseEast, words.riseNorth].map((label, n) => (
        <label class="field" key={label}>
          <span>{label}</span>
          <input
            autocomplete="off"
            value={typed[n]}
            onInput={(event) =>
              setTyped(typed.map((text, at) => (at === n ? event.currentTarget.value : text)))
            }
          />
        </label>
      ))}
      <Key
        kind="send"
        disabled={east === null || north === null}
        why={t().kept.owed.number}
        onPress={() => east !== null && north !== null && onChoose({ rise_east: east, rise_north: north })}
      >
        {words.goOn}
      </Key>
    </>
  );
}
