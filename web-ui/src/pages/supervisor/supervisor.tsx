/** The supervisor's page: NOW, LOG, CODES, TARGETS, FACES. */
import { useState } from "preact/hooks";
import { Frame } from "../../parts/frame";
import { me, supervisor } from "../../state";
import { t } from "../../words";
import { CodesPage } from "./codes";
import { FacesPage } from "./faces";
import { LogPage } from "./log";
import { NowPage } from "./now";
import { TargetsPage } from "./targets";

type Tab = "now" | "log" | "codes" | "targets" | "faces" | "ground";

/** `onGround` is there when this phone is the ground person's too. */
export function SupervisorPage({ onGround }: { onGround?: (() => void) | undefined }) {
  const [tab, setTab] = useState<Tab>("now");
  const words = t();
  const view = supervisor.value;
  const tabs = [
    ...(onGround ? [{ id: "ground", name: words.read }] : []),
    { id: "now", name: words.now },
    { id: "log", name: words.logTab },
    { id: "codes", name: words.codesTab },
    { id: "targets", name: words.targetsTab },
    ...(view && view.cuts.rules !== "" ? [{ id: "faces", name: words.cuts.tab }] : []),
  ];
  const turn = (id: string) => (id === "ground" ? onGround?.() : setTab(id as Tab));
  return (
    <Frame
      title={view ? `${view.site} · ${view.day}` : (me.value?.person ?? "")}
      tabs={tabs}
      tab={tab}
      onTab={turn}
      kind="board"
    >
      {tab === "log" ? (
        <LogPage />
      ) : tab === "codes" ? (
        <CodesPage />
      ) : !view ? (
        <p class="empty">{words.loading}</p>
      ) : tab === "targets" ? (
        <TargetsPage view={view} />
      ) : tab === "faces" ? (
        <FacesPage view={view} />
      ) : (
        <NowPage view={view} />
      )}
    </Frame>
  );
}
