/** One thing of the site: its form, what a change of it would do with a picture, and the change with its reason. */
import { useEffect, useRef, useState } from "preact/hooks";
import { changeSite, draftSite } from "../../../hub";
import { Key } from "../../../parts/keys";
import { said } from "../../../said";
import { notice } from "../../../state";
import type { SiteDraft, SiteDrafted, SiteForm, SiteFormOf, TypedTable } from "../../../wire";
import { t } from "../words";
import { cleaned } from "./draft";
import { Effect } from "./effect";
import { Fields } from "./fields";

interface ThingProps {
  form: SiteForm;
  /** Its name; nothing when it is new. */
  id: string | null;
  typed: TypedTable;
  names: (of: SiteFormOf) => string[];
  onTyped: (typed: TypedTable) => void;
  /** Where the list has no key for it. */
  onRetire?: (() => void) | undefined;
  onDone: () => void;
}

export function Thing({ form, id, typed, names, onTyped, onRetire, onDone }: ThingProps) {
  const words = t();
  const [drafted, setDrafted] = useState<SiteDrafted | null>(null);
  const [trouble, setTrouble] = useState("");
  const draft: SiteDraft = { put: [{ of: form.of, typed: cleaned(typed) ?? {} }], retire: [] };
  const look = async () => {
    const got = await draftSite(draft);
    setTrouble(got.ok ? "" : got.text);
    setDrafted(got.ok ? got.value : null);
  };
  // What the hub found is brought into sight: the first fault, or else what would happen.
  const whole = useRef<HTMLElement>(null);
  useEffect(() => {
    const first = drafted && whole.current?.querySelector(".trouble, .effect");
    first?.scrollIntoView?.({ block: "center" });
  }, [drafted?.would, drafted?.faults.length]);
  const faults = drafted?.faults ?? [];
  const elsewhere = faults.filter((one) => one.draft !== 0 || one.field === "");
  const ready = drafted?.would && faults.every((one) => one.warning) ? drafted.would : null;
  return (
    <section class="thing" aria-label={id ?? said(form.name)} ref={whole}>
      <div class="row">
        <h2>
          {said(form.name)} <small>{id ?? (form.once ? "" : words.newThing)}</small>
        </h2>
        {onRetire && (
          <Key kind="small" label={`${words.retire} ${id}`} onPress={onRetire}>
            {words.retire}
          </Key>
        )}
        <Key onPress={onDone}>{words.back}</Key>
      </div>
      <div class="form">
        <Fields
          fields={form.fields}
          fixed={id ? ["id"] : []}
          typed={typed}
          faults={faults.filter((one) => one.draft === 0)}
          names={names}
          onTyped={(to) => {
            onTyped(to);
            // What was looked at is no longer what is typed: the faults stay, the key to put it in force goes.
            setDrafted((before) => before && { ...before, would: null });
          }}
        />
      </div>
      {elsewhere.map((one) => (
        <p key={one.english} class={one.warning ? "quiet" : "trouble"}>
          {said(one)}
        </p>
      ))}
      {trouble && <p class="trouble">{trouble}</p>}
      {ready ? (
        <Effect
          would={ready}
          onChange={async (why) => {
            const got = await changeSite(draft, why, ready.seen);
            if (!got.ok) {
              setTrouble(got.text);
              return;
            }
            notice.value = words.siteChanged;
            onDone();
          }}
        />
      ) : (
        <Key kind="send" onPress={() => void look()}>
          {words.lookAtIt}
        </Key>
      )}
    </section>
  );
}

interface RetireProps {
  form: SiteForm;
  id: string;
  /** The marks that go with a target. */
  marks: string[];
  onDone: () => void;
}

/** What would go: the thing, and a target's marks when they are to go with it. */
export function Retire({ form, id, marks, onDone }: RetireProps) {
  const words = t();
  const [drafted, setDrafted] = useState<SiteDrafted | null>(null);
  const [draft, setDraft] = useState<SiteDraft | null>(null);
  const [trouble, setTrouble] = useState("");
  const look = async (withMarks: boolean) => {
    const gone = [
      { list: form.of, id },
      ...(withMarks ? marks.map((mark) => ({ list: "mark" as const, id: mark })) : []),
    ];
    const asked = { put: [], retire: gone } as SiteDraft;
    const got = await draftSite(asked);
    setTrouble(got.ok ? "" : got.text);
    setDraft(asked);
    setDrafted(got.ok ? got.value : null);
  };
  const wrong = drafted?.faults.filter((one) => !one.warning) ?? [];
  return (
    <section class="thing" aria-label={`${words.retire} ${id}`}>
      <div class="row">
        <h2>
          {words.retire} <small>{id}</small>
        </h2>
        <Key onPress={onDone}>{words.back}</Key>
      </div>
      <p>{words.retireNote}</p>
      {wrong.map((one) => (
        <p key={one.english} class="trouble">
          {said(one)}
        </p>
      ))}
      {trouble && <p class="trouble">{trouble}</p>}
      {draft && drafted?.would && wrong.length === 0 ? (
        <Effect
          would={drafted.would}
          onChange={async (why) => {
            const got = await changeSite(draft, why, drafted.would?.seen ?? "");
            if (!got.ok) {
              setTrouble(got.text);
              return;
            }
            notice.value = words.siteChanged;
            onDone();
          }}
        />
      ) : (
        <>
          <Key kind="send" onPress={() => void look(false)}>
            {words.lookAtIt}
          </Key>
          {marks.length > 0 && (
            <Key kind="wide" onPress={() => void look(true)}>
              {words.withItsMarks(marks.length)}
            </Key>
          )}
        </>
      )}
    </section>
  );
}
