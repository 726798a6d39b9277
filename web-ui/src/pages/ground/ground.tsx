/** The ground person's page: READ, LASER, MARKS, and from there WORK. More keys than these are too narrow for a glove. */
import { useEffect, useState } from "preact/hooks";
import { Frame } from "../../parts/frame";
import { LatePage } from "../../parts/late_page";
import { LatePanel } from "../../parts/late_panel";
import { MachineLine } from "../../parts/machine";
import { Shape } from "../../parts/shape";
import { takesAll } from "../../parts/urgent";
import { ago } from "../../show";
import { play } from "../../sound";
import { ground, me, now, sheet } from "../../state";
import type { Ground, MachineCard } from "../../wire";
import { t } from "../../words";
import { InBar, SpotBar, takesThePage } from "./ask_in";
import { machine } from "./at";
import { FaceLeftStrip } from "./face_left";
import { begin, unsettled } from "./open";
import { ReadPage } from "./read";

takesAll.value = takesThePage;

type Tab = "read" | "laser" | "marks" | "work" | "board";

/** `onBoard` is there when this phone is the supervisor's too. */
export function GroundPage({ onBoard }: { onBoard?: (() => void) | undefined }) {
  const [tab, setTab] = useState<Tab>("read");
  const [withWhat, setWith] = useState(false);
  const words = t();
  const whole = takesThePage();
  const tabs = [
    { id: "read", name: words.read },
    { id: "laser", name: words.laser },
    { id: "marks", name: words.marks },
    ...(onBoard ? [{ id: "board", name: words.board }] : []),
  ];
  const turn = (id: string) => {
    // What is not settled is still there when the person comes back to READ; what is settled is done with.
    if (id !== tab && !unsettled.value) begin();
    if (id === "board") onBoard?.();
    else setTab(id as Tab);
  };
  return (
    <Frame
      title={me.value?.person ?? words.title}
      tabs={tabs}
      tab={tab === "work" ? "marks" : tab}
      onTab={turn}
      kind="ground"
      lead={
        tab === "read" && machine.value && <MachineLine card={machine.value} onPress={() => setWith(true)} />
      }
    >
      <FaceLeftStrip />
      <LookStrips />
      <SpotBar />
      {(whole || tab !== "read") && <InBar />}
      {whole ? (
        whole
      ) : !ground.value || !sheet.value ? (
        <p class="empty">{words.loading}</p>
      ) : tab === "read" ? (
        <ReadPage onMarks={() => turn("marks")} onWith={() => setWith(true)} />
      ) : tab === "laser" ? (
        <LatePage>{(late) => <late.LaserPage />}</LatePage>
      ) : tab === "work" ? (
        <Work view={ground.value} />
      ) : (
        <LatePage>
          {(late) => <late.MarksPage onChosen={() => setTab("read")} onWork={() => setTab("work")} />}
        </LatePage>
      )}
      {withWhat && (
        <LatePanel title={words.options} onClose={() => setWith(false)}>
          {(late) => <late.WithPanel onClose={() => setWith(false)} />}
        </LatePanel>
      )}
    </Frame>
  );
}

/** Every machine that asks for a look, longest first, whatever mark or page this is; heard when it comes. */
function LookStrips() {
  const asking = (ground.value?.machines ?? []).filter((card) => card.look_asked_at != null);
  const since = (card: MachineCard) => card.look_asked_at ?? 0;
  const which = asking.map((card) => `${card.id} ${since(card)}`).join(" ");
  useEffect(() => {
    if (!which) return;
    play("look", 1, 1);
    navigator.vibrate?.([200, 100, 200]);
  }, [which]);
  return (
    <>
      {asking
        .sort((a, b) => since(a) - since(b))
        .map((card) => (
          <p class="look-strip" role="alert" key={card.id}>
            <Shape of={card.shape} /> {t().waitsForLook(card.id, ago(now.value - since(card)))}
          </p>
        ))}
    </>
  );
}

function Work({ view }: { view: Ground }) {
  return <LatePage>{(script) => <script.WorkPage view={view} />}</LatePage>;
}
