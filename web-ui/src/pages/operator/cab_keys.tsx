/**
 * The cab's keys. What answers the screen stands in one place, in a thumb's reach and never pushed out of sight: GOT IT, BUCKET
 * DOWN, I AM AWAY, SEEN. STOP has its corner, nothing large over it.
 */
import type { ComponentChildren } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { keepAwake, keptBy } from "../../awake";
import { say } from "../../hub";
import { waiting } from "../../outbox";
import { HoldKey, Key, StopKey } from "../../parts/keys";
import { LatePanel } from "../../parts/late_panel";
import { allowSound, audible } from "../../sound";
import { replays } from "../../state";
import type { CabScreen, CallView, Operator } from "../../wire";
import { t } from "../../words";
import { coversNumber, hasLooked } from "./look";
import type { Halted } from "./screen";
import { StandKey, standKeys } from "./stand";
import { holds } from "./way_in";

/** Whether the number is in view, and whether something that was opened lies over the screen. */
interface Seen {
  inView: boolean;
  covered: boolean;
}

/** The keys that answer what fills the screen, a row each. */
export function answersOf(view: Operator, screen: CabScreen | Halted, seen: Seen): ComponentChildren[] {
  const words = t();
  switch (screen.kind) {
    case "call":
      if (seen.inView) return [<GotIt key="got" call={screen.call} view={view} />];
      if (seen.covered || !coversNumber(screen.call)) return [];
      return [
        <Key key="look" onPress={() => hasLooked(screen.call.id)}>
          {words.seenIt}
        </Key>,
      ];
    case "stop":
      return view.way_in.down
        ? []
        : [
            <HoldKey key="down" kind="down" onPress={() => void say({ kind: "bucket_down", answers: [] })}>
              {words.wayIn.bucketDown}
            </HoldKey>,
          ];
    case "way_in":
      return holds(view.way_in);
    case "leave_face":
      return [
        <Key
          key="away"
          onPress={() => void say({ kind: "leave_face", zone: screen.zone, alarm: screen.alarm })}
        >
          {words.cuts.away}
        </Key>,
      ];
    case "new_target":
      return [
        <Key
          key="seen"
          onPress={() => void say({ kind: "see_target", target: screen.target, revision: screen.revision })}
        >
          {words.seen}
        </Key>,
      ];
    case "old":
    case "no_call":
      return standKeys(view);
    default:
      return [];
  }
}

/** No press is ever needed to go on digging. */
function GotIt({ call, view }: { call: CallView; view: Operator }) {
  const got = call.state.kind === "got";
  const sending = waiting.value.some((item) => item.command.kind === "got_it");
  return (
    <>
      <Key
        kind={`got ${got ? "done" : ""}`}
        disabled={got}
        onPress={() => void say({ kind: "got_it", call: call.id })}
      >
        {got ? t().gotPressed : sending ? t().states.waiting : t().gotIt}
      </Key>
      <StandKey view={view} />
    </>
  );
}

interface CabKeysProps {
  answers: ComponentChildren[];
  armed: string;
  look: boolean;
  start: ComponentChildren;
}

export function CabKeys({ answers, armed, look, start }: CabKeysProps) {
  const [cant, setCant] = useState(false);
  return (
    <nav class="cab-keys" aria-label={t().title}>
      <Awake />
      {start}
      {answers.map((one, i) => (
        <div class={`answer fades ${armed}`} key={i}>
          {one}
        </div>
      ))}
      <Key onPress={() => void say({ kind: "check_me" })} pressed={look}>
        {look ? t().checkAsked : t().checkMe}
      </Key>
      <Key onPress={() => setCant(true)}>{t().cantKey}</Key>
      <StopKey />
      {cant && (
        <LatePanel title={t().cantKey} onClose={() => setCant(false)}>
          {(late) => <late.CantPanel onClose={() => setCant(false)} />}
        </LatePanel>
      )}
    </nav>
  );
}

/** The page's own place for keeping the screen on; a press may start it. */
const place: { current: HTMLDivElement | null } = { current: null };

function wake(): void {
  if (place.current && !replays) void keepAwake(place.current);
}

function Awake() {
  const here = useRef<HTMLDivElement>(null);
  // The press that joined may still count; if not, TAP ONCE asks for another.
  useEffect(() => {
    place.current = here.current;
    wake();
  }, []);
  return <div class="awake" ref={here} />;
}

/** Sound and a screen that stays on need one press after each load. */
export function startOwed(): ComponentChildren {
  if (!audible.value) {
    const start = () => {
      void allowSound();
      wake();
    };
    return (
      <Key kind="start" onPress={start}>
        {t().tapOnce}
      </Key>
    );
  }
  return keptBy.value === "phone" ? <p class="start">{t().lockPhone}</p> : null;
}
