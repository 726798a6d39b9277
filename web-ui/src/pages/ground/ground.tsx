/** The ground person's page: READ, LASER, MARKS. */
import { useState } from "preact/hooks";
import { Frame } from "../../parts/frame";
import { ground, me, sheet } from "../../state";
import { t } from "../../words";
import { LaserPage } from "./laser";
import { MarksPage } from "./marks";
import { ReadPage } from "./read";

type Tab = "read" | "laser" | "marks" | "board";

/** `onBoard` is there when this phone is the supervisor's too. */
export function GroundPage({ onBoard }: { onBoard?: (() => void) | undefined }) {
  const [tab, setTab] = useState<Tab>("read");
  const words = t();
  const tabs = [
    { id: "read", name: words.read },
    { id: "laser", name: words.laser },
    { id: "marks", name: words.marks },
    ...(onBoard ? [{ id: "board", name: words.board }] : []),
  ];
  const turn = (id: string) => (id === "board" ? onBoard?.() : setTab(id as Tab));
  return (
    <Frame title={me.value?.person ?? words.title} tabs={tabs} tab={tab} onTab={turn} kind="ground">
      {!ground.value || !sheet.value ? (
        <p class="empty">{words.loading}</p>
      ) : tab === "read" ? (
        <ReadPage onLaser={() => setTab("laser")} onMarks={() => setTab("marks")} />
      ) : tab === "laser" ? (
        <LaserPage />
      ) : (
        <MarksPage onChosen={() => setTab("read")} />
      )}
    </Frame>
  );
}
