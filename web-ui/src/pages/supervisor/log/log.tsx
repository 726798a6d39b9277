/** LOG: the day's entries as a table that filters as one types; the address holds what is looked at; an entry opens beside it. */
import type { ComponentChildren } from "preact";
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from "preact/hooks";
import { log } from "../../../hub";
import { Key } from "../../../parts/keys";
import { Panel } from "../../../parts/panel";
import { head, language, me, supervisor } from "../../../state";
import { type Asked, goTo, place, refine } from "../address";
import { type Shortcut, Shortcuts } from "../shortcuts";
import { t } from "../words";
import { Entry } from "./entry";
import { acting, EVERY, type Filter, filterIn, find, scopeOf } from "./filter";
import { Filters } from "./filters";
import { Keep } from "./keep";
import { Lines } from "./lines";
import { useMedia } from "./media";
import { type Order, orderIn, orderText, sorter } from "./order";
import { LogTable } from "./table";
import { WholeLog } from "./whole";
import { logWords } from "./words";

const PAGE = "log";
/** Of the whole log so many lines that fit are fetched, and as many again with each press. */
const MOST = 10_000;
/** What is typed goes to the hub after this long, ms. Lines that have come are filtered at once. */
const SETTLES = 300;

export function Log() {
  const words = logWords();
  const { asked } = place.value;
  const filter = filterIn(asked);
  const order = orderIn(asked.sort);
  const open = Number(asked.entry) || null;
  const today = supervisor.value?.day ?? me.value?.day ?? "";
  const every = filter.day === EVERY;
  const lines = useLines(JSON.stringify(scopeOf(filter, today)), every);
  const { all, looked } = { all: lines.all.value, looked: lines.looked.value };
  const [heldAt, setHeldAt] = useState<number | null>(null);
  const [reached, setReached] = useState<number | null>(null);
  useEffect(() => setHeldAt(null), [lines]);
  const sort = useMemo(sorter, []);
  const found = useMemo(() => find(all, filter), [all, JSON.stringify(filter)]);
  const fit = useMemo(
    () => sort(heldAt === null ? found.lines : found.lines.filter((line) => line.seq <= heldAt), order),
    [found, heldAt, orderText(order), language.value],
  );

  const step = (part: Asked) => goTo(PAGE, { ...asked, ...part });
  const say = (part: Partial<Filter>, typed: boolean) =>
    typed ? refine(PAGE, { ...asked, ...part }) : step(part);
  const off = () => step(noFilter(filter));
  const opens = (seq: number) => {
    setReached(seq);
    step({ entry: String(seq) });
  };
  const shut = () => {
    if (open !== null) setReached(open);
    step({ entry: "" });
  };
  const move = (by: number) => {
    const at = fit.findIndex((line) => line.seq === (open ?? reached));
    const to = fit[at < 0 ? 0 : Math.min(fit.length - 1, Math.max(0, at + by))];
    if (!to) return;
    setReached(to.seq);
    if (open !== null) refine(PAGE, { ...asked, entry: String(to.seq) });
  };
  useReached(reached, open);
  return (
    <div class={`log ${open === null ? "" : "opened"}`}>
      <div class="log-head">
        <Filters filter={filter} choices={found.choices} onFilter={say} />
        <Bar
          count={counted(fit.length, all.length, every, looked)}
          fresh={found.lines.length - fit.length}
          acts={acting(filter) > 0}
          looked={looked}
          every={every}
          onFresh={() => setHeldAt(null)}
          onAll={off}
          onFurther={() => void lines.back(every ? MOST : Number.POSITIVE_INFINITY)}
        >
          <Keep lines={fit} name={filter.day || today} />
          <WholeLog />
          <Shortcuts list={keysOf({ move, shut, off, look: opens, reached, open })} />
        </Bar>
        {looked.trouble && <p class="warning">{looked.trouble}</p>}
        <p class="log-on-paper">{words.onPaper}</p>
        {fit.length === 0 && looked.done && <p>{all.length === 0 ? words.noLineYet : words.noLine}</p>}
      </div>
      <LogTable
        key={`${filter.day} ${lines.name}`}
        lines={fit}
        order={order}
        dated={every}
        open={open}
        reached={reached}
        onOrder={(by: Order) => step({ sort: orderText(by) })}
        onOpen={opens}
        onAway={(away) => setHeldAt(away ? (heldAt ?? all[0]?.seq ?? null) : null)}
      />
      {open !== null && (
        <Beside seq={open} onClose={shut}>
          <Entry
            seq={open}
            known={all.find((line) => line.seq === open)}
            onReplay={
              every
                ? undefined
                : () => goTo("review", { day: filter.day || today, part: "replay", entry: String(open) })
            }
          />
        </Beside>
      )}
    </div>
  );
}

