/** The cab's page: one call as a cut through the ground, or why there is none. */
import { useEffect, useRef, useState } from "preact/hooks";
import { keepAwake, keptBy } from "../../awake";
import { say } from "../../hub";
import { waiting } from "../../outbox";
import { Notice } from "../../parts/frame";
import { Key, StopKey } from "../../parts/keys";
import { Settings } from "../../parts/settings";
import { Shape } from "../../parts/shape";
import { Struck } from "../../parts/struck";
import { Tick } from "../../parts/tick";
import { openPanels } from "../../parts/urgent";
import { allowSound, audible } from "../../sound";
import { beats, bye, cabPage, halted, linked, me, now, operator, replays, unkept } from "../../state";
import type { CabScreen, CallView, Operator } from "../../wire";
import { t } from "../../words";
import { CantPanel } from "./cant";
import { GroundStrips } from "./ground_strips";
import { coversNumber, useLook } from "./look";
import { CabPlan } from "./plan";
import { useReceipts } from "./receipts";
import { type Halted, Screen } from "./screen";
import { StandKey } from "./stand";
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
  // The two names are the same rule; changing from one to the other starts its four seconds anew.
  const armed = beats.value % 2 === 0 ? "armed-a" : "armed-b";
  return (
    <div class="frame cab" onPointerDown={() => audible.value || replays || void allowSound()}>
      <header>
        <CabTop view={view} plan={plan} onPlan={() => setPlanAt(plan ? null : shown)} />
      </header>
      <main class="cab-main">
        <NoLink
          armed={linked.value ? armed : ""}
          away={away ? t().bye[away] : null}
          inside={namesIn(view?.way_in)}
        />
        {view && screen && (
          <div class={`living ${armed}`}>
            <Struck cards={view.struck} />
            {screen.kind !== "leave_face" && screen.kind !== "stop" && (
              <GroundStrips
                view={view}
                byHand={screen.kind !== "call" || !screen.call.labels.includes("hand_dig")}
              />
            )}
            <div class="filling">
              {plan && view ? <CabPlan view={view} /> : <Screen view={view} screen={screen} />}
            </div>
          </div>
        )}
      </main>
      <Notice />
      <Start />
      <CabKeys
        call={inView ? call : null}
        room={!screen || !STANDS_STILL.includes(screen.kind)}
        armed={armed}
        look={!!view?.look_asked_at}
        view={view}
      />
    </div>
  );
}

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

/** Sound and a screen that stays on need one press after each load. */
function Start() {
  const place = useRef<HTMLDivElement>(null);
  const wake = () => {
    if (place.current && !replays) void keepAwake(place.current);
  };
  // The press that joined may still count; if not, the key below asks for another.
  useEffect(wake, []);
  const start = () => {
    void allowSound();
    wake();
  };
  return (
    <div class="start">
      <div class="awake" ref={place} />
      {!audible.value && (
        <Key kind="wide" onPress={start}>
          {t().tapOnce}
        </Key>
      )}
      {audible.value && keptBy.value === "phone" && <p>{t().lockPhone}</p>}
    </div>
  );
}

/** Where there is nothing to get, GOT IT leaves its room to who is in and to BUCKET DOWN. */
const STANDS_STILL = ["stop", "way_in", "leave_face"];

interface CabKeysProps {
  /** The call whose number is in view. */
  call: CallView | null;
  /** GOT IT has its room, so that nothing moves when it comes and goes. */
  room: boolean;
  armed: string;
  look: boolean;
  view: Operator | null;
}

/** GOT IT is the large one, there only while the number is in view; no press is ever needed to go on digging. */
function CabKeys({ call, room, armed, look, view }: CabKeysProps) {
  const [cant, setCant] = useState(false);
  const got = call?.state.kind === "got";
  const sending = waiting.value.some((item) => item.command.kind === "got_it");
  return (
    <nav class="cab-keys" aria-label={t().title}>
      {room && !call && <div class="got" />}
      {call && (
        <div class="got-row">
          <Key
            kind={`got fades ${armed} ${got ? "done" : ""}`}
            disabled={got}
            onPress={() => void say({ kind: "got_it", call: call.id })}
          >
            {got ? t().gotPressed : sending ? t().states.waiting : t().gotIt}
          </Key>
          <StandKey view={view} />
        </div>
      )}
      <Key onPress={() => void say({ kind: "check_me" })} pressed={look}>
        {look ? t().checkAsked : t().checkMe}
      </Key>
      <Key onPress={() => setCant(true)}>{t().cantKey}</Key>
      <StopKey />
      {cant && <CantPanel onClose={() => setCant(false)} />}
    </nav>
  );
}
