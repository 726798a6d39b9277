/** IMPORT: a file of points or a surface; what was understood and what was not, by line; then a change of the site. */
import { useState } from "preact/hooks";
import { changeSite, draftSite, previewImport } from "../../../hub";
import { Choice } from "../../../parts/choice";
import { Key } from "../../../parts/keys";
import { Plan } from "../../../parts/plan";
import { said } from "../../../said";
import { feet, signed } from "../../../show";
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
  /** The file's surface is to be a target: what of it is known already. */
  onTarget: (typed: TypedTable) => void;
  onDone: () => void;
}

export function Import({ targets, onTarget, onDone }: ImportProps) {
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
          {got.usable && got.triangles != null && chosen instanceof File && (
            <p>
              {words.desk.surfaceOf(got.triangles)}{" "}
              <Key onPress={() => onTarget(surfaceOf(chosen.name, how))}>{words.desk.makeTarget}</Key>
            </p>
          )}
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
          <li key={`${one.line} ${one.message}`} class={one.wrong || one.left_out ? "trouble" : ""}>
            {one.left_out && <strong>{words.desk.leftOutRow} </strong>}
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
      {drafted?.would && becomes === "mark" && <Beside points={fits} would={drafted.would} />}
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

/** A target whose triangles come from the file that was looked at; what else it asks for is typed in its form. */
function surfaceOf(file: string, how: HowToRead): TypedTable {
  return {
    triangles: {
      file,
      ...(how.surface ? { name: how.surface } : {}),
      ...(how.unit ? { unit: how.unit } : {}),
      ...(how.on_plan ? { on_plan: true } : {}),
    },
  };
}

/** Each point beside its target's own elevation: the file's says how high the ground was found or drawn, the target what to dig to. */
function Beside({
  points,
  would,
}: {
  points: readonly ImportPoint[];
  would: NonNullable<SiteDrafted["would"]>;
}) {
  const words = t();
  const rows = would.touches.marks.flatMap((mark) => {
    const point = points.find((one) => one.id === mark.mark);
    return point?.elevation != null && mark.now != null
      ? [{ id: mark.mark, file: point.elevation, dig: mark.now }]
      : [];
  });
  if (rows.length === 0) return null;
  return (
    <div class="wide-table">
      <table>
        <thead>
          <tr>
            <th scope="col">{words.mark}</th>
            <th scope="col">{words.desk.fileSays}</th>
            <th scope="col">{words.desk.targetSays}</th>
            <th scope="col">{words.desk.apart}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.id}>
              <th scope="row">{row.id}</th>
              <td>{feet(row.file)}</td>
              <td>{feet(row.dig)}</td>
              <td>{signed(row.file - row.dig)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
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
