/** What each phone showed at a moment, painted by the very pages, as large as the room lets them be. Nothing in it can be pressed. */
import { useEffect, useLayoutEffect, useRef, useState } from "preact/hooks";
import type { Shown } from "../../../replayed";
import { language, me } from "../../../state";
import type { Me, Moment } from "../../../wire";
import { t } from "../words";

/** A phone's own size with its rim, px; smaller than so much of it, nothing on it could be read. */
const PHONE = { wide: 366, high: 746 };
const LEAST = 0.3;
/** Above a phone: whose it is. */
const CAPTION = 38;
const GAP = 12;

export function Screens({ moment, at, day }: { moment: Moment; at: number; day: string }) {
  const words = t().review;
  const phones = moment.phones;
  const operators = Object.entries(moment.operators);
  const grounds = phones.filter((phone) => phone.roles.includes("ground")).slice(0, 1);
  const room = useRef<HTMLDivElement>(null);
  const scale = useScale(room, operators.length + grounds.length);
  return (
    <div class="replay-screens" ref={room} style={{ "--scale": String(scale) }}>
      {operators.map(([machine, operator]) => {
        const phone = phones.find((one) => one.device === operator.device);
        const screen = moment.ground?.machines.find((one) => one.id === machine)?.screen.kind ?? "none";
        const who = asMe(phone, day, moment.supervisor?.site ?? "");
        return (
          <figure key={machine}>
            <figcaption>
              {machine} {phone?.person} · {words.screens[screen]}
            </figcaption>
            <Painted
              kind="operator"
              shown={{
                me: { ...who, roles: ["operator"], machine },
                at,
                alive: screen === "showing",
                operator,
                ground: null,
                sheet: moment.sheet ?? null,
              }}
            />
          </figure>
        );
      })}
      {grounds.map((phone) => (
        <figure key={phone.device}>
          <figcaption>
            {words.groundScreen} {phone.person}
          </figcaption>
          <Painted
            kind="ground"
            shown={{
              me: { ...asMe(phone, day, moment.supervisor?.site ?? ""), roles: ["ground"] },
              at,
              alive: true,
              operator: null,
              ground: moment.ground ?? null,
              sheet: moment.sheet ?? null,
            }}
          />
        </figure>
      ))}
    </div>
  );
}

/** How large phones may be for all of them to stand in their room; below a desk they keep their own size and are pushed along. */
function useScale(room: { current: HTMLElement | null }, many: number): number {
  const [scale, setScale] = useState(1);
  useLayoutEffect(() => {
    const box = room.current;
    if (!box || many === 0) return;
    const fit = () => {
      const desk = matchMedia("(min-width: 1024px)").matches;
      const high = (box.clientHeight - CAPTION) / PHONE.high;
      const wide = (box.clientWidth - GAP * (many - 1)) / many / PHONE.wide;
      setScale(desk ? Math.max(LEAST, Math.min(1, high, wide)) : 1);
    };
    const seen = new ResizeObserver(fit);
    seen.observe(box);
    return () => seen.disconnect();
  }, [many]);
  return scale;
}

/** The phone as its own page knew itself: its language and unit are those of that moment. */
function asMe(phone: Moment["phones"][number] | undefined, day: string, site: string): Me {
  return {
    device: phone?.device ?? "",
    person: phone?.person ?? "",
    roles: [],
    asks_who: false,
    machine: phone?.machine ?? null,
    language: phone?.language ?? language.value,
    unit: phone?.unit ?? "tenths",
    site,
    day,
    build: me.value?.build ?? "",
  };
}

/** One phone: the page itself in a frame of a phone's size, told what to show. */
function Painted({ kind, shown }: { kind: string; shown: Shown }) {
  const frame = useRef<HTMLIFrameElement>(null);
  const [ready, setReady] = useState(false);
  useEffect(() => {
    const heard = (event: MessageEvent) => {
      if (event.source === frame.current?.contentWindow && event.data === "ready") setReady(true);
    };
    addEventListener("message", heard);
    return () => removeEventListener("message", heard);
  }, []);
  useEffect(() => {
    if (ready) frame.current?.contentWindow?.postMessage(shown, location.origin);
  }, [ready, shown]);
  return (
    <div class="replay-phone">
      <iframe ref={frame} src={`/replayed/${kind}`} title={t().review.screenOf(kind)} tabIndex={-1} />
    </div>
  );
}
