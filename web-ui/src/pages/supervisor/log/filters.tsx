/** The filter of LOG: it acts as one types, says how many lines fit, offers what there is to choose, and goes off in one press. */
import { useEffect, useState } from "preact/hooks";
import { Key } from "../../../parts/keys";
import { days } from "../review/ask";
import { t } from "../words";
import { acting, EVERY, type Filter, type Found, minuteIn, NAMES, type Name } from "./filter";
import { kindWord } from "./order";
import { logWords } from "./words";

interface FiltersProps {
  filter: Filter;
  choices: Found["choices"];
  /** `typed` is no step of its own: back leads to before it was begun. */
  onFilter: (part: Partial<Filter>, typed: boolean) => void;
}

export function Filters({ filter, choices, onFilter }: FiltersProps) {
  const words = logWords();
  const many = acting(filter);
  const [open, setOpen] = useState(false);
  const columns: Record<Name, string> = words.columns;
  return (
    <search class={`log-filter ${open ? "open" : ""}`} aria-label={words.filters}>
      <label class="log-words">
        <span>{words.words}</span>
        <input
          type="search"
          id="log-words"
          autocomplete="off"
          class={filter.words.trim() ? "acts" : ""}
          value={filter.words}
          onInput={(event) => onFilter({ words: event.currentTarget.value }, true)}
        />
      </label>
      <Key kind="small log-more" pressed={open} onPress={() => setOpen(!open)}>
        {many > 0 ? words.filtersOn(many) : words.filters}
      </Key>
      <div class="log-choices">
        <Day chosen={filter.day} onChoose={(day) => onFilter({ day }, false)} />
        {NAMES.map((name) => (
          <One
            key={name}
            title={columns[name]}
            values={choices[name]}
            chosen={filter[name]}
            word={name === "kind" ? kindWord : name === "verdict" ? verdictWord : asItIs}
            onChoose={(value) => onFilter({ [name]: value }, false)}
          />
        ))}
        <Hour title={words.from} value={filter.from} onType={(from) => onFilter({ from }, true)} />
        <Hour title={words.to} value={filter.to} onType={(to) => onFilter({ to }, true)} />
      </div>
      {[filter.from, filter.to].filter(noTime).map((text) => (
        <p key={text} class="trouble" role="status">
          {words.noTime(text.trim())}
        </p>
      ))}
    </search>
  );
}

const asItIs = (value: string) => value;

function verdictWord(value: string): string {
  return (logWords().verdicts as Readonly<Record<string, string>>)[value] ?? value;
}

function Day({ chosen, onChoose }: { chosen: string; onChoose: (day: string) => void }) {
  const [all, setAll] = useState<string[]>([]);
  useEffect(() => {
    void days().then((answer) => answer.ok && setAll([...answer.value].reverse()));
  }, []);
  const [newest = "", ...older] = all;
  // A day that a link names stays chosen, whether it is there or not: the lines say what is wrong with it.
  const named = chosen && chosen !== EVERY && !all.includes(chosen) ? [chosen] : [];
  return (
    <label class="field">
      <span>{t().review.day}</span>
      <select
        value={chosen === newest ? "" : chosen}
        onChange={(event) => onChoose(event.currentTarget.value)}
      >
        <option value="">{newest}</option>
        {[...named, ...older].map((day) => (
          <option key={day}>{day}</option>
        ))}
        <option value={EVERY}>{logWords().everyDay}</option>
      </select>
    </label>
  );
}

interface OneProps {
  title: string;
  values: Map<string, number>;
  chosen: string;
  word: (value: string) => string;
  onChoose: (value: string) => void;
}

const sorted = new Intl.Collator(undefined, { numeric: true });

function One({ title, values, chosen, word, onChoose }: OneProps) {
  const all = [...values].sort(([a], [b]) => sorted.compare(word(a), word(b)));
  return (
    <label class="field">
      <span>{title}</span>
      <select
        class={chosen ? "acts" : ""}
        title={chosen && word(chosen)}
        value={chosen}
        onChange={(event) => onChoose(event.currentTarget.value)}
      >
        <option value="">{logWords().any}</option>
        {chosen && !values.has(chosen) && <option value={chosen}>{word(chosen)}</option>}
        {all.map(([value, many]) => (
          <option key={value} value={value}>
            {value === chosen ? word(value) : `${word(value)} · ${many}`}
          </option>
        ))}
      </select>
    </label>
  );
}

interface HourProps {
  title: string;
  value: string;
  onType: (text: string) => void;
}

/** What is typed and is no time of day holds nothing back. */
const noTime = (text: string) => text.trim() !== "" && minuteIn(text) === null;

function Hour({ title, value, onType }: HourProps) {
  return (
    <label class="field">
      <span>{title}</span>
      <input
        inputMode="numeric"
        autocomplete="off"
        placeholder={logWords().timeHint}
        class={minuteIn(value) === null ? "" : "acts"}
        aria-invalid={noTime(value)}
        value={value}
        onInput={(event) => onType(event.currentTarget.value)}
      />
    </label>
  );
}
