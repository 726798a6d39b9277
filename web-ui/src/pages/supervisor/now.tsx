/** NOW: what needs somebody, oldest first; a card for each machine and laser; people in. */
import { useState } from "preact/hooks";
import { Key } from "../../parts/keys";
import { gone, lastFigure } from "../../parts/last";
import { MachineCards } from "../../parts/machine_cards";
import { Rain } from "../../parts/rain";
import { SetUpFacts } from "../../parts/set_up";
import { Suspects } from "../../parts/suspects";
import { Waters } from "../../parts/water";
import { feet, timeOfDay } from "../../show";
import type { Supervisor } from "../../wire";
import { Exceptions } from "./exceptions";
import { Inside } from "./inside";
import { NearMisses } from "./near_miss";
import { DifferencePanel, RulePanel } from "./panels";
import { People } from "./people";
import { Start } from "./start";
import { t } from "./words";

export function NowPage({ view }: { view: Supervisor }) {
  const words = t();
  return (
    <div class="columns">
      <section aria-label={words.exceptions}>
        <h2>{words.exceptions}</h2>
        <Exceptions view={view} />
        {view.site_change && <SiteChange change={view.site_change} />}
      </section>
      <section aria-label={words.machines}>
        <h2>{words.machines}</h2>
        <MachineCards cards={view.machines} />
        <p class="quiet">
          {words.caution} {words.crew.asLastSaid}
        </p>
        <Rain rain={view.rain} />
        <Waters waters={view.water} />
      </section>
      <section aria-label={words.wayIn.inside}>
        <h2>{words.wayIn.inside}</h2>
        <Inside view={view} />
      </section>
      <NearMisses view={view} />
      <section aria-label={words.crew.start.title}>
        <h2>{words.crew.start.title}</h2>
        <Start start={view.start} />
      </section>
      <section aria-label={words.lasers}>
        <h2>{words.lasers}</h2>
        {view.set_ups.length === 0 && <p>{words.none}</p>}
        {view.set_ups.map((card) => (
          <div class="card" key={card.id}>
            <SetUpFacts card={card} />
          </div>
        ))}
        <Suspects cards={view.suspects} />
        <Proven view={view} />
      </section>
      <section aria-label={words.people}>
        <h2>{words.people}</h2>
        <People view={view} />
      </section>
      <section aria-label={words.lastMarks}>
        <h2>{words.lastMarks}</h2>
        <LastMarks view={view} />
      </section>
    </div>
  );
}

/** What of the runs is not proven, and how the questions about readings came out. */
function Proven({ view }: { view: Supervisor }) {
  const words = t();
  const { asked, slips, hits } = view.questions;
  return (
    <>
      {view.coverage.length > 0 && (
        <>
          <h3>{words.unprovenRuns}</h3>
          <ul class="lines">
            {view.coverage.map((run) => (
              <li key={run.target}>
                {words.unprovenRun(
                  run.name,
                  feet(run.unproven_length, 0),
                  feet(run.to - run.from, 0),
                  run.unproven.map((gap) => `${feet(gap.from, 0)}–${feet(gap.to, 0)}`).join(", "),
                )}
              </li>
            ))}
          </ul>
        </>
      )}
      {asked > 0 && <p class="quiet">{words.questionsCame(asked, slips, hits)}</p>}
    </>
  );
}

function SiteChange({ change }: { change: NonNullable<Supervisor["site_change"]> }) {
  const [open, setOpen] = useState(false);
  if (!open) return <Key onPress={() => setOpen(true)}>{t().showDifference}</Key>;
  return <DifferencePanel change={change} onClose={() => setOpen(false)} />;
}

function LastMarks({ view }: { view: Supervisor }) {
  const words = t();
  const [rules, setRules] = useState<string | null>(null);
  const newest = [...view.marks].sort((a, b) => b.at - a.at).slice(0, 12);
  return (
    <>
      <ul class="lines">
        {newest.map((one) => (
          <li key={one.id}>
            <span>
              <strong>{one.id}</strong> {gone(one) || `${lastFigure(one)} ft`} · {one.by} · {one.day}{" "}
              {timeOfDay(one.at)}
              {one.ruling && ` · ${words.rulings[one.ruling]}`}
            </span>
            {one.needs_ruling && (
              <Key kind="small" label={`${words.rule} ${one.id}`} onPress={() => setRules(one.id)}>
                {words.rule}
              </Key>
            )}
          </li>
        ))}
      </ul>
      {rules && <RulePanel mark={rules} onClose={() => setRules(null)} />}
    </>
  );
}
