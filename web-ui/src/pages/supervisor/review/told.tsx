/** WHO TOLD: a machine, a place or a mark, two moments, days apart if need be; the answer, its gaps, and the sheet that prints. */
import { useEffect, useState } from "preact/hooks";
import { feetTyped } from "../../../parts/feet_typed";
import { Key } from "../../../parts/keys";
import { said } from "../../../said";
import { dateOf, feet, timeOfDay, unbroken } from "../../../show";
import { language } from "../../../state";
import type { Moment, Review, ToldDays, ToldPage } from "../../../wire";
import { Figures } from "../figures";
import { t } from "../words";
import { moment, type WhoTold, whoTold, whoToldSheet } from "./ask";

export const DAY = 86_400_000;

/** A time of day on the review's day: `10:05`; null when it is none. */
export function momentTyped(text: string, from: number): number | null {
  const match = /^(\d{1,2}):(\d{2})$/.exec(text.trim());
  if (!match || Number(match[1]) > 23 || Number(match[2]) > 59) return null;
  const at = new Date(from);
  at.setHours(Number(match[1]), Number(match[2]), 0, 0);
  // A day that goes on past midnight has its small hours behind its evening.
  return at.getTime() < from - 60_000 ? at.getTime() + DAY : at.getTime();
}

/** The beginning of a day that is written as in a field for dates. */
function midnight(date: string): number {
  return new Date(`${date}T00:00`).getTime();
}

export function Told({ review }: { review: Review }) {
  const words = t().review;
  const [end, setEnd] = useState<Moment | null>(null);
  const [machine, setMachine] = useState("");
  const [mark, setMark] = useState("");
  const [east, setEast] = useState("");
  const [north, setNorth] = useState("");
  const [fromDay, setFromDay] = useState(dateOf(review.from));
  const [toDay, setToDay] = useState(dateOf(review.to));
  const [from, setFrom] = useState(timeOfDay(review.from));
  const [to, setTo] = useState(timeOfDay(review.to));
  const [told, setTold] = useState<ToldDays | null>(null);
  const [trouble, setTrouble] = useState("");
  useEffect(() => {
    void moment(review.day, review.to).then((answer) => answer.ok && setEnd(answer.value));
  }, [review.day]);
  const machines = end?.ground?.machines.map((one) => one.id) ?? [];
  const marks = end?.sheet?.marks ?? [];
  const place = marks.find((one) => one.id === mark)?.place;
  const x = place?.x ?? feetTyped(east);
  const y = place?.y ?? feetTyped(north);
  const first = fromDay ? momentTyped(from, midnight(fromDay)) : null;
  const last = toDay ? momentTyped(to, midnight(toDay)) : null;
  const asked: WhoTold | null =
    x === null || y === null || first === null || last === null || !(machine || machines[0])
      ? null
      : { machine: machine || (machines[0] ?? ""), x, y, from: first, to: last + 59_999 };
  const ask = async () => {
    if (!asked) return;
    const answer = await whoTold(asked);
    setTrouble(answer.ok ? "" : answer.text);
    setTold(answer.ok ? answer.value : null);
  };
  return (
    <>
      <form
        class="form no-print"
        onSubmit={(event) => {
          event.preventDefault();
          void ask();
        }}
      >
        <label class="field">
          <span>{t().machine}</span>
          <select value={machine} onChange={(event) => setMachine(event.currentTarget.value)}>
            {machines.map((one) => (
              <option key={one}>{one}</option>
            ))}
          </select>
        </label>
        <label class="field">
          <span>{words.atMark}</span>
          <select value={mark} onChange={(event) => setMark(event.currentTarget.value)}>
            <option value="">{words.atPlace}</option>
            {marks.map((one) => (
              <option key={one.id}>{one.id}</option>
            ))}
          </select>
        </label>
        {mark === "" && <Text title={`${t().east}, ft`} value={east} onValue={setEast} />}
        {mark === "" && <Text title={`${t().north}, ft`} value={north} onValue={setNorth} />}
        <OnDay title={words.fromDay} value={fromDay} onValue={setFromDay} />
        <Text title={words.from} value={from} onValue={setFrom} />
        <OnDay title={words.toDay} value={toDay} onValue={setToDay} />
        <Text title={words.to} value={to} onValue={setTo} />
        <Key kind="send" submit disabled={!asked} onPress={() => undefined}>
          {words.ask}
        </Key>
      </form>
      {trouble && <p class="warning">{trouble}</p>}
      {told && asked && <Answers told={told} sheet={whoToldSheet(asked, language.value)} />}
    </>
  );
}

interface TextProps {
  title: string;
  value: string;
  onValue: (value: string) => void;
}

function Text({ title, value, onValue }: TextProps) {
  return (
    <label class="field">
      <span>{title}</span>
      <input value={value} onInput={(event) => onValue(event.currentTarget.value)} />
    </label>
  );
}

function OnDay({ title, value, onValue }: TextProps) {
  return (
    <label class="field">
      <span>{title}</span>
      <input type="date" value={value} onInput={(event) => onValue(event.currentTarget.value)} />
    </label>
  );
}

function Answers({ told, sheet }: { told: ToldDays; sheet: string }) {
  const words = t().review;
  return (
    <section>
      {told.days.length === 0 && <p class="told-line">{words.noDayThen}</p>}
      {told.days.map((page) => (
        <Answer key={page.day} page={page} several={told.days.length > 1} />
      ))}
      <a class="key wide" href={sheet} target="_blank" rel="noreferrer">
        {words.wholeSheet}
      </a>
    </section>
  );
}

function Answer({ page, several }: { page: ToldPage; several: boolean }) {
  const words = t().review;
  const there = page.marks.map((one) => `${one.mark} (${feet(one.away)} ft)`);
  return (
    <>
      {several && <h3>{unbroken(page.day)}</h3>}
      <p class="told-line">{said(page)}</p>
      <h3>{words.gaps}</h3>
      {page.gaps.length === 0 && <p>{words.noGaps}</p>}
      <ul class="lines">
        {page.gaps.map((gap) => (
          <li key={`${gap.english}${gap.from ?? ""}`}>
            {gap.from != null && gap.to != null && `${timeOfDay(gap.from)}–${timeOfDay(gap.to)}: `}
            {said(gap)}
          </li>
        ))}
      </ul>
      <p>{page.marks.length > 0 ? words.marksThere(there.join(", ")) : words.noMarksThere}</p>
      <Figures photos={page.photos} />
    </>
  );
}
