/** A visitor looks on: the runs that were chosen for them with what proves each. STOP and on or off site are all they press. */
import { useState } from "preact/hooks";
import { say } from "../../hub";
import { Frame } from "../../parts/frame";
import { Key } from "../../parts/keys";
import { SignPanel } from "../../parts/sign";
import { said } from "../../said";
import { timeOfDay } from "../../show";
import { me, visitor } from "../../state";
import type { InspectedCard, Visitor } from "../../wire";
import { t } from "../../words_later";
import { Run } from "./run";
import { v } from "./words";

export function VisitorPage() {
  const words = t();
  const view = visitor.value;
  return (
    <Frame
      title={view ? `${me.value?.person ?? ""} · ${view.site}` : (me.value?.person ?? words.title)}
      tabs={[]}
      tab=""
      onTab={() => undefined}
      kind="visitor"
    >
      {view ? <Shown view={view} /> : <p class="empty">{words.loading}</p>}
      <p class="quiet">{words.caution}</p>
    </Frame>
  );
}

function Shown({ view }: { view: Visitor }) {
  const words = v();
  const here = view.here != null;
  return (
    <>
      <p class="here">
        <strong>{here ? words.here(timeOfDay(view.here ?? 0)) : words.notHere}</strong>
      </p>
      <Key kind="large" onPress={() => void say({ kind: "visit", on_site: !here })}>
        {here ? words.offSite : words.onSite}
      </Key>
      <p class="quiet">
        {t().visitor} {words.readOnly}
      </p>
      {view.runs.length === 0 && <p>{words.nothingShown}</p>}
      {view.runs.map((run) => (
        <Run key={run.target.id} run={run} />
      ))}
      {view.inspections.length > 0 && <Mine inspections={view.inspections} />}
    </>
  );
}

/** The inspections that this visitor made: signed here, once. */
function Mine({ inspections }: { inspections: InspectedCard[] }) {
  const words = v();
  const [signs, setSigns] = useState<InspectedCard | null>(null);
  return (
    <section aria-label={words.inspections}>
      <h2>{words.inspections}</h2>
      {inspections.map((one) => (
        <div class="card" key={one.inspection}>
          {one.made && (
            <p>
              <strong>
                {one.made.what}: {words.results[one.made.result]}
              </strong>{" "}
              “{one.made.words}” {one.made.conditions}
            </p>
          )}
          {one.void && (
            <p class="warning">
              {one.void.mark}: {said(one.void)}
            </p>
          )}
          {one.signed ? (
            <p>{words.signed}</p>
          ) : (
            <Key kind="wide" onPress={() => setSigns(one)}>
              {words.sign}
            </Key>
          )}
        </div>
      ))}
      {signs && (
        <SignPanel
          title={signs.made?.what ?? ""}
          act={words.sign}
          words={words.signature}
          name={me.value?.person ?? ""}
          onSigned={(signature) =>
            void say({ kind: "sign_inspection", inspection: signs.inspection, signature })
          }
          onClose={() => setSigns(null)}
        />
      )}
    </section>
  );
}
