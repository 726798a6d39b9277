/** Who may be within a keep-out, machine by machine; and the witness who has seen somebody out. */
import { useState } from "preact/hooks";
import { Key } from "../../parts/keys";
import { ago } from "../../show";
import { now, supervisor } from "../../state";
import type { Supervisor } from "../../wire";
import { WhyPanel } from "./panels";
import { t } from "./words";

interface Out {
  machine: string;
  person: string;
  visit: string;
}

interface InsideProps {
  view: Supervisor;
  /** Whoever asks to come in stands there too. */
  asks?: boolean;
}

export function Inside({ view, asks = false }: InsideProps) {
  const words = t().wayIn;
  const [out, setOut] = useState<Out | null>(null);
  const none = view.inside.length === 0;
  const known = new Set(view.inside.flatMap(({ people }) => people.map((one) => one.visit)));
  const asking = view.machines.flatMap(({ id, way_in }) =>
    way_in.people
      .filter((one) => asks && one.stage !== "refused" && !known.has(one.visit))
      .map((one) => ({ machine: id, one })),
  );
  const notes = (
    <>
      {none && <p>{words.nobodyIn}</p>}
      <p class="quiet">{t().lookAlways}</p>
    </>
  );
  return (
    <>
      {!asks && notes}
      <ul class="lines">
        {asking.map(({ machine, one }) => (
          <li key={`${machine} ${one.visit}`}>
            <span>
              <strong>{one.others ? `${one.person} + ${one.others}` : one.person}</strong>{" "}
              {words.stages[one.stage]} · {machine}
              {one.mark ? ` · ${one.mark}` : ""} · {ago(now.value - one.since)}
            </span>
          </li>
        ))}
        {view.inside.flatMap(({ machine, people }) =>
          people.map((one) => (
            <li key={one.visit}>
              <span>
                <strong>{one.others ? `${one.person} + ${one.others}` : one.person}</strong>{" "}
                {words.stages[one.stage]} · {machine}
                {one.mark ? ` · ${one.mark}` : ""} · {ago(now.value - one.since)}
                {one.lost != null && <strong> {words.lostLink}</strong>}
              </span>
              <Key
                kind="small"
                label={`${words.sawOut} ${one.person} ${machine}`}
                onPress={() => setOut({ machine, person: one.person, visit: one.visit })}
              >
                {words.sawOut}
              </Key>
            </li>
          )),
        )}
      </ul>
      {asks && notes}
      {out && <SawOutPanel {...out} onClose={() => setOut(null)} />}
    </>
  );
}

/** The witness says what was seen, and tells the person. */
export function SawOutPanel({ machine, person, visit, onClose }: Out & { onClose: () => void }) {
  const words = t().wayIn;
  const inside = (supervisor.value?.inside ?? []).find((one) => one.machine === machine);
  const others = inside?.people.find((one) => one.visit === visit)?.others ?? 0;
  return (
    <WhyPanel
      title={words.sawOutTitle(person, machine)}
      ask={words.sawOutAsk}
      act={words.sawOut}
      command={(why) => ({
        kind: "out_by_witness",
        machine,
        visit,
        why,
        ...(others > 0 ? { all: others + 1 } : {}),
      })}
      onClose={onClose}
    >
      {others > 0 && (
        <p>
          <strong>{words.allSeen(others + 1)}</strong>
        </p>
      )}
      <p>{words.tellThem(person)}</p>
    </WhyPanel>
  );
}
