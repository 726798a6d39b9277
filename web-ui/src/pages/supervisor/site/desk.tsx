/** SITE on the desk: the list, the plan and the form side by side; places drawn and dragged on the plan, undone until they are in force. */
import { useEffect, useRef, useState } from "preact/hooks";
import { Key } from "../../../parts/keys";
import { said } from "../../../said";
import { sheet, supervisor } from "../../../state";
import type { Point, SiteForm, SiteFormOf, SiteSheet, TypedTable } from "../../../wire";
import { SitePlan } from "../plan/site_plan";
import type { Kind, Thing as Picked } from "../plan/things";
import { t } from "../words";
import { Handles } from "./handles";
import { gist, idOf, things } from "./listed";
import { drawn, more, moved, placesOf } from "./places";
import type { Open } from "./site";

/** What the plan calls a thing whose form has another name. */
const OF_KIND: Partial<Record<Kind, SiteFormOf>> = { buried: "utility" };
const KIND_OF: Partial<Record<SiteFormOf, Kind>> = { utility: "buried" };
/** What is typed one after another within this time is one step back, ms. */
const ONE_STEP = 1_000;

interface SiteAtDeskProps {
  got: SiteSheet;
  open: Open | null;
  onOpen: (open: Open | null) => void;
  onImport: () => void;
  /** The form of what is open, or the import. */
  children: preact.ComponentChildren;
  files: readonly string[];
}

export function SiteAtDesk({ got, open, onOpen, onImport, children, files }: SiteAtDeskProps) {
  const words = t();
  const [placing, setPlacing] = useState(false);
  const here = open ? `${open.of} ${open.id}` : "";
  // Another thing is drawn only after its own press.
  useEffect(() => setPlacing(false), [here]);
  const past = usePast(open, onOpen);
  const typed = open?.typed ?? null;
  const draws = open && typed ? drawn(open.of) : null;
  const change = (to: TypedTable) => open && onOpen({ ...open, typed: to });
  const places = open && typed ? placesOf(open.of, typed) : [];
  const picked: Picked | null =
    open?.id != null ? { kind: KIND_OF[open.of] ?? (open.of as Kind), id: open.id } : null;
  const pick = ({ kind, id }: Picked) => {
    const of = OF_KIND[kind] ?? (kind as SiteFormOf);
    const thing = things(got, of).find((one) => idOf(one) === id);
    if (thing) onOpen({ of, id, typed: thing });
  };
  const put = (to: Point) => {
    if (!open || !typed) return;
    change(more(open.of, typed, to));
    if (draws === "one") setPlacing(false);
  };
  return (
    <div class="site-desk">
      <div class="site-list">
        {got.forms.map((form) => (
          <Rows key={form.of} form={form} things={things(got, form.of)} open={open} onOpen={onOpen} />
        ))}
        <section aria-label={words.importFile}>
          <Key onPress={onImport}>{words.importKey}</Key>
          <p class="quiet">{words.exportSite}</p>
          <div class="row">
            {files.map((name) => (
              <a class="key" key={name} href={`/api/site/file/${name}`} download={name}>
                {name}
              </a>
            ))}
          </div>
        </section>
      </div>
      <div class="site-middle">
        <div class="site-tools">
          <Key pressed={placing && !!draws} disabled={!draws} onPress={() => setPlacing(!placing)}>
            {draws === "many" ? words.desk.drawLine : words.desk.drawPlace}
          </Key>
          <Key disabled={past.steps === 0} onPress={past.back}>
            {words.desk.undo}
          </Key>
          <span class="quiet">{placing && draws ? words.desk.pressThere : ""}</span>
        </div>
        {sheet.value && (
          <SitePlan
            sheet={sheet.value}
            machines={supervisor.value?.machines ?? []}
            marks={supervisor.value?.marks ?? []}
            picked={picked}
            onPick={pick}
            onPlace={placing && draws ? put : null}
            over={(sight, room) =>
              places.length > 0 && (
                <Handles
                  id={open?.id ?? (typed ? idOf(typed) : "")}
                  places={places}
                  closed={open?.of === "ticket" || open?.of === "target"}
                  sight={sight}
                  room={room}
                  onMove={(path, to) => typed && change(moved(typed, path, to))}
                />
              )
            }
          />
        )}
      </div>
      <div class="site-form">{children ?? <p class="empty">{words.desk.pickOne}</p>}</div>
    </div>
  );
}

/** What was typed before, step by step, as long as one thing is open. */
function usePast(open: Open | null, onOpen: (open: Open) => void) {
  const kept = useRef<{ of: string; now: Open | null; before: Open[]; at: number }>({
    of: "",
    now: null,
    before: [],
    at: 0,
  });
  const own = kept.current;
  const of = open ? `${open.of} ${open.id}` : "";
  const at = performance.now();
  if (own.of !== of) {
    kept.current = { of, now: open, before: [], at: 0 };
  } else if (open && own.now && JSON.stringify(own.now.typed) !== JSON.stringify(open.typed)) {
    if (at - own.at > ONE_STEP) own.before.push(own.now);
    own.at = at;
    own.now = open;
  }
  return {
    steps: kept.current.before.length,
    back: () => {
      const before = kept.current.before.pop();
      if (!before) return;
      kept.current.now = before;
      onOpen(before);
    },
  };
}

interface RowsProps {
  form: SiteForm;
  things: readonly TypedTable[];
  open: Open | null;
  onOpen: (open: Open) => void;
}

/** A list of things of a kind: a press on a row changes it; what retires it stands in its form. */
function Rows({ form, things: list, open, onOpen }: RowsProps) {
  const words = t();
  const title = said(form.name);
  return (
    <section aria-label={title}>
      <header>
        <h2>
          {title} <small>{list.length}</small>
        </h2>
        {(!form.once || list.length === 0) && (
          <Key
            kind="small"
            label={`${words.add} ${title}`}
            onPress={() => onOpen({ of: form.of, id: null, typed: {} })}
          >
            {words.add}
          </Key>
        )}
      </header>
      <ul>
        {list.map((thing) => {
          const id = form.once ? null : idOf(thing);
          const here = open?.of === form.of && open.id === id;
          return (
            <li key={idOf(thing)}>
              <button
                type="button"
                class="site-row"
                aria-pressed={here}
                title={gist(form, thing)}
                onClick={() => onOpen({ of: form.of, id, typed: thing })}
              >
                <i class="unseen">{words.change} </i>
                <strong>{id ?? title}</strong> <span>{gist(form, thing)}</span>
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