interface BarProps {
  count: string;
  /** Lines that came while older ones are read. */
  fresh: number;
  acts: boolean;
  looked: Lines["looked"]["value"];
  every: boolean;
  onFresh: () => void;
  onAll: () => void;
  onFurther: () => void;
  children: ComponentChildren;
}

/** How many lines fit, and what can be done about it. */
function Bar({ count, fresh, acts, looked, every, onFresh, onAll, onFurther, children }: BarProps) {
  const words = logWords();
  return (
    <div class="log-bar">
      <output class="log-count">{count}</output>
      {acts && (
        <Key kind="small" onPress={onAll}>
          {words.noFilter}
        </Key>
      )}
      {fresh > 0 && (
        <Key kind="small" onPress={onFresh}>
          {words.fresh(fresh)}
        </Key>
      )}
      {!looked.looks && !looked.done && (looked.trouble || every) && (
        <Key kind="small" onPress={onFurther}>
          {looked.trouble ? words.again : words.further}
        </Key>
      )}
      {children}
    </div>
  );
}

/** The lines of what the hub is asked for; what is typed is asked once it has settled. */
function useLines(scope: string, every: boolean): Lines & { name: string } {
  const [settled, setSettled] = useState(scope);
  useEffect(() => {
    if (!every) return setSettled(scope);
    const timer = setTimeout(() => setSettled(scope), SETTLES);
    return () => clearTimeout(timer);
  }, [scope, every]);
  const lines = useMemo(
    () => Object.assign(new Lines(JSON.parse(settled), log), { name: settled }),
    [settled],
  );
  useEffect(() => {
    void lines.back("day" in JSON.parse(settled) ? Number.POSITIVE_INFINITY : MOST);
    return () => lines.end();
  }, [lines]);
  const newest = head.value;
  const { down } = lines.looked.value;
  useEffect(() => void lines.forth(newest), [lines, newest, down > 0]);
  return lines;
}

/** All that holds lines back, taken off. The day stays. */
function noFilter(filter: Filter): Asked {
  const { day: _, ...names } = filter;
  return Object.fromEntries(Object.keys(names).map((name) => [name, ""]));
}

function counted(fit: number, all: number, every: boolean, looked: Lines["looked"]["value"]): string {
  const words = logWords();
  const [many, of] = [fit.toLocaleString("en-US"), all.toLocaleString("en-US")];
  if (looked.down === 0) return looked.trouble ? "" : words.looks;
  const text = every
    ? looked.done
      ? words.countAll(many)
      : words.countDown(many, looked.down)
    : words.count(many, of);
  return looked.looks ? `${text} · ${words.looks}` : text;
}

interface Does {
  move: (by: number) => void;
  shut: () => void;
  off: () => void;
  look: (seq: number) => void;
  reached: number | null;
  open: number | null;
}

function keysOf({ move, shut, off, look, reached, open }: Does): Shortcut[] {
  const words = t().keys;
  return [
    { key: "/", name: words.search, act: () => document.getElementById("log-words")?.focus() },
    { key: "ArrowUp", name: words.up, act: () => move(-1) },
    { key: "ArrowDown", name: words.down, act: () => move(1) },
    { key: "o", name: words.open, act: () => reached !== null && look(reached) },
    { key: "Escape", name: words.shut, act: () => open !== null && shut() },
    { key: "x", name: words.all, act: off },
  ];
}

/** The keyboard stands on the line that the arrows came to. */
function useReached(reached: number | null, open: number | null): void {
  const last = useRef(reached);
  useLayoutEffect(() => {
    if (last.current === reached) return;
    last.current = reached;
    document.querySelector<HTMLElement>(`[data-seq="${reached}"] button`)?.focus({ preventScroll: true });
  }, [reached, open]);
}

/** Beside the table where there is room, else over it. */
function Beside({
  seq,
  onClose,
  children,
}: {
  seq: number;
  onClose: () => void;
  children: ComponentChildren;
}) {
  const words = logWords();
  const wide = useMedia("(min-width: 1024px)");
  if (!wide) {
    return (
      <Panel title={words.entry(seq)} onClose={onClose}>
        {children}
      </Panel>
    );
  }
  return (
    <aside class="log-beside" aria-label={words.entry(seq)}>
      <div class="log-beside-head">
        <h2>{words.entry(seq)}</h2>
        <Key kind="small" onPress={onClose}>
          {words.close}
        </Key>
      </div>
      {children}
    </aside>
  );
}
