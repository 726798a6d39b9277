/** LOG: newest first and live, with a search and filters; a press shows the entry as it is kept. */
import { useEffect, useState } from "preact/hooks";
import { entry, log, tryRestore } from "../../hub";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { said } from "../../said";
import { timeOfDay } from "../../show";
import { head, now } from "../../state";
import type { LogLine, Verdict } from "../../wire";
import { days } from "./review/ask";
import { DAY, momentTyped } from "./review/told";
import { t } from "./words";

const PAGE = 60;
const NAMES = ["words", "mark", "person", "machine", "kind", "from", "to"] as const;
const VERDICTS: readonly Verdict[] = ["high", "on", "low", "too_close_high", "too_close_low"];
type Filter = Record<(typeof NAMES)[number] | "day" | "verdict", string>;
const NO_FILTER: Filter = {
  words: "",
  mark: "",
  person: "",
  machine: "",
  kind: "",
  from: "",
  to: "",
  day: "",
  verdict: "",
};

export function LogPage() {
  const words = t();
  const [filter, setFilter] = useState<Filter>(NO_FILTER);
  const [lines, setLines] = useState<LogLine[]>([]);
  const [stopped, setStopped] = useState<number | null>(null);
  const [trouble, setTrouble] = useState("");
  const [open, setOpen] = useState<number | null>(null);
  const newest = head.value;
  const load = async (before: number, keep: LogLine[]) => {
    const { from, to, verdict: picked, ...names } = filter;
    const verdict = VERDICTS.find((one) => one === picked);
    const got = await log({ ...names, verdict, ...between(from, to, filter.day), before, limit: PAGE });
    setTrouble(got.ok ? "" : got.text);
    if (!got.ok) return;
    setLines(merged(keep, got.value.lines));
    setStopped(got.value.stopped);
  };
  useEffect(() => void load(newest + 1, lines), [newest]);
  useEffect(() => void load(newest + 1, []), [JSON.stringify(filter)]);
  const oldest = stopped ?? lines[lines.length - 1]?.seq ?? 0;
  return (
    <div class="log">
      <Filters filter={filter} onFilter={setFilter} />
      {trouble && <p class="warning">{trouble}</p>}
      {lines.length === 0 && !trouble && <p>{stopped ? words.searchStopped(stopped) : words.emptyLog}</p>}
      <ul class="lines log-lines">
        {lines.map((line) => (
          <li key={line.seq}>
            <button type="button" class="line" onClick={() => setOpen(line.seq)}>
              <span class="seq">{line.seq}</span> <span>{timeOfDay(line.made_at, true)}</span>{" "}
              <strong>{line.by}</strong> <span>{said(line)}</span>
            </button>
          </li>
        ))}
      </ul>
      <div class="row">
        {oldest > 1 && <Key onPress={() => void load(oldest, lines)}>{words.older}</Key>}
        <a class="key" href="/api/log.csv" download>
          {words.exportTable}
        </a>
        <a class="key" href="/api/export" download>
          {words.exportDay}
        </a>
        <TryRestore />
      </div>
      {open !== null && <EntryPanel seq={open} onClose={() => setOpen(null)} />}
    </div>
  );
}

/** Whether everything would come back, tried in a scratch folder of the laptop. */
function TryRestore() {
  const words = t().restore;
  const [said, setSaid] = useState("");
  const press = async () => {
    setSaid(words.tries);
    const got = await tryRestore();
    setSaid(
      got.ok ? words.back(got.value.head, got.value.photos, got.value.days, got.value.sheets) : got.text,
    );
  };
  return (
    <>
      <Key onPress={() => void press()}>{words.key}</Key>
      {said && <p role="status">{said}</p>}
    </>
  );
}

/** Times of day of the chosen day; without one of today, or of yesterday when they lie ahead; the last minute whole. What is no
 * time of day is left out. */
function between(from: string, to: string, day: string): { from?: number; to?: number } {
  const midnight = day
    ? new Date(`${day.slice(0, 10)}T00:00`).getTime()
    : new Date(now.value).setHours(0, 0, 0, 0);
  const [first, last] = [momentTyped(from, midnight), momentTyped(to, midnight)];
  const back = !day && first !== null && first > now.value ? DAY : 0;
  return {
    ...(first === null ? {} : { from: first - back }),
    ...(last === null ? {} : { to: last - back + 59_999 }),
  };
}

/** Newest first, each line once. */
export function merged(a: readonly LogLine[], b: readonly LogLine[]): LogLine[] {
  const all = new Map([...a, ...b].map((line) => [line.seq, line]));
  return [...all.values()].sort((one, other) => other.seq - one.seq);
}

function Filters({ filter, onFilter }: { filter: Filter; onFilter: (filter: Filter) => void }) {
  const words = t();
  const [all, setAll] = useState<string[]>([]);
  useEffect(() => {
    void days().then((answer) => answer.ok && setAll([...answer.value].reverse()));
  }, []);
  const titles: Record<(typeof NAMES)[number], string> = {
    words: words.withWords,
    mark: words.mark,
    person: words.person,
    machine: words.machine,
    kind: words.kind,
    from: words.review.from,
    to: words.review.to,
  };
  const set = (name: keyof Filter, value: string) => onFilter({ ...filter, [name]: value });
  return (
    <fieldset class="filters">
      <legend>{words.filters}</legend>
      <label>
        <span>{words.review.day}</span>
        <select value={filter.day} onChange={(event) => set("day", event.currentTarget.value)}>
          <option value="">{words.everyDay}</option>
          {all.map((name) => (
            <option key={name}>{name}</option>
          ))}
        </select>
      </label>
      <label>
        <span>{words.verdict}</span>
        <select value={filter.verdict} onChange={(event) => set("verdict", event.currentTarget.value)}>
          <option value="">{words.everyVerdict}</option>
          {VERDICTS.map((one) => (
            <option key={one} value={one}>
              {words.verdicts[one]}
            </option>
          ))}
        </select>
      </label>
      {NAMES.map((name) => (
        <label key={name}>
          <span>{titles[name]}</span>
          <input
            type="search"
            autocomplete="off"
            value={filter[name]}
            onChange={(event) => set(name, event.currentTarget.value.trim())}
          />
        </label>
      ))}
    </fieldset>
  );
}

function EntryPanel({ seq, onClose }: { seq: number; onClose: () => void }) {
  const words = t();
  const [text, setText] = useState(words.loading);
  useEffect(() => {
    void entry(seq).then((got) => setText(got.ok ? JSON.stringify(got.value, null, 2) : got.text));
  }, [seq]);
  return (
    <Panel title={words.entryTitle(seq)} onClose={onClose}>
      <pre>{text}</pre>
    </Panel>
  );
}
