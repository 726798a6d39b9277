/** WORK: who is needed next; loads, patches, rammed lifts, soil tests, rock, and what a machine waits for. */
import { useState } from "preact/hooks";
import { patchName } from "../../../given_names";
import { say } from "../../../hub";
import { Key } from "../../../parts/keys";
import { NextVisits } from "../../../parts/next_visits";
import { PhotoKey } from "../../../parts/photo_key";
import { feet, timeOfDay } from "../../../show";
import type { Ground, PatchCard } from "../../../wire";
import { mark } from "../at";
import { LoadPanel, WaitPanel } from "./haul";
import { PatchPanel, RamPanel, RockPanel } from "./soil";
import { TestPanel } from "./test";
import { w } from "./words";

type Open = "load" | "patch" | "ram" | "test" | "rock" | "wait";

export function WorkPage({ view }: { view: Ground }) {
  const words = w();
  const [open, setOpen] = useState<Open | null>(null);
  const close = () => setOpen(null);
  const { account } = view;
  const here = mark.value?.id ?? "";
  const keys: { id: Open; name: string; note?: string }[] = [
    { id: "load", name: words.loadKey },
    { id: "wait", name: words.waitKey },
    { id: "patch", name: words.patchKey, note: here },
    { id: "ram", name: words.ramKey },
    { id: "test", name: words.testKey, note: here },
    { id: "rock", name: words.rockKey, note: here },
  ];
  return (
    <div class="work">
      <div class="tiles">
        {keys.map((one) => (
          <Key key={one.id} kind="tile" onPress={() => setOpen(one.id)}>
            {one.name}
            {one.note && <small>{one.note}</small>}
          </Key>
        ))}
        <PhotoKey about={here ? { mark: here } : {}} />
      </div>
      <section aria-label={words.next}>
        <h2>{words.next}</h2>
        <NextVisits visits={account.visits} arrivals={account.arrivals} />
      </section>
      {account.patches.length > 0 && (
        <section aria-label={words.patches}>
          <h2>{words.patches}</h2>
          <ul class="lines">
            {account.patches.map((one) => (
              <PatchLine key={one.patch} patch={one} />
            ))}
          </ul>
        </section>
      )}
      {account.tests.length > 0 && (
        <section aria-label={words.tests}>
          <h2>{words.tests}</h2>
          <ul class="lines">
            {account.tests.map((one) => (
              <li key={one.test}>
                <span>
                  <strong>
                    {one.mark} {words.standing[one.standing]}
                  </strong>{" "}
                  {feet(one.elevation)} ft · {one.tester} · {timeOfDay(one.made_at)}
                </span>
              </li>
            ))}
          </ul>
        </section>
      )}
      {account.loads.length > 0 && (
        <section aria-label={words.lastLoads}>
          <h2>{words.lastLoads}</h2>
          <ul class="lines">
            {account.loads.map((one) => (
              <li key={one.load}>
                <span class={one.taken_back ? "taken-back" : ""}>
                  {timeOfDay(one.at)} {words.way[one.way]} {one.trucks} × {one.material} · {one.by}
                </span>
                {!one.taken_back && (
                  <Key
                    kind="small"
                    label={`${words.takeBack} ${one.material} ${timeOfDay(one.at)}`}
                    onPress={() => void say({ kind: "take_back_load", load: one.load })}
                  >
                    {words.takeBack}
                  </Key>
                )}
              </li>
            ))}
          </ul>
        </section>
      )}
      {open === "load" && <LoadPanel names={account.materials} onClose={close} />}
      {open === "wait" && <WaitPanel onClose={close} />}
      {open === "patch" && <PatchPanel onClose={close} />}
      {open === "ram" && <RamPanel patches={account.patches} onClose={close} />}
      {open === "test" && <TestPanel account={account} onClose={close} />}
      {open === "rock" && <RockPanel onClose={close} />}
    </div>
  );
}

/** A patch and the one thing that is next for it. */
function PatchLine({ patch }: { patch: PatchCard }) {
  const words = w();
  const to =
    patch.step === "needed"
      ? "filled"
      : patch.step === "compacted" || patch.step === "tested"
        ? "done"
        : null;
  return (
    <li>
      <span>
        <strong>
          {patchName(patch.patch)} {patch.mark} {words.step[patch.step]}
        </strong>{" "}
        {words.patchLine(
          `${feet(patch.length)} × ${feet(patch.width)} × ${feet(patch.depth)}`,
          patch.cy.toFixed(2),
        )}{" "}
        · {words.liftsOf(patch.lifts, patch.lifts_needed)}
      </span>
      {to && (
        <Key
          kind="small"
          label={`${words[to]} ${patchName(patch.patch)}`}
          onPress={() => void say({ kind: "move_patch", patch: patch.patch, to })}
        >
          {words[to]}
        </Key>
      )}
    </li>
  );
}
