/** REPLAY: what every screen showed at any moment, from the log alone. The lanes are what it is moved by, the phones and the moments stand under them. */
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { Key } from "../../../parts/keys";
import { said } from "../../../said";
import { timeOfDay } from "../../../show";
import type { Moment, Review } from "../../../wire";
import { endOf, GRAIN, Lanes, tells } from "../charts/lanes";
import { t } from "../words";
import { moment, momentOf } from "./ask";
import { MomentList } from "./moment_list";
import { type AMoment, around, beginningOf, momentsOf, withWords } from "./moments";
import { Screens } from "./screens";

const SPEEDS: readonly number[] = [1, 5, 20, 60, 120];
/** Between two steps while it plays, ms. */
const STEP = 500;
/** How high the lanes are: all of them in sight, and the phones too. */
const LANES_SHARE = 0.22;
const LANE = { least: 15, most: 26 };

/** What the keyboard moves it by. */
export interface Steers {
  next: () => void;
  before: () => void;
  play: () => void;
  by: (ms: number) => void;
}

/** Where one is: at an entry, or at a time. */
export interface Here {
  entry: number | null;
  at: number | null;
}

interface ReplayProps {
  review: Review;
  /** What the address says; nothing of it where it says nothing. */
  here: Here;
  of: string;
  words: string;
  /** Into the address; `typed` is no step of its own. */
  onAsk: (part: { at?: string; entry?: string; of?: string; words?: string }, typed: boolean) => void;
  steers: { current: Steers | null };
}

export function Replay({ review, here: asked, of, words, onAsk, steers }: ReplayProps) {
  const say = t().review;
  const end = endOf(review);
  const [plays, setPlays] = useState(false);
  const [speed, setSpeed] = useState(60);
  // Without a word from the address it begins at the first thing that was out of the ordinary.
  const picked = asked.entry ?? (asked.at === null ? (beginningOf(review)?.seq ?? null) : null);
  const [at, setAt, lost] = useAt(review, asked.at, picked);
  const [got, trouble] = useMoment(review.day, at);
  const all = useMemo(() => momentsOf(review, of), [review, of]);
  const moments = useMemo(() => withWords(all, words), [all, words]);
  const { before, next, here } = around(moments, at, plays ? null : picked);
  const move = (to: number) => {
    const moment = Math.min(end, Math.max(review.from, to));
    setAt(moment);
    if (!plays) onAsk({ at: String(moment), entry: "" }, true);
  };
  const pick = (one: AMoment | undefined) => {
    if (!one) return;
    setPlays(false);
    onAsk({ entry: String(one.seq), at: "" }, true);
  };
  useEffect(() => {
    if (!plays) return undefined;
    const timer = setInterval(() => setAt((now) => Math.min(end, now + STEP * speed)), STEP);
    return () => clearInterval(timer);
  }, [plays, speed, end]);
  const play = (on: boolean) => {
    setPlays(on);
    onAsk({ at: String(at), entry: "" }, true);
  };
  useEffect(() => {
    if (plays && at >= end) play(false);
  }, [at]);
  steers.current = {
    next: () => pick(next),
    before: () => pick(before),
    play: () => play(!plays),
    by: (ms) => move(at + ms),
  };
  const [whole, setWhole] = useState(false);
  const lanes = useMemo(() => (whole ? review.lanes : review.lanes.filter(tells)), [review, whole]);
  const tall = Math.floor((innerHeight * LANES_SHARE) / (lanes.length + 1));
  return (
    <div class="replay">
      <Lanes
        review={review}
        lanes={lanes}
        at={at}
        tall={Math.max(LANE.least, Math.min(LANE.most, tall))}
        onMove={move}
      />
      <div class="replay-time">
        <p>
          <strong>{timeOfDay(at, true)}</strong> {got && <Said moment={got} />}
        </p>
        {review.lanes.some((lane) => !tells(lane)) && (
          <Key kind="small" onPress={() => setWhole(!whole)}>
            {whole ? say.lanesFew : say.lanesAll(review.lanes.length)}
          </Key>
        )}
      </div>
      {(trouble || lost) && <p class="warning">{trouble || lost}</p>}
      <div class="replay-walk">
        <Transport
          before={before && (() => pick(before))}
          next={next && (() => pick(next))}
          plays={plays}
          onPlay={play}
          speed={speed}
          onSpeed={setSpeed}
        />
        <MomentList
          review={review}
          moments={moments}
          of={of}
          words={words}
          here={here}
          onOf={(to) => onAsk({ of: to }, false)}
          onWords={(to) => onAsk({ words: to }, true)}
          onPick={pick}
        />
        <p>
          <small>{say.replayNote}</small>
        </p>
      </div>
      {got ? <Screens moment={got} at={at} day={review.day} /> : <p>{t().loading}</p>}
    </div>
  );
}

export const QUARTER = GRAIN;

interface TransportProps {
  /** Nothing where there is no further moment. */
  before: (() => void) | undefined;
  next: (() => void) | undefined;
  plays: boolean;
  onPlay: (on: boolean) => void;
  speed: number;
  onSpeed: (speed: number) => void;
}

function Transport({ before, next, plays, onPlay, speed, onSpeed }: TransportProps) {
  const say = t().review;
  return (
    <div class="replay-bar no-print">
      <Key kind="small" disabled={!before} onPress={() => before?.()}>
        {say.before}
      </Key>
      <Key kind="small" onPress={() => onPlay(!plays)}>
        {plays ? say.pause : say.play}
      </Key>
      <Key kind="small" disabled={!next} onPress={() => next?.()}>
        {say.next}
      </Key>
      <label>
        <span class="unseen">{say.speed}</span>
        <select value={speed} onChange={(event) => onSpeed(Number(event.currentTarget.value))}>
          {SPEEDS.map((one) => (
            <option key={one} value={one}>
              {one}×
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}

/** The time that is shown: the one of the address, or the one at which the hub took the entry that was picked. */
function useAt(review: Review, asked: number | null, picked: number | null) {
  const [at, setAt] = useState(asked ?? review.from);
  const [lost, setLost] = useState("");
  useEffect(() => {
    setLost("");
    if (picked === null) {
      if (asked !== null) setAt(asked);
      return undefined;
    }
    let over = false;
    void momentOf(review.day, picked).then((got) => {
      if (over) return;
      if (got.ok) setAt(got.value.at);
      else setLost(got.text);
    });
    return () => {
      over = true;
    };
  }, [review, asked, picked]);
  return [at, setAt, lost] as const;
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
