/** IMPORT: a file of points or a surface; what was understood and what was not, by line; then a change of the site. */
import { useState } from "preact/hooks";
import { changeSite, draftSite, previewImport } from "../../../hub";
import { Choice } from "../../../parts/choice";
import { Key } from "../../../parts/keys";
import { Plan } from "../../../parts/plan";
import { said } from "../../../said";
import { feet } from "../../../show";
import { ground, notice, sheet } from "../../../state";
import type {
  HowToRead,
  ImportPoint,
  ImportPreview,
  Sheet,
  SiteDraft,
  SiteDrafted,
  SiteSheet,
  TypedTable,
} from "../../../wire";
import { t } from "../words";
import { Effect } from "./effect";
import { exactly } from "./exactly";

type Becomes = "mark" | "benchmark";

interface ImportProps {
  targets: string[];
  onDone: () => void;
}

export function Import({ targets, onDone }: ImportProps) {
  const words = t();
  const [chosen, setChosen] = useState<Blob | null>(null);
  const [how, setHow] = useState<HowToRead>({});
  const [got, setGot] = useState<ImportPreview | null>(null);
  const [trouble, setTrouble] = useState("");
  // Its bytes go as they are: only the hub says whether they are a text.
  const read = async (file: Blob | null | undefined, as: HowToRead) => {
    if (!file) return;
    setChosen(file);
    setHow(as);
    const name = file instanceof File ? { name: file.name } : {};
    const answer = await previewImport(file, { ...as, ...name });
    setTrouble(answer.ok ? "" : answer.text);
    setGot(answer.ok ? answer.value : null);
  };
  const units = ["foot", "survey_foot", "metre"] as const;
  return (
    <section class="thing" aria-label={words.importFile}>
      <div class="row">
        <h2>{words.importFile}</h2>
        <Key onPress={onDone}>{words.back}</Key>
      </div>
      <label class="field">
        <span>{words.chooseFile}</span>
        <input
          type="file"
          accept=".csv,.txt,.xml"
          onChange={(event) => void read(event.currentTarget.files?.[0], how)}
        />
      </label>
      {trouble && <p class="trouble">{trouble}</p>}
      {got && (
        <>
          <Choice
            kind="chips"
            title={words.countsIn}
            options={units.map((id) => ({ id, name: words.planUnits[id] }))}
            chosen={how.unit ?? null}
            onChoose={(unit) => void read(chosen, { ...how, unit })}
          />
          <Choice
            kind="chips"
            title={words.coordinatesOf}
            options={[
              { id: "site", name: words.ofSite },
              { id: "plan", name: words.ofPlan },
            ]}
            chosen={how.on_plan ? "plan" : "site"}
            onChoose={(id) => void read(chosen, { ...how, on_plan: id === "plan" })}
          />
          <Understood got={got} />
          {got.all_points > got.points.length && got.usable && (
            <p class="trouble">{words.onlyFirst(got.points.length, got.all_points)}</p>
          )}
          {got.usable && got.points.length > 0 && (
            <Take points={got.points} targets={targets} onDone={onDone} />
          )}
        </>
      )}
    </section>
  );
}

function Understood({ got }: { got: ImportPreview }) {
  const words = t();
  return (
    <>
      <h3>{words.understood}</h3>
      <ul>
        {got.understood.map((one) => (
          <li key={one.english}>{said(one)}</li>
        ))}
      </ul>
      {got.not_understood.length > 0 && <h3>{words.notUnderstood}</h3>}
      <ul>
        {got.not_understood.map((one) => (
          <li key={`${one.line} ${one.message}`} class={one.wrong ? "trouble" : ""}>
            {words.lineNo(one.line)} {one.message}
          </li>
        ))}
      </ul>
      {got.hypotheses.map((one) => (
        <p key={one.slip} class="trouble">
          {said(one)}
        </p>
      ))}
    </>
  );
}

interface TakeProps {
  points: readonly ImportPoint[];
  targets: string[];
  onDone: () => void;
}

/** The points over the lot, what they become, and the change with its reason. */
function Take({ points, targets, onDone }: TakeProps) {
  const words = t();
  const [becomes, setBecomes] = useState<Becomes>("mark");
  const [target, setTarget] = useState("");
  const [drafted, setDrafted] = useState<SiteDrafted | null>(null);
  const [trouble, setTrouble] = useState("");
  const fits = points.filter((one) => one.id !== "" && (becomes === "mark" || one.elevation != null));
  const draft: SiteDraft = { put: fits.map((one) => typedOf(one, becomes, target)), retire: [] };
  const look = async () => {
    const got = await draftSite(draft);
    setTrouble(got.ok ? "" : got.text);
    setDrafted(got.ok ? got.value : null);
  };
  const wrong = drafted?.faults.filter((one) => !one.warning) ?? [];
  return (
    <>
      {sheet.value && <Plan sheet={withPoints(sheet.value, points)} ground={ground.value} />}
      <Choice
        kind="chips"
        title={words.becomes}
        options={[
          { id: "mark", name: words.marks },
          { id: "benchmark", name: words.benchmarks },
        ]}
        chosen={becomes}
        onChoose={(id: Becomes) => {
          setBecomes(id);
          setDrafted(null);
        }}
      />
      {becomes === "mark" && (
        <label class="field">
          <span>{words.targetOfMarks}</span>
          <select
            value={target}
            onChange={(event) => {
              setTarget(event.currentTarget.value);
              setDrafted(null);
            }}
          >
            <option value="">–</option>
            {targets.map((id) => (
              <option key={id} value={id}>
                {id}
              </option>
            ))}
          </select>
        </label>
      )}
      {fits.length < points.length && <p>{words.leftOut(points.length - fits.length)}</p>}
      {wrong.map((one) => (
        <p key={one.english} class="trouble">
          {said(one)}
        </p>
      ))}
      {trouble && <p class="trouble">{trouble}</p>}
      {drafted?.would && wrong.length === 0 ? (
        <Effect
          would={drafted.would}
          onChange={async (why) => {
            const answer = await changeSite(draft, why, drafted.would?.seen ?? "");
            if (!answer.ok) {
              setTrouble(answer.text);
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
    </>
  );
}

function typedOf(one: ImportPoint, becomes: Becomes, target: string): SiteDraft["put"][number] {
  const typed: TypedTable = { id: one.id, at: [exactly(one.at.x), exactly(one.at.y)] };
  if (one.note) typed.note = one.note;
  if (becomes === "benchmark") typed.elevation = exactly(one.elevation ?? 0);
  else if (target) typed.target = target;
  return { of: becomes, typed };
}

/** The sheet with a file's points as marks, to see where they lie. */
function withPoints(now: Sheet, points: readonly ImportPoint[]): Sheet {
  const marks = points.map((one) => ({
    id: one.id || feet(one.elevation ?? 0),
    place: one.at,
    aim: 0,
    note: one.note,
  }));
  return { ...now, marks };
}

/** The names of the targets that marks may stand on. */
export function targetNames(got: SiteSheet): string[] {
  const list = (got.written as Record<string, { id: string }[] | undefined>).target;
  return (list ?? []).map((one) => one.id);
}
