/** What every page carries: the walking tick, what is not sent, the notice, and the row of keys with STOP. */
import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { notSent } from "../outbox";
import { ago } from "../show";
import { play } from "../sound";
import { beats, ground, halted, linked, notice, now, photosWaiting, supervisor, visitor } from "../state";
import { t } from "../words";
import { Key, StopKey } from "./keys";
import { Settings } from "./settings";
import { Struck } from "./struck";
import { TakenPhoto } from "./taken_photo";

const NOTCHES = 12;

/** Walks one notch with each heartbeat: if it does not walk, nothing on the screen is alive. */
export function Tick() {
  const at = beats.value % NOTCHES;
  return (
    <div
      class={`tick ${linked.value ? "" : "dead"}`}
      role="img"
      aria-label={linked.value ? t().linkUp : t().linkLost}
    >
      <i style={{ left: `${(at * 100) / NOTCHES}%`, width: `${100 / NOTCHES}%` }} />
    </div>
  );
}

/** Lines that stand above a page while something is wrong. */
export function Warnings() {
  const struck = (ground.value ?? supervisor.value)?.cuts.struck ?? visitor.value?.struck;
  useAlarm(struck?.at(-1)?.since);
  return (
    <div class="warnings" aria-live="assertive">
      {notSent.value.length > 0 && <p class="warning">{t().notSentCount(notSent.value.length)}</p>}
      <AllStop />
      <Struck cards={struck} />
      {!linked.value && <p class="warning">{t().linkLostDo}</p>}
      {halted.value && <p class="warning">{t().halted}</p>}
      {photosWaiting.value > 0 && <p class="waits">{t().photosWait(photosWaiting.value)}</p>}
      {(ground.value ?? visitor.value)?.closed && <p class="warning">{t().dayIsClosed}</p>}
    </div>
  );
}

/** STOP AGAIN sounds after this long, and this often, ms. */
const AGAIN = 4_000;
const TIMES = 4;

/** Heard and felt when it comes, and a few times more. */
function useAlarm(since: number | undefined) {
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
  }, [since]);
}

/** An ALL STOP that stands: who and why, on every page. */
function AllStop() {
  const stopped = (ground.value ?? supervisor.value)?.machines.find((card) => card.stop?.all);
  const stop = stopped?.stop ?? visitor.value?.stop;
  useAlarm(stop?.since);
  if (!stop) return null;
  return (
    <div class="all-stop" role="alert">
      <p>
        <strong>{t().stop}</strong> {t().allMachines} <small>{ago(now.value - stop.since)}</small>
      </p>
      <p>
        {t().stopBy(stop.by)}
        {stop.why && `: ${stop.why}`}
      </p>
      <p>{t().lookAlways}</p>
    </div>
  );
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

/** A page of the ground person, the supervisor or a visitor. */
export function Frame({ title, tabs, tab, onTab, children, kind = "", lead }: FrameProps) {
  const row = useRef<HTMLDivElement>(null);
  // Where the names go in one row that is pushed along, the open page's name is in sight.
  useEffect(() => {
    const open = row.current?.querySelector("[aria-pressed=true]");
    open?.scrollIntoView?.({ block: "nearest", inline: "center" });
  }, [tab]);
  return (
    <div class={`frame ${kind}`}>
      <header>
        <Tick />
        <div class="top">
          <h1 class={lead ? "unseen" : ""}>{title}</h1>
          {lead}
          <Settings />
        </div>
      </header>
      <Warnings />
      <main class="body">{children}</main>
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
