/** What of the ground stands on the cab's screen: a face that is left, a stretch that is dug by hand, a rule of depth. */
import { alarmWhy } from "../../parts/alarm_why";
import { ago, feet, moment } from "../../show";
import { now } from "../../state";
import type { CabScreen, Crossing, DepthWarning, Operator, SpotterCard } from "../../wire";
import { t } from "../../words";
import { NearStrips } from "./near";
import { ems } from "./section";

/** Whole screen: the machine may be under a face that is left. */
export function LeaveFace({ screen }: { screen: Extract<CabScreen, { kind: "leave_face" }> }) {
  const words = t().cuts;
  return (
    <div class="stop-screen" role="alert">
      <div class="stop-plate leave-plate">
        <p class="leave-word">{words.leave}</p>
        <p>{screen.name}</p>
        <p>
          {alarmWhy(screen.why)} <span class="age">· {ago(now.value - screen.since)}</span>
        </p>
        <p>{words.leaveDo}</p>
      </div>
    </div>
  );
}

/** Silent strips above whatever else is on the screen; a call that says HAND DIG itself needs no strip for it. */
export function GroundStrips({ view, byHand }: { view: Operator; byHand: boolean }) {
  const words = t().cuts;
  return (
    <>
      {view.faces_left.map((face) => (
        <p class="ground-strip left" role="alert" key={face.zone}>
          <strong>{words.leave}</strong>
          <span>{words.leaveStrip(face.name, String(Math.ceil(face.strip / 3_048_000)))}</span>
        </p>
      ))}
      <NearStrips view={view} />
      {view.rain.since != null && (
        <p class="ground-strip" role="note">
          {words.rains(moment(view.rain.since, now.value))}
        </p>
      )}
      {view.spotter && <SpotterStrip spotter={view.spotter} />}
      {byHand &&
        view.hand_dig.map((one) => <HandDigStrip key={`${one.utility}${one.by_hand.from}`} one={one} />)}
    </>
  );
}

/** Who watches for this machine; one whose phone is silent may not be there. */
function SpotterStrip({ spotter }: { spotter: SpotterCard }) {
  const words = t().crew;
  const lost = spotter.lost != null;
  return (
    <p class={`ground-strip spotter ${lost ? "left" : ""}`} role={lost ? "alert" : "note"}>
      <strong>{lost ? words.spotterLost(spotter.person) : words.spotter(spotter.person)}</strong>
    </p>
  );
}

function HandDigStrip({ one }: { one: Crossing }) {
  const words = t().cuts;
  return (
    <p class="ground-strip by-hand">
      <Shovel />
      <strong>{words.handDig}</strong>
      <span>
        {words.handDigAt(words.kinds[one.kind], feet(one.by_hand.from, 0), feet(one.by_hand.to, 0))}
      </span>
    </p>
  );
}

/** A shovel, drawn: the bucket has no place here. */
export function Shovel() {
  return (
    <svg class="shovel" viewBox="0 0 40 60" aria-hidden="true">
      <path d="M20 4v30M12 4h16M10 34h20v10c0 8-6 12-10 13-4-1-10-5-10-13z" />
    </svg>
  );
}

/** Before the number of a call beside a buried line: dots, the shovel, the word. */
export function HandDigPlate() {
  return (
    <div class="hand-dig" role="note">
      <Shovel />
      <strong style={{ "--ems": ems(t().cuts.handDig) }}>{t().cuts.handDig}</strong>
      <Shovel />
    </div>
  );
}

/** Rules of depth that come near with this call. */
export function DepthWarnings({ warnings }: { warnings: readonly DepthWarning[] }) {
  const words = t().cuts;
  return (
    <>
      {warnings.map((one) => (
        <p class="depth-warning" key={one.rule}>
          <strong>{words.depthRules[one.rule]}</strong>{" "}
          {words.depthStates[one.state](feet(one.limit, 0), feet(one.left))}
        </p>
      ))}
    </>
  );
}
