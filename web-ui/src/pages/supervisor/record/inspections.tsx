/** Inspections: asked for, made, signed. */
import { useState } from "preact/hooks";
import { say } from "../../../hub";
import { Choice } from "../../../parts/choice";
import { Field } from "../../../parts/field";
import { Key } from "../../../parts/keys";
import { Panel } from "../../../parts/panel";
import { PhotoKey } from "../../../parts/photo_key";
import { SignPanel } from "../../../parts/sign";
import { Drawn } from "../../../parts/signature_pad";
import { said } from "../../../said";
import { timeOfDay } from "../../../show";
import { sheet } from "../../../state";
import type { InspectedCard, InspectionResult, Supervisor } from "../../../wire";
import { Figures } from "../figures";
import { t } from "../words";
import { Pick } from "./pick";

type Open =
  | { what: "ask" }
  | { what: "result"; of: InspectedCard | null }
  | { what: "sign"; of: InspectedCard };

export function Inspections({ view }: { view: Supervisor }) {
  const words = t().record;
  const [open, setOpen] = useState<Open | null>(null);
  const close = () => setOpen(null);
  const visitors = view.record.visitors.map((one) => one.person);
  return (
    <section aria-label={words.inspections}>
      <h2>{words.inspections}</h2>
      {view.record.inspections.map((one) => (
        <div class="card" key={one.inspection}>
          {one.made ? (
            <>
              <Made of={one} />
              {!one.signed && (
                <Key kind="small" onPress={() => setOpen({ what: "sign", of: one })}>
                  {words.signHere}
                </Key>
              )}
            </>
          ) : (
            <>
              <p>{words.waitsFor(one.asked?.what ?? "", one.asked?.of ?? "")}</p>
              <Key kind="small" onPress={() => setOpen({ what: "result", of: one })}>
                {words.enterResult}
              </Key>
            </>
          )}
          <PhotoKey kind="small" about={{ entry: one.inspection }} />
          <Figures photos={view.record.photos.filter((photo) => photo.entry === one.inspection)} />
        </div>
      ))}
      <div class="tiles">
        <Key kind="tile" onPress={() => setOpen({ what: "ask" })}>
          {words.askInspection}
        </Key>
        <Key kind="tile" onPress={() => setOpen({ what: "result", of: null })}>
          {words.enterResult}
        </Key>
      </div>
      {open?.what === "ask" && <AskPanel onClose={close} />}
      {open?.what === "result" && <ResultPanel of={open.of} visitors={visitors} onClose={close} />}
      {open?.what === "sign" && (
        <SignPanel
          title={open.of.made?.what ?? ""}
          act={words.signHere}
          words={words.signature}
          name={open.of.made?.inspector ?? ""}
          onSigned={(signature) =>
            void say({ kind: "sign_inspection", inspection: open.of.inspection, signature })
          }
          onClose={close}
        />
      )}
    </section>
  );
}

function Made({ of }: { of: InspectedCard }) {
  const words = t().record;
  const { made } = of;
  if (!made) return null;
  return (
    <>
      <p>
        <strong>
          {made.what}: {words.results[made.result]}
        </strong>{" "}
        {made.inspector} {timeOfDay(made.made_at)}
      </p>
      {of.void && (
        <p class="warning">{words.voidSince(timeOfDay(of.void.at), of.void.mark, said(of.void))}</p>
      )}
      <p>“{made.words}”</p>
      {made.conditions && <p>{made.conditions}</p>}
      <ul>
        {made.items.map((item) => (
          <li key={item.what}>
            {item.what}: {item.found}
          </li>
        ))}
      </ul>
      {of.signed ? (
        <Drawn strokes={of.signed.strokes} name={of.signed.name} />
      ) : (
        <p class="quiet">{words.unsigned}</p>
      )}
    </>
  );
}

const allTargets = () => (sheet.value?.targets ?? []).map(({ id, name }) => ({ id, name: name || id }));

function AskPanel({ onClose }: { onClose: () => void }) {
  const words = t().record;
  const [what, setWhat] = useState("");
  const [of, setOf] = useState("");
  const [targets, setTargets] = useState<string[]>([]);
  return (
    <Panel title={words.askInspection} onClose={onClose} closeWord={t().cancel}>
      <Field name={words.inspectWhat} text value={what} onValue={setWhat} />
      <Field name={words.inspectOf} text value={of} onValue={setOf} />
      <Pick title={words.inspectOn} all={allTargets()} picked={targets} onPick={setTargets} />
      <Key
        kind="send"
        disabled={!what.trim() || !of.trim()}
        onPress={() => {
          void say({ kind: "ask_inspection", what, of, targets });
          onClose();
        }}
      >
        {words.askInspection}
      </Key>
    </Panel>
  );
}

interface ResultProps {
  of: InspectedCard | null;
  visitors: string[];
  onClose: () => void;
}

const RESULTS: readonly InspectionResult[] = ["passed", "in_part", "failed"];

/** What was shown is a list; what was found of each is a value or words. */
function ResultPanel({ of, visitors, onClose }: ResultProps) {
  const words = t().record;
  const [what, setWhat] = useState(of?.asked?.what ?? "");
  const [targets, setTargets] = useState(of?.asked?.targets ?? []);
  const [inspector, setInspector] = useState(visitors.length === 1 ? (visitors[0] ?? "") : "");
  const [items, setItems] = useState([{ what: of?.asked?.targets.join(", ") ?? "", found: "" }]);
  const [result, setResult] = useState<InspectionResult | null>(null);
  const [said, setSaid] = useState("");
  const [conditions, setConditions] = useState("");
  const set = (at: number, change: Partial<{ what: string; found: string }>) =>
    setItems(items.map((item, i) => (i === at ? { ...item, ...change } : item)));
  const told = items.every((item) => item.what.trim() && item.found.trim());
  const ready =
    what.trim() &&
    inspector.trim() &&
    told &&
    result &&
    said.trim() &&
    (result !== "in_part" || conditions.trim());
  return (
    <Panel title={words.enterResult} onClose={onClose} closeWord={t().cancel}>
      <Field name={words.inspectWhat} text value={what} onValue={setWhat} />
      <Field name={words.inspector} text value={inspector} onValue={setInspector} />
      <Pick title={words.lookedAt} all={allTargets()} picked={targets} onPick={setTargets} />
      <h3>{words.shownItems}</h3>
      {items.map((item, at) => (
        <div class="pair" key={at}>
          <Field name={words.itemWhat} text value={item.what} onValue={(value) => set(at, { what: value })} />
          <Field
            name={words.itemFound}
            text
            value={item.found}
            onValue={(value) => set(at, { found: value })}
          />
        </div>
      ))}
      <Key kind="small" onPress={() => setItems([...items, { what: "", found: "" }])}>
        {words.moreItems}
      </Key>
      <Choice
        title={words.result}
        options={RESULTS.map((id) => ({ id, name: words.results[id] }))}
        chosen={result}
        onChoose={setResult}
      />
      <Field name={words.inspectorWords} text value={said} onValue={setSaid} />
      <Field name={words.conditions} text value={conditions} onValue={setConditions} />
      <Key
        kind="send"
        disabled={!ready}
        onPress={() => {
          if (!ready) return;
          const asked = of?.asked ? { asked: of.inspection } : {};
          void say({
            kind: "inspect",
            ...asked,
            what,
            targets,
            inspector,
            items,
            result,
            words: said,
            conditions,
          });
          onClose();
        }}
      >
        {words.enterResult}
      </Key>
    </Panel>
  );
}
