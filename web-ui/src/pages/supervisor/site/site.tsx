/** SITE: everything that a site file holds, to add, change and retire, each change with its reason. */
import { useEffect, useRef, useState } from "preact/hooks";
import { siteForm } from "../../../hub";
import { Key } from "../../../parts/keys";
import { said } from "../../../said";
import { remember, remembered, supervisor } from "../../../state";
import type { SiteForm, SiteFormOf, SiteSheet, TypedTable } from "../../../wire";
import { atDesk } from "../at_desk";
import { t } from "../words";
import { SiteAtDesk } from "./desk";
import { Import, targetNames } from "./import";
import { gist, idOf, marksOf, things } from "./listed";
import { Retire, Thing } from "./thing";

/** What is open, kept on the phone: a page that is loaded again has lost nothing. */
export interface Open {
  of: SiteFormOf;
  id: string | null;
  typed: TypedTable | null;
}
/** What the site is exported as. */
const FILES = ["site.toml", "surfaces.xml", "marks.csv"];

const KEPT = "rodcall.site-draft";

function keptOpen(): Open | null {
  try {
    return JSON.parse(remembered(KEPT) ?? "null");
  } catch {
    return null;
  }
}

/** `target` is there when the page was opened to change that target. */
export function SitePage({ target = null }: { target?: string | null }) {
  const words = t();
  const [got, setGot] = useState<SiteSheet | null>(null);
  const [trouble, setTrouble] = useState("");
  const [imports, setImports] = useState(false);
  const first = useRef(target);
  const [open, setOpened] = useState<Open | null>(keptOpen);
  const setOpen = (to: Open | null) => {
    setOpened(to);
    remember(KEPT, JSON.stringify(to));
  };
  const load = async () => {
    const answer = await siteForm();
    setTrouble(answer.ok ? "" : answer.text);
    if (!answer.ok) return;
    setGot(answer.value);
    const thing = things(answer.value, "target").find((one) => idOf(one) === first.current);
    if (thing) setOpen({ of: "target", id: idOf(thing), typed: thing });
    first.current = null;
  };
  useEffect(() => void load(), []);
  if (trouble) return <p class="warning">{trouble}</p>;
  if (!got) return <p class="empty">{words.loading}</p>;
  const names = (of: SiteFormOf) => things(got, of).map(idOf);
  const done = () => {
    setOpen(null);
    void load();
  };
  const form = open && got.forms.find((one) => one.of === open.of);
  const inForm =
    open && form ? (
      open.typed === null && open.id !== null ? (
        <Retire form={form} id={open.id} marks={marksOf(got, form, open.id)} onDone={done} />
      ) : (
        <Thing
          key={`${open.of} ${open.id}`}
          form={form}
          id={open.id}
          typed={open.typed ?? {}}
          names={names}
          onTyped={(typed) => setOpen({ ...open, typed })}
          onRetire={atDesk.value && open.id !== null ? () => setOpen({ ...open, typed: null }) : undefined}
          onDone={done}
        />
      )
    ) : imports ? (
      <Import
        targets={targetNames(got)}
        onTarget={(typed) => {
          setImports(false);
          setOpen({ of: "target", id: null, typed });
        }}
        onDone={() => {
          setImports(false);
          done();
        }}
      />
    ) : null;
  if (atDesk.value) {
    return (
      <SiteAtDesk
        got={got}
        open={open}
        onOpen={(to) => {
          setImports(false);
          setOpen(to);
        }}
        onImport={() => {
          setOpen(null);
          setImports(true);
        }}
        files={FILES}
      >
        {inForm}
      </SiteAtDesk>
    );
  }
  if (inForm) return inForm;
  return (
    <div class="columns">
      <section class="card" aria-label={words.importFile}>
        <Key kind="wide" onPress={() => setImports(true)}>
          {words.importKey}
        </Key>
        <p>{words.exportSite}</p>
        <div class="row">
          {FILES.map((name) => (
            <a class="key" key={name} href={`/api/site/file/${name}`} download={name}>
              {name}
            </a>
          ))}
        </div>
      </section>
      {got.forms.map((one) => (
        <List key={one.of} form={one} things={things(got, one.of)} onOpen={setOpen} />
      ))}
      {supervisor.value?.site_change && <p class="quiet">{words.siteChange}</p>}
    </div>
  );
}

interface ListProps {
  form: SiteForm;
  things: TypedTable[];
  onOpen: (open: Open) => void;
}

function List({ form, things, onOpen }: ListProps) {
  const words = t();
  const title = said(form.name);
  const [all, setAll] = useState(things.length <= FEW);
  const shown = all ? things : things.slice(0, FEW);
  return (
    <section class="card" aria-label={title}>
      <h2>{title}</h2>
      {things.length === 0 && <p>{words.none}</p>}
      <ul class="lines">
        {shown.map((thing) => {
          const id = form.once ? null : idOf(thing);
          return (
            <li key={idOf(thing)}>
              <span>
                <strong>{id}</strong> <small>{gist(form, thing)}</small>
              </span>
              <span class="row">
                <Key
                  kind="small"
                  label={`${words.change} ${id ?? title}`}
                  onPress={() => onOpen({ of: form.of, id, typed: thing })}
                >
                  {words.change}
                </Key>
                {id !== null && (
                  <Key
                    kind="small"
                    label={`${words.retire} ${id}`}
                    onPress={() => onOpen({ of: form.of, id, typed: null })}
                  >
                    {words.retire}
                  </Key>
                )}
              </span>
            </li>
          );
        })}
      </ul>
      <div class="row">
        {!all && <Key onPress={() => setAll(true)}>{words.showAll(things.length)}</Key>}
        {(!form.once || things.length === 0) && (
          <Key label={`${words.add} ${title}`} onPress={() => onOpen({ of: form.of, id: null, typed: {} })}>
            {words.add}
          </Key>
        )}
      </div>
    </section>
  );
}

/** A long list opens by a press. */
const FEW = 12;
