/** REVIEW: a day afterwards. What was out of the ordinary first, then what is open, replay, pictures, who told, paper. The address holds where one is. */
import { useEffect, useRef, useState } from "preact/hooks";
import { Choice } from "../../../parts/choice";
import type { Review } from "../../../wire";
import { type Asked, goTo, place, refine } from "../address";
import { type Shortcut, Shortcuts } from "../shortcuts";
import { t } from "../words";
import { days, review as fetchReview } from "./ask";
import { DayPart } from "./day";
import { CHOICE, SEARCH } from "./moment_list";
import { Papers } from "./papers";
import { Pictures } from "./pictures";
import { QUARTER, Replay, type Steers } from "./replay";
import { Tables } from "./tables";
import { Told } from "./told";

type Part = "day" | "replay" | "pictures" | "tables" | "told" | "paper";
const PARTS: readonly Part[] = ["day", "replay", "pictures", "tables", "told", "paper"];
const PAGE = "review";

export function ReviewPage() {
  const words = t().review;
  const { asked } = place.value;
  const part = PARTS.find((one) => one === asked.part) ?? "day";
  const day = asked.day ?? "";
  const [all, got, trouble] = useReview(day);
  const steers = useRef<Steers | null>(null);
  const [goesTo, setGoesTo] = useState<string | null>(null);
  // A field that the keyboard was sent to may stand on a part that is only being opened.
  useEffect(() => {
    const field = goesTo && document.getElementById(goesTo);
    if (!field) return;
    field.focus();
    setGoesTo(null);
  });
  const step = (to: Asked) => goTo(PAGE, { ...asked, ...to });
  const replayAt = (moment: number) => step({ part: "replay", at: String(moment), entry: "" });
  const replayEntry = (seq: number) => step({ part: "replay", entry: String(seq), at: "" });
  const steer = (how: (by: Steers) => void) =>
    part === "replay" && steers.current ? how(steers.current) : step({ part: "replay", at: "", entry: "" });
  const field = (id: string) => {
    if (part !== "replay") step({ part: "replay" });
    setGoesTo(id);
  };
  return (
    <div class={`review of-${part}`}>
      <div class="review-head no-print">
        {all.length > 1 && (
          <label class="field">
            <span>{words.day}</span>
            <select
              value={got?.day ?? ""}
              onChange={(event) =>
                step({ day: event.currentTarget.value, at: "", entry: "", of: "", words: "" })
              }
            >
              {all.map((name) => (
                <option key={name}>{name}</option>
              ))}
            </select>
          </label>
        )}
        <Choice
          title={words.part}
          options={PARTS.map((id) => ({ id, name: words.parts[id] }))}
          chosen={part}
          onChoose={(to) => step({ part: to })}
        />
        <Shortcuts list={keysOf(steer, field)} />
      </div>
      {trouble && <p class="warning">{trouble}</p>}
      {!got ? (
        !trouble && <p class="empty">{t().loading}</p>
      ) : part === "day" ? (
        <DayPart review={got} onEntry={replayEntry} onReplay={replayAt} />
      ) : part === "replay" ? (
        <Replay
          key={got.day}
          review={got}
          here={{ at: numberIn(asked.at), entry: numberIn(asked.entry) }}
          of={asked.of ?? ""}
          words={asked.words ?? ""}
          onAsk={(to, typed) => (typed ? refine : goTo)(PAGE, { ...place.value.asked, ...to })}
          steers={steers}
        />
      ) : part === "pictures" ? (
        <Pictures review={got} />
      ) : part === "tables" ? (
        <Tables review={got} onEntry={replayEntry} />
      ) : part === "told" ? (
        <Told
          key={got.day}
          review={got}
          asked={asked}
          onAsk={(to) => refine(PAGE, { ...place.value.asked, ...to })}
        />
      ) : (
        <Papers review={got} />
      )}
    </div>
  );
}

/** A number of the address; what is none is as if it were not there. */
function numberIn(text: string | undefined): number | null {
  return text && Number.isFinite(Number(text)) ? Number(text) : null;
}

/** The days that there are, the newest first, and the one that is looked at; an answer for another day is let go. */
function useReview(day: string): [string[], Review | null, string] {
  const [all, setAll] = useState<string[]>([]);
  const [got, setGot] = useState<Review | null>(null);
  const [trouble, setTrouble] = useState("");
  useEffect(() => {
    void days().then((answer) => answer.ok && setAll([...answer.value].reverse()));
  }, []);
  useEffect(() => {
    let over = false;
    setGot(null);
    void fetchReview(day).then((answer) => {
      if (over) return;
      setTrouble(answer.ok ? "" : answer.text);
      if (answer.ok) setGot(answer.value);
    });
    return () => {
      over = true;
    };
  }, [day]);
  return [all, got, trouble];
}

function keysOf(steer: (how: (by: Steers) => void) => void, field: (id: string) => void): Shortcut[] {
  const words = t().keys;
  return [
    { key: "/", name: words.search, act: () => field(SEARCH) },
    { key: "m", name: words.mark, act: () => field(CHOICE) },
    { key: "p", name: words.before, act: () => steer((by) => by.before()) },
    { key: "n", name: words.next, act: () => steer((by) => by.next()) },
    { key: "l", name: words.play, act: () => steer((by) => by.play()) },
    { key: "ArrowLeft", name: words.earlier, act: () => steer((by) => by.by(-QUARTER)) },
    { key: "ArrowRight", name: words.later, act: () => steer((by) => by.by(QUARTER)) },
  ];
}
