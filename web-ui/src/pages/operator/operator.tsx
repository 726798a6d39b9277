/** The cab's page: one call as a cut through the ground, or why there is none. */
import { useEffect, useState } from "preact/hooks";
import { Notice } from "../../parts/frame";
import { Key } from "../../parts/keys";
import { LatePage } from "../../parts/late_page";
import { Settings } from "../../parts/settings";
import { Shape } from "../../parts/shape";
import { Tick } from "../../parts/tick";
import { useTitle } from "../../parts/title";
import { openPanels } from "../../parts/urgent";
import { allowSound, audible } from "../../sound";
import { beats, bye, cabPage, halted, linked, me, now, operator, replays, unkept } from "../../state";
import type { CabScreen, Operator } from "../../wire";
import { t } from "../../words";
import { answersOf, CabKeys, startOwed } from "./cab_keys";
import { headline } from "./headline";
import { coversNumber, useLook } from "./look";
import { useReceipts } from "./receipts";
import { type Halted, Screen } from "./screen";
import { many, Side } from "./side";
import { useTunes } from "./tunes";
import { namesIn } from "./way_in";

/** What may be shown now: a call past its time is old, whatever the hub has not yet said; and no number of a hub that can't keep one. */
export function current(view: Operator, at: number): CabScreen | Halted {
  const screen = view.screen;
  const stop = unkept.value;
  if (stop && (!stop.machine || stop.machine === view.machine)) {
    const { by, why, since } = stop;
    return { kind: "stop", by, why, since, all: !stop.machine, press: since };
  }
  if (halted.value && screen.kind !== "stop" && screen.kind !== "way_in") return { kind: "halted" };
  if (screen.kind !== "call" || screen.call.stale_at > at) return screen;
  const call = screen.call;
  if (call.message.kind === "measured" && call.message.correction === "grade") return { kind: "no_call" };
  return { kind: "old", mark: call.mark ?? null, why: "stale_by_age", since: call.stale_at };
}

export function OperatorPage() {
  const [planAt, setPlanAt] = useState<string | null>(null);
  const view = operator.value;
  const away = bye.value ?? (view?.device && view.device !== me.value?.device ? "retired" : null);
  const screen = view && linked.value && !away ? current(view, now.value) : null;
  // The plan stands for what was on the screen when it was asked for: anything new brings the section back.
  const shown = screen && `${screen.kind} ${screen.kind === "call" ? screen.call.id : ""}`;
  const plan = shown !== null && planAt === shown && PLAN_OVER.includes(screen?.kind ?? "");
  const call = screen?.kind === "call" ? screen.call : null;
  useLook(call);
  const covered = plan || openPanels.value > 0;
  const inView = call !== null && !covered && !coversNumber(call);
  useReceipts(screen, inView);
  useEffect(() => {
    cabPage.value = away ? null : { covered, mute: !audible.value };
  }, [covered, audible.value, !!away]);
  useTunes(screen, view?.way_in);
  const stands = away ? "" : headline(screen);
  // Its kind alone: a number that a dead page leaves in its title would look alive.
  useTitle(call ? t().callStands : stands, me.value?.machine ?? view?.machine, t().roles.operator);
  // The two names are the same rule; changing from one to the other starts its four seconds anew.
  const armed = beats.value % 2 === 0 ? "armed-a" : "armed-b";
  const answers = view && screen ? answersOf(view, screen, { inView, covered }) : [];
  const start = startOwed();
  const strips = view !== null && many(view, screen);
  const crowded = call !== null && (strips || short());
  const rows = 1 + (crowded ? 0 : answers.length) + (start ? 1 : 0);
  return (
    <div
      class={`frame cab shows-${screen?.kind ?? "nothing"} ${strips ? "many" : ""} ${crowded ? "crowded" : ""}`}
      style={{ "--rows": rows }}
      onPointerDown={() => audible.value || replays || void allowSound()}
    >
      <header>
        <CabTop view={view} plan={plan} onPlan={() => setPlanAt(plan ? null : shown)} />
      </header>
      <Heard text={stands} />
      <main class="cab-main">
        <NoLink
          armed={linked.value ? armed : ""}
          away={away ? t().bye[away] : null}
          inside={namesIn(view?.way_in)}
        />
        {view && screen && (
          <div class={`living ${armed}`}>
            <Side view={view} screen={screen} />
            <div class="filling">
              {plan ? (
                <LatePage>{(late) => <late.CabPlan view={view} />}</LatePage>
              ) : (
                <Screen view={view} screen={screen} />
              )}
            </div>
          </div>
        )}
      </main>
      <Notice />
      <CabKeys answers={answers} armed={armed} look={!!view?.look_asked_at} start={start} />
    </div>
  );
}

/** One place that a screen reader listens to: it stays, and its words change with each call and each state. */
function Heard({ text }: { text: string }) {
  return (
    <p class="unseen" role="status" aria-live="assertive" aria-atomic="true">
      {text && `${text}.`}
    </p>
  );
}

/** An upright phone with no height for a row of GOT IT. */
const short = () => innerHeight <= 680 && innerHeight > innerWidth;

/** What the plan may take the place of; a stop, a pause and a new target are never covered. */
const PLAN_OVER = ["call", "no_call", "old"];

interface TopProps {
  view: Operator | null;
  plan: boolean;
  onPlan: () => void;
}

function CabTop({ view, plan, onPlan }: TopProps) {
  return (
    <div class="top">
      <Tick />
      {view && <Shape of={view.shape} />}
      <h1>
        {me.value?.machine ?? view?.machine}
        <small>
          {view?.works_on.join(", ")} {view?.direction}
        </small>
      </h1>
      <Key kind="small" pressed={plan} onPress={onPlan}>
        {plan ? t().section : t().plan}
      </Key>
      <Settings />
    </div>
  );
}

/** Lies under the number and comes to light by itself when heartbeats cease, even with the script dead. */
function NoLink({ armed, away, inside }: { armed: string; away: string | null; inside: string }) {
  return (
    <div class={`no-link ${armed}`} aria-hidden={armed !== ""}>
      <p class="plate">
        <strong>{away ? "" : t().noLink}</strong>
        {inside && <strong>{t().wayIn.wasIn(inside)}</strong>}
        <span>{away ?? t().noLinkDo}</span>
      </p>
    </div>
  );
}
