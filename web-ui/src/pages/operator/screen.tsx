/** What fills the cab's screen. Anything but a live call shows no number. */
import { setUpName } from "../../given_names";
import { said } from "../../said";
import { ago } from "../../show";
import { now, unkept } from "../../state";
import type { CabScreen, Operator, Reminder } from "../../wire";
import { t } from "../../words";
import { LeaveFace } from "./ground_strips";
import { coversNumber } from "./look";
import { Section } from "./section";
import { zone } from "./side";
import { Stand } from "./stand";
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
        />
      );
    case "call":
      return (
        <div class="call" key={screen.call.id}>
          <Section call={screen.call} />
          {screen.call.reminder && coversNumber(screen.call) && <Loud reminder={screen.call.reminder} />}
        </div>
      );
    case "old":
      return (
        <Plate
          title={words.ended[screen.why]}
          lines={[screen.mark ?? "", screen.held ? said(screen.held) : "", words.endedDo]}
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

interface PlateProps {
  title: string;
  lines: string[];
  children?: preact.ComponentChildren;
}

function Plate({ title, lines, children }: PlateProps) {
  return (
    <div class="plate-screen">
      <p class="plate-title" style={{ "--longest": longest(title) }}>
        <Together text={title} />
      </p>
      {lines.filter(Boolean).map((line) => (
        <p key={line}>{line}</p>
      ))}
      {children}
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
        <p>{words.bucketDown}</p>
        <p>{words.lookAlways}</p>
        <p>{words.stopLift}</p>
      </div>
    </div>
  );
}

/** In the place of the number, and gone by itself: no press is needed to go on. */
function Loud({ reminder }: { reminder: Reminder }) {
  return (
    <div class="loud" role="alert">
      <p class="stop-word">{t().look}</p>
      <p class="loud-who">{t().inKeepOut(reminder.who, reminder.mark)}</p>
      <p>{zone(reminder)}</p>
      <p>{t().caution}</p>
    </div>
  );
}
