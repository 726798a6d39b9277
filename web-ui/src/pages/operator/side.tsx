/** What stands over the section, or beside it where the phone lies on its side: the mark, who to look for, what is near. */
import { labelWords } from "../../parts/call";
import { Struck } from "../../parts/struck";
import { ago } from "../../show";
import { now } from "../../state";
import type { CabScreen, CallView, Operator, Reminder } from "../../wire";
import { t } from "../../words";
import { DepthWarnings, GroundStrips, HandDigPlate } from "./ground_strips";
import { LineSide } from "./line";
import type { Halted } from "./screen";
import { standWords } from "./stand";

/** HAND DIG has a plate of its own; whose elevations nobody typed twice is seen to by the ground and at the desk. */
const NOT_HERE: readonly string[] = ["hand_dig", "not_proved"];

/** What fills the screen says all there is; strips would take its room. */
const ALONE: readonly string[] = ["leave_face", "stop"];

/** Several lines stand over what fills the screen: they are set smaller, and under a number GOT IT gives them its row. */
export function many(view: Operator, screen: CabScreen | Halted | null): boolean {
  if (!screen || ALONE.includes(screen.kind)) return false;
  const { faces_left, near, slews, spotter, hand_dig, struck } = view;
  const lines = faces_left.length + near.length + slews.length + hand_dig.length + struck.length;
  const call = screen.kind === "call" ? screen.call : null;
  return lines + (spotter ? 1 : 0) + (call?.reminder ? 1 : 0) + (call?.warnings.length ?? 0) > 1;
}

export function Side({ view, screen }: { view: Operator; screen: CabScreen | Halted }) {
  const call = screen.kind === "call" ? screen.call : null;
  const byHand = call?.labels.includes("hand_dig") ?? false;
  const labels = call
    ? labelWords({ ...call, labels: call.labels.filter((one) => !NOT_HERE.includes(one)) })
    : [];
  const alone = ALONE.includes(screen.kind);
  return (
    <div class="side">
      <Struck cards={view.struck} />
      {call && <Top call={call} />}
      {call?.reminder && <Strip reminder={call.reminder} place={standWords(view)} />}
      {!alone && <GroundStrips view={view} byHand={!byHand} />}
      {call && <DepthWarnings warnings={call.warnings} />}
      {labels.length > 0 && <p class="labels">{labels.join(" · ")}</p>}
      {!alone && screen.kind !== "way_in" && !call?.reminder && <p class="nobody">{t().wayIn.nobody}</p>}
      {call && <LineSide call={call} />}
      {byHand && <HandDigPlate />}
    </div>
  );
}

function Top({ call }: { call: CallView }) {
  return (
    <div class="call-top">
      <strong>{call.mark ?? ""}</strong>
      <span>{call.target ?? ""}</span>
      <span class="age">{ago(now.value - call.made_at)}</span>
    </div>
  );
}

/** Stands on every call inside the keep-out, and is silent. */
function Strip({ reminder, place }: { reminder: Reminder; place: string }) {
  return (
    <div class={`strip ${reminder.loud && reminder.beside ? "beside" : ""}`} role="note">
      <strong>{t().look}</strong>
      <span>{t().inKeepOut(reminder.who, reminder.mark)}</span>
      <span class="where">{zone(reminder) || place}</span>
      <small>
        {zone(reminder) && place} {t().cautionShort}
      </small>
    </div>
  );
}

/** In which part of the keep-out: the tail's swing is hot also with the bucket down. */
export function zone(reminder: Reminder): string {
  return reminder.zone ? t().crew.zones[reminder.zone] : "";
}
