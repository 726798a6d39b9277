/** What fills the cab's screen. Anything but a live call shows no number. */
import { setUpName } from "../../given_names";
import { say } from "../../hub";
import { labelWords } from "../../parts/call";
import { HoldKey, Key } from "../../parts/keys";
import { ago } from "../../show";
import { language, now, unkept } from "../../state";
import type { CabScreen, CallView, Operator, Reminder } from "../../wire";
import { t } from "../../words";
import { DepthWarnings, HandDigPlate, LeaveFace } from "./ground_strips";
import { coversNumber, hasLooked } from "./look";
import { Section } from "./section";
import { Stand, standWords } from "./stand";
import { WayInStop, WhoIsIn } from "./way_in";

/** The hub can't keep its log: what it shows could not be proven, so it shows none. */
export interface Halted {
  kind: "halted";
}

export function Screen({ view, screen }: { view: Operator; screen: CabScreen | Halted }) {
  const words = t();
  switch (screen.kind) {
    case "stop":
      return <Stop screen={screen} view={view} />;
    case "way_in":
      return <WayInStop view={view} />;
    case "leave_face":
      return <LeaveFace screen={screen} />;
    case "pause":
      return <Plate title={words.pause} lines={[words.pauseWhy(setUpName(screen.set_up))]} />;
    case "new_target":
      return (
        <Plate
          title={words.newTarget}
          lines={[`${screen.name} ${words.revision(screen.revision)}`, words.newTargetOld]}
        >
          <Key
            kind="large"
            onPress={() => void say({ kind: "see_target", target: screen.target, revision: screen.revision })}
          >
            {words.seen}
          </Key>
        </Plate>
      );
    case "call":
      return <Call call={screen.call} view={view} key={screen.call.id} />;
    case "old":
      return (
        <Plate
          title={words.old}
          lines={[screen.mark ?? "", words.endings[screen.why], here(screen.english, screen.spanish)]}
        >
          <Stand view={view} />
        </Plate>
      );
    case "halted":
      return <Plate title={words.haltedTitle} lines={[words.halted]} />;
    case "off_site":
      return <Plate title={words.noCall} lines={[words.endings.off_site, words.offSiteDo]} />;
    case "no_call":
      return (
        <Plate title={words.noCall} lines={[words.noCallWhy]}>
          <Stand view={view} />
        </Plate>
      );
  }
}

/** A sentence of the hub in this screen's language. */
function here(english?: string | null, spanish?: string | null): string {
  return (language.value === "spanish" ? spanish : english) ?? "";
}

interface PlateProps {
  title: string;
  lines: string[];
  children?: preact.ComponentChildren;
}

function Plate({ title, lines, children }: PlateProps) {
  return (
    <div class="plate-screen" role="status">
      <p class="plate-title" style={{ "--longest": longest(title) }}>
        <Together text={title} />
      </p>
      {lines.filter(Boolean).map((line) => (
        <p key={line}>{line}</p>
      ))}
      {children}
      <p class="nobody">{t().wayIn.nobody}</p>
    </div>
  );
}

/** A title whose dash stays with the word before it. */
function Together({ text }: { text: string }) {
  const [first, ...rest] = text.split(" – ");
  if (rest.length === 0) return <>{text}</>;
  return (
    <>
      <span class="together">{first} –</span> {rest.join(" – ")}
    </>
  );
}

/** The longest word decides how large a title may be. */
function longest(title: string): number {
  return Math.max(
    4,
    ...title
      .replace(" –", "–")
      .split(" ")
      .map((word) => word.length),
  );
}

type StopScreen = Extract<CabScreen, { kind: "stop" }>;

function Stop({ screen, view }: { screen: StopScreen; view: Operator }) {
  const words = t();
  return (
    <div class="stop-screen" role="alert">
      <div class="stop-plate">
        <p class="stop-word">{words.stop}</p>
        <p>{screen.all ? words.allMachines : view.machine}</p>
        <p>
          {words.stopBy(screen.by)} <span class="age">· {ago(now.value - screen.since)}</span>
        </p>
        {screen.why && <p>{screen.why}</p>}
        {unkept.value && <p>{words.notInTheLog}</p>}
        <WhoIsIn card={view.way_in} />
        {!view.way_in.down && (
          <HoldKey kind="down" onPress={() => void say({ kind: "bucket_down", answers: [] })}>
            {words.wayIn.bucketDown}
          </HoldKey>
        )}
        <p>{words.bucketDown}</p>
        <p>{words.lookAlways}</p>
        <p>{words.stopLift}</p>
      </div>
    </div>
  );
}

/** HAND DIG has a plate of its own; whose elevations nobody typed twice is seen to by the ground and at the desk. */
const NOT_HERE: readonly string[] = ["hand_dig", "not_proved"];

function Call({ call, view }: { call: CallView; view: Operator }) {
  const labels = labelWords({ ...call, labels: call.labels.filter((one) => !NOT_HERE.includes(one)) });
  return (
    <div class="call">
      <div class="call-top">
        <strong>{call.mark ?? ""}</strong>
        <span>{call.target ?? ""}</span>
        <span class="age">{ago(now.value - call.made_at)}</span>
      </div>
      {labels.length > 0 && <p class="labels">{labels.join(" · ")}</p>}
      <DepthWarnings warnings={call.warnings} />
      {call.reminder ? (
        <Strip reminder={call.reminder} place={standWords(view)} />
      ) : (
        <p class="nobody">{t().wayIn.nobody}</p>
      )}
      <Section call={call} />
      {call.labels.includes("hand_dig") && <HandDigPlate />}
      {call.reminder && coversNumber(call) && <Loud reminder={call.reminder} call={call.id} />}
    </div>
  );
}

/** Stands on every call inside the keep-out, and is silent. */
function Strip({ reminder, place }: { reminder: Reminder; place: string }) {
  return (
    <div class={`strip ${reminder.loud && reminder.beside ? "beside" : ""}`} role="note">
      <strong>{t().look}</strong>
      <span>{t().inKeepOut(reminder.who, reminder.mark)}</span>
      <small>
        {zone(reminder)} {place} {t().cautionShort}
      </small>
    </div>
  );
}

/** In which part of the keep-out: the tail's swing is hot also with the bucket down. */
function zone(reminder: Reminder): string {
  return reminder.zone ? t().crew.zones[reminder.zone] : "";
}

/** In the place of the number, and gone by itself: no press is needed to go on. */
function Loud({ reminder, call }: { reminder: Reminder; call: number }) {
  return (
    <div class="loud" role="alert">
      <p class="stop-word">{t().look}</p>
      <p class="loud-who">{t().inKeepOut(reminder.who, reminder.mark)}</p>
      <p>{zone(reminder)}</p>
      <p>{t().caution}</p>
      <Key kind="large" onPress={() => hasLooked(call)}>
        {t().seenIt}
      </Key>
    </div>
  );
}
