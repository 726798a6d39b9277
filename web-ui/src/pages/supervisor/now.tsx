/** NOW: what needs somebody, worst first; a card for each machine and laser; people in. On the desk round the plan of the site. */
import { useState } from "preact/hooks";
import { Key } from "../../parts/keys";
import { gone, lastFigure } from "../../parts/last";
import { MachineCards } from "../../parts/machine_cards";
import { Panel } from "../../parts/panel";
import { Rain } from "../../parts/rain";
import { SetUpFacts } from "../../parts/set_up";
import { Suspects } from "../../parts/suspects";
import { Waters } from "../../parts/water";
import { feet, timeOfDay } from "../../show";
import { now } from "../../state";
import type { Supervisor } from "../../wire";
import { atDesk } from "./at_desk";
import { Exceptions, Stops } from "./exceptions";
import { Inside } from "./inside";
import { NearMisses } from "./near_miss";
import { DifferencePanel, RulePanel } from "./panels";
import { People } from "./people";
import { Legend } from "./plan/signs";
import type { Thing } from "./plan/things";
import { PlanWithCard } from "./plan/with_card";
import { Start } from "./start";
import { t } from "./words";

export function NowPage({ view }: { view: Supervisor }) {
  return atDesk.value ? <NowAtDesk view={view} /> : <NowOnPhone view={view} />;
}

function NowOnPhone({ view }: { view: Supervisor }) {
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
        <Caution />
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
        <Lasers view={view} />
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

/** Places that never jump: each is as large as it is, however much stands in it, and is pushed along by itself. */
function NowAtDesk({ view }: { view: Supervisor }) {
  const words = t();
  const [picked, setPicked] = useState<Thing | null>(null);
  // One that nobody has said anything about waits for somebody already.
  const told = view.near_misses.filter(
    (one) =>
      !view.exceptions.some(({ what }) => what.kind === "near_miss" && what.number === one.then.number),
  );
  return (
    <div class="now">
      {/* Where a stop or a lost link is told when there is one: nothing below moves for it. */}
      <div class="now-head">
        <Caution />
        <Clock />
      </div>
      <section class="now-in" aria-label={words.wayIn.inside}>
        <h2>{words.wayIn.inside}</h2>
        <Inside view={view} asks />
        <Stops view={view} />
      </section>
      <section class="now-machines" aria-label={words.machines}>
        <h2>{words.machines}</h2>
        <MachineCards cards={view.machines} onPick={(id) => setPicked({ kind: "machine", id })} />
      </section>
      <section class="now-plan" aria-label={words.plan}>
        <PlanWithCard view={view} picked={picked} onPick={setPicked} />
      </section>
      <section class="now-needs" aria-label={words.exceptions}>
        <h2>
          {words.exceptions} <small>{view.exceptions.length || ""}</small>
        </h2>
        <Exceptions view={view} onShow={setPicked} />
        {view.site_change && <SiteChange change={view.site_change} />}
        <NearMisses view={{ ...view, near_misses: told }} />
        <Waters waters={view.water} />
      </section>
      <section class="now-lasers" aria-label={words.lasers}>
        <h2>{words.lasers}</h2>
        <Lasers view={view} />
      </section>
      <Behind view={view} />
    </div>
  );
}

/** By itself: the plan is not worked out anew with each tick. */
function Clock() {
  return <time>{timeOfDay(now.value)}</time>;
}

type Behind = "people" | "start" | "last" | "proven";

/** What is seldom looked at, each behind its key. */
function Behind({ view }: { view: Supervisor }) {
  const words = t();
  const [open, setOpen] = useState<Behind | null>(null);
  const keys: [Behind, string, string][] = [
    ["people", words.desk.phones(view.people.length), words.people],
    ["start", words.desk.start, words.crew.start.title],
    ["last", words.desk.lastReadings, words.lastMarks],
    ["proven", words.desk.proven, words.unprovenRuns],
  ];
  const title = keys.find(([id]) => id === open)?.[2] ?? "";
  return (
    <div class="now-behind">
      {keys.map(([id, name]) => (
        <Key key={id} onPress={() => setOpen(id)}>
          {name}
        </Key>
      ))}
      <Rain rain={view.rain} />
      <Legend />
      {open && (
        <Panel title={title} onClose={() => setOpen(null)}>
          <section aria-label={title}>
            {open === "people" && <People view={view} />}
            {open === "start" && <Start start={view.start} />}
            {open === "last" && <LastMarks view={view} />}
            {open === "proven" && <Proven view={view} />}
          </section>
        </Panel>
      )}
    </div>
  );
}

function Caution() {
  const words = t();
  return (
    <p class="quiet">
      {words.caution} {words.crew.asLastSaid}
    </p>
  );
}

function Lasers({ view }: { view: Supervisor }) {
  return (
    <>
      {view.set_ups.length === 0 && <p>{t().none}</p>}
      {view.set_ups.map((card) => (
        <div class="card" key={card.id}>
          <SetUpFacts card={card} />
        </div>
      ))}
      <Suspects cards={view.suspects} />
    </>
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
