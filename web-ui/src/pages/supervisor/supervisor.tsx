/** The supervisor's page: NOW, LOG, CODES, TARGETS, ACCOUNT, FACES, REVIEW, SITE, DAY. */
import { useState } from "preact/hooks";
import { Frame } from "../../parts/frame";
import { unbroken } from "../../show";
import { me, supervisor } from "../../state";
import { AccountPage } from "./account/account";
import { goTo, place } from "./address";
import { CodesPage } from "./codes";
import { FacesPage } from "./faces";
import { LogPage } from "./log";
import { NowPage } from "./now";
import { RecordPage } from "./record/record";
import { ReviewPage } from "./review/review";
import { SitePage } from "./site/site";
import { TargetsPage } from "./targets";
import { t } from "./words";

type Tab =
  | "now"
  | "log"
  | "codes"
  | "targets"
  | "faces"
  | "account"
  | "review"
  | "site"
  | "record"
  | "ground";

/** `onGround` is there when this phone is the ground person's too. */
export function SupervisorPage({ onGround }: { onGround?: (() => void) | undefined }) {
  const tab = (place.value.page || "now") as Tab;
  const [revises, setRevises] = useState<string | null>(null);
  const words = t();
  const view = supervisor.value;
  const tabs = [
    ...(onGround ? [{ id: "ground", name: words.read }] : []),
    { id: "now", name: words.now },
    { id: "log", name: words.logTab },
    { id: "codes", name: words.codesTab },
    { id: "targets", name: words.targetsTab },
    { id: "account", name: words.account.tab },
    ...(view && view.cuts.rules !== "" ? [{ id: "faces", name: words.cuts.tab }] : []),
    { id: "review", name: words.review.tab },
    { id: "site", name: words.siteTab },
    { id: "record", name: words.record.tab },
  ];
  const turn = (id: string) => {
    setRevises(null);
    if (id === "ground") {
      // A page that is loaded again in the cut opens there.
      goTo("", {});
      onGround?.();
    } else goTo(id);
  };
  return (
    <Frame
      title={view ? `${view.site} · ${unbroken(view.day)}` : (me.value?.person ?? "")}
      tabs={tabs}
      tab={tab}
      onTab={turn}
      kind="board"
    >
      {tab === "log" ? (
        <LogPage />
      ) : tab === "review" ? (
        <ReviewPage />
      ) : tab === "codes" ? (
        <CodesPage />
      ) : tab === "site" ? (
        <SitePage target={revises} />
      ) : !view ? (
        <p class="empty">{words.loading}</p>
      ) : tab === "targets" ? (
        <TargetsPage
          view={view}
          onRevise={(target) => {
            setRevises(target);
            goTo("site");
          }}
        />
      ) : tab === "account" ? (
        <AccountPage view={view} />
      ) : tab === "faces" ? (
        <FacesPage view={view} />
      ) : tab === "record" ? (
        <RecordPage view={view} />
      ) : (
        <NowPage view={view} />
      )}
    </Frame>
  );
}
