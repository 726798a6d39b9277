/** What every page carries: the sign of life, what is not sent, the notice, and the row of keys with STOP. */
import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { FOOT } from "../grade";
import { notSent, onlyInMemory } from "../outbox";
import { play } from "../sound";
import { ground, halted, linked, me, notice, photosWaiting, supervisor, visitor } from "../state";
import type { Role } from "../wire";
import { t } from "../words";
import { HeldWords, LeftWords } from "./kept";
import { Key, StopKey } from "./keys";
import { Settings } from "./settings";
import { Struck } from "./struck";
import { TakenPhoto } from "./taken_photo";
import { Tick } from "./tick";
import { useTitle } from "./title";
import { StopBand, standing } from "./urgent";

/** Lines that stand above a page while something is wrong. */
export function Warnings() {
  const struck = (ground.value ?? supervisor.value)?.cuts.struck ?? visitor.value?.struck;
  useAlarm(struck?.at(-1)?.since);
  const left = visitor.value?.faces_left ?? [];
  const alarms = (ground.value?.cuts.faces ?? []).flatMap((card) => card.alarm ?? []);
  const since = [...left, ...alarms].map((one) => one.since);
  useAlarm(since.length > 0 ? Math.max(...since) : undefined);
  return (
    <div class="warnings" aria-live="assertive">
      {notSent.value.length > 0 && <p class="warning">{t().notSentCount(notSent.value.length)}</p>}
      {onlyInMemory.value && <p class="warning">{t().kept.onlyInMemory}</p>}
      <HeldWords />
      <AllStop />
      <Struck cards={struck} />
      {left.map((face) => (
        <p class="warning" role="alert" key={face.zone}>
          {t().cuts.leave} · {t().cuts.leaveStrip(face.name, String(Math.ceil(face.strip / FOOT)))}
        </p>
      ))}
      {!linked.value && <p class="warning">{t().linkLostDo}</p>}
      {halted.value && <p class="warning">{t().halted}</p>}
      {photosWaiting.value > 0 && <p class="waits">{t().photosWait(photosWaiting.value)}</p>}
      {(ground.value ?? visitor.value)?.closed && <p class="warning">{t().dayIsClosed}</p>}
      <LeftWords />
    </div>
  );
}

/** STOP AGAIN sounds after this long, and this often, ms. */
const AGAIN = 4_000;
const TIMES = 4;

/** Heard and felt when it comes, and a few times more; a further press is heard again. */
function useAlarm(since: number | undefined, again = 0) {
  useEffect(() => {
    if (since === undefined) return undefined;
    let left = TIMES;
    const sound = () => {
      play("stop", 1, 1);
      navigator.vibrate?.([400, 200, 400]);
    };
    sound();
    const timer = setInterval(() => {
      if (left-- > 0) sound();
    }, AGAIN);
    return () => clearInterval(timer);
  }, [since, again]);
}

/** An ALL STOP that stands: who and why, on every page. */
function AllStop() {
  const stop = standing();
  useAlarm(stop?.since, stop?.press);
  return stop && <StopBand stop={stop} all />;
}

/** A word from the hub that stays until it is pressed away. */
export function Notice() {
  const key = useRef<HTMLDivElement>(null);
  const text = notice.value;
  useEffect(() => {
    if (text) key.current?.querySelector("button")?.focus();
  }, [text]);
  if (!text) return null;
  const close = () => {
    notice.value = null;
  };
  return (
    <div class="notice" role="alertdialog" aria-modal="false" aria-label={text} ref={key}>
      <p>{text}</p>
      <Key onPress={close}>{t().close}</Key>
    </div>
  );
}

interface Tab {
  id: string;
  name: string;
}

interface FrameProps {
  title: string;
  tabs: Tab[];
  tab: string;
  onTab: (id: string) => void;
  children: ComponentChildren;
  kind?: string;
  /** Stands in the place of the title, which is then for screen readers alone. */
  lead?: ComponentChildren;
}

const roleWords = (roles: readonly Role[] | undefined) =>
  (roles ?? []).map((one) => t().roles[one]).join(" + ");

/** A page of the ground person, the supervisor or a visitor. */
export function Frame({ title, tabs, tab, onTab, children, kind = "", lead }: FrameProps) {
  const row = useRef<HTMLDivElement>(null);
  const open = tabs.find((one) => one.id === tab)?.name;
  const stops = !linked.value ? t().noLink : standing() && t().stop;
  useTitle(stops, open, me.value?.person, roleWords(me.value?.roles));
  // Where the names go in one row that is pushed along, the open page's name is in sight.
  useEffect(() => {
    const open = row.current?.querySelector("[aria-pressed=true]");
    open?.scrollIntoView?.({ block: "nearest", inline: "center" });
  }, [tab]);
  return (
    <div class={`frame ${kind}`}>
      <header>
        <div class="top">
          <Tick />
          <h1 class={lead ? "unseen" : ""}>{title}</h1>
          {lead}
          <Settings />
        </div>
      </header>
      <div class="middle">
        <Warnings />
        <main class="body">{children}</main>
      </div>
      <TakenPhoto />
      <Notice />
      <nav class="row" aria-label={title}>
        <div class="tabs" ref={row}>
          {tabs.map((one) => (
            <Key key={one.id} kind="tab" pressed={one.id === tab} onPress={() => onTab(one.id)}>
              {one.name}
            </Key>
          ))}
        </div>
        <StopKey />
      </nav>
    </div>
  );
}
