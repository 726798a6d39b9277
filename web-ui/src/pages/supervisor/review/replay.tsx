/** REPLAY: what every screen showed at any moment, painted by the very pages, from the log alone. Nothing in it can be pressed. */
import { useEffect, useRef, useState } from "preact/hooks";
import { Key } from "../../../parts/keys";
import type { Shown } from "../../../replayed";
import { said } from "../../../said";
import { timeOfDay } from "../../../show";
import { language, me } from "../../../state";
import type { Me, Moment, Review } from "../../../wire";
import { Lanes } from "../charts/lanes";
import { t } from "../words";
import { moment } from "./ask";

const SPEEDS: readonly number[] = [1, 5, 20, 60, 120];
/** The slider's finest step, ms: a call may be painted and pressed within a second. */
const GRAIN = 250;
/** Between two steps while it plays, ms. */
const STEP = 500;

export function Replay({ review, from }: { review: Review; from: number }) {
  const words = t().review;
  // The last moment is one that the slider can stand on.
  const end = review.from + Math.ceil((review.to - review.from) / GRAIN) * GRAIN;
  const [at, setAt] = useState(from);
  const [speed, setSpeed] = useState(60);
  const [plays, setPlays] = useState(false);
  const [got, trouble] = useMoment(review.day, at);
  useEffect(() => setAt(from), [from]);
  useEffect(() => {
    if (!plays) return undefined;
    const timer = setInterval(() => {
      setAt((now) => Math.min(end, now + STEP * speed));
    }, STEP);
    return () => clearInterval(timer);
  }, [plays, speed, end]);
  useEffect(() => {
    if (at >= end) setPlays(false);
  }, [at]);
  const moments = review.exceptions.map((one) => one.said.at);
  const next = moments.find((one) => one > at);
  const before = moments.filter((one) => one < at).pop();
  return (
    <div class="replay">
      <p class="replay-time">
        <strong>{timeOfDay(at, true)}</strong> {got && <Said moment={got} />}
      </p>
      <input
        type="range"
        aria-label={words.slider}
        min={review.from}
        max={end}
        step={GRAIN}
        value={at}
        onInput={(event) => setAt(Number(event.currentTarget.value))}
      />
      <div class="row wrap">
        <Key disabled={before === undefined} onPress={() => before !== undefined && setAt(before)}>
          {words.before}
        </Key>
        <Key onPress={() => setPlays(!plays)}>{plays ? words.pause : words.play}</Key>
        <Key disabled={next === undefined} onPress={() => next !== undefined && setAt(next)}>
          {words.next}
        </Key>
        <label class="field">
          <span>{words.speed}</span>
          <select value={speed} onChange={(event) => setSpeed(Number(event.currentTarget.value))}>
            {SPEEDS.map((one) => (
              <option key={one} value={one}>
                {one}×
              </option>
            ))}
          </select>
        </label>
      </div>
      {trouble && <p class="warning">{trouble}</p>}
      {got && <Screens moment={got} at={at} day={review.day} />}
      <Lanes review={review} at={at} onReplay={setAt} />
      <p>{words.replayNote}</p>
    </div>
  );
}

/** The moment that was asked for last; while one is on its way no second is asked for, so that nothing queues. */
function useMoment(day: string, at: number): [Moment | null, string] {
  const [got, setGot] = useState<Moment | null>(null);
  const [trouble, setTrouble] = useState("");
  const wanted = useRef(at);
  const busy = useRef(false);
  useEffect(() => {
    wanted.current = at;
    if (busy.current) return;
    busy.current = true;
    const look = async () => {
      for (;;) {
        const now = wanted.current;
        const answer = await moment(day, now);
        setTrouble(answer.ok ? "" : answer.text);
        if (answer.ok) setGot(answer.value);
        if (wanted.current === now) break;
      }
      busy.current = false;
    };
    void look();
  }, [day, at]);
  return [got, trouble];
}

function Said({ moment }: { moment: Moment }) {
  const last = moment.said;
  return (
    <span>
      {last.seq} · {last.by}: {said(last)}
    </span>
  );
}

function Screens({ moment, at, day }: { moment: Moment; at: number; day: string }) {
  const words = t().review;
  const phones = moment.phones;
  const grounds = phones.filter((phone) => phone.roles.includes("ground"));
  return (
    <div class="replay-screens">
      {Object.entries(moment.operators).map(([machine, operator]) => {
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
      {grounds.slice(0, 1).map((phone) => (
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
  return <iframe ref={frame} src={`/replayed/${kind}`} title={t().review.screenOf(kind)} tabIndex={-1} />;
}
