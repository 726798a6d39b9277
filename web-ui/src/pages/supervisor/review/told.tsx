/** WHO TOLD: a machine, a place or a mark, two moments, days apart if need be; the answer, its gaps, and the sheet that prints. */
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { feetTyped } from "../../../parts/feet_typed";
import { Key } from "../../../parts/keys";
import { said } from "../../../said";
import { dateOf, feet, timeOfDay, unbroken } from "../../../show";
import { language } from "../../../state";
import type { Moment, Review, SheetMark, ToldDays, ToldPage } from "../../../wire";
import type { Asked } from "../address";
import { Figures } from "../figures";
import { type OfficeWords, t } from "../words";
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

/** What is filled in, as it stands on the page. Nothing is asked that does not stand there. */
interface Question {
  machine: string;
  mark: string;
  east: string;
  north: string;
  fromDay: string;
  from: string;
  toDay: string;
  to: string;
}

/** What the hub is asked, or what is still owed before it can be. */
export function askedOf(question: Question, marks: readonly SheetMark[]): WhoTold | Owed {
  const place = marks.find((one) => one.id === question.mark)?.place;
  const x = question.mark ? place?.x : feetTyped(question.east);
  const y = question.mark ? place?.y : feetTyped(question.north);
  const first = question.fromDay ? momentTyped(question.from, midnight(question.fromDay)) : null;
  const last = question.toDay ? momentTyped(question.to, midnight(question.toDay)) : null;
  if (!question.machine) return "machine";
  if (x == null || y == null) return "place";
  if (first === null) return "from";
  if (last === null) return "to";
  if (last < first) return "order";
  return { machine: question.machine, x, y, from: first, to: last + 59_999 };
}

type Owed = keyof OfficeWords["review"]["owed"];

const NAMES = ["machine", "mark", "east", "north", "fromDay", "from", "toDay", "to"] as const;

/** What the address says; the times of the whole day where it says none. Nothing else is filled in for the person. */
function questionIn(asked: Asked, review: Review): Question {
  const whole: Partial<Question> = {
    fromDay: dateOf(review.from),
    from: timeOfDay(review.from),
    toDay: dateOf(review.to),
    to: timeOfDay(review.to),
  };
  return Object.fromEntries(NAMES.map((name) => [name, asked[name] ?? whole[name] ?? ""])) as Record<
    (typeof NAMES)[number],
    string
  >;
}

interface ToldProps {
  review: Review;
  /** What the address says of the question. */
  asked: Asked;
  onAsk: (part: Asked) => void;
}

export function Told({ review, asked: address, onAsk }: ToldProps) {
  const words = t().review;
  const [end, setEnd] = useState<Moment | null>(null);
  const question = useMemo(
    () => questionIn(address, review),
    [review, ...NAMES.map((name) => address[name])],
  );
  const [answer, setAnswer] = useState<Answered | null>(null);
  const [trouble, setTrouble] = useState("");
  // An answer stands under its own question alone: whatever is changed takes it away, and one on its way is let go.
  const newest = useRef(question);
  newest.current = question;
  useEffect(() => {
    setAnswer(null);
    setTrouble("");
  }, [question]);
  useEffect(() => {
    void moment(review.day, review.to).then((got) => {
      if (got.ok) setEnd(got.value);
      else setTrouble(got.text);
    });
  }, [review.day]);
  const machines = end?.ground?.machines.map((one) => one.id) ?? [];
  const marks = end?.sheet?.marks ?? [];
  const asked = askedOf(question, marks);
  const owed = typeof asked === "string" ? words.owed[asked] : null;
  const set = (part: Partial<Question>) => onAsk({ ...part });
  const ask = async () => {
    if (typeof asked === "string") return;
    const got = await whoTold(asked);
    if (newest.current !== question) return;
    setTrouble(got.ok ? "" : got.text);
    setAnswer(got.ok ? { told: got.value, asked, said: inWords(question) } : null);
  };
  return (
    <>
      <form
        class="form told no-print"
        onSubmit={(event) => {
          event.preventDefault();
          void ask();
        }}
      >
        <label class="field">
          <span>{t().machine}</span>
          <select value={question.machine} onChange={(event) => set({ machine: event.currentTarget.value })}>
            <option value="">{words.choose}</option>
            {machines.map((one) => (
              <option key={one}>{one}</option>
            ))}
          </select>
        </label>
        <label class="field">
          <span>{words.atMark}</span>
          <select value={question.mark} onChange={(event) => set({ mark: event.currentTarget.value })}>
            <option value="">{words.atPlace}</option>
            {marks.map((one) => (
              <option key={one.id}>{one.id}</option>
            ))}
          </select>
        </label>
        {question.mark === "" && (
          <Text title={`${t().east}, ft`} value={question.east} onValue={(east) => set({ east })} />
        )}
        {question.mark === "" && (
          <Text title={`${t().north}, ft`} value={question.north} onValue={(north) => set({ north })} />
        )}
        <OnDay title={words.fromDay} value={question.fromDay} onValue={(fromDay) => set({ fromDay })} />
        <Text title={words.from} value={question.from} onValue={(from) => set({ from })} />
        <OnDay title={words.toDay} value={question.toDay} onValue={(toDay) => set({ toDay })} />
        <Text title={words.to} value={question.to} onValue={(to) => set({ to })} />
        <Key kind="send" submit disabled={owed !== null} why={owed} onPress={() => undefined}>
          {words.ask}
        </Key>
      </form>
      {trouble && <p class="warning">{trouble}</p>}
      {answer && <Answers {...answer} />}
    </>
  );
}

/** The question as a person reads it over the answer, on the page and on paper. */
function inWords({ machine, mark, east, north, fromDay, from, toDay, to }: Question): string {
  const words = t().review;
  const place = mark ? words.nearMark(unbroken(mark)) : words.nearPlace(east.trim(), north.trim());
  const last = toDay === fromDay ? to.trim() : `${unbroken(toDay)} ${to.trim()}`;
  return words.asked(machine, place, `${unbroken(fromDay)} ${from.trim()}`, last);
}

interface Answered {
  told: ToldDays;
  asked: WhoTold;
  /** What was asked, in words. */
  said: string;
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

function Answers({ told, asked, said }: Answered) {
  const words = t().review;
  return (
    <section class="told-answer">
      <h2>{said}</h2>
      {told.days.length === 0 && <p class="told-line">{words.noDayThen}</p>}
      {told.days.map((page) => (
        <Answer key={page.day} page={page} several={told.days.length > 1} />
      ))}
      <a
        class="key wide no-print"
        href={whoToldSheet(asked, language.value)}
        target="_blank"
        rel="noreferrer"
      >
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
