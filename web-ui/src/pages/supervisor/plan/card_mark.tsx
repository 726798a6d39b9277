/** A mark's card: its target from the surface down to the dig, its last reading, what somebody has to decide, its photos and its log. */
import { useState } from "preact/hooks";
import { Key } from "../../../parts/keys";
import { gone, lastFigure } from "../../../parts/last";
import { said } from "../../../said";
import { feet, signed, timeOfDay } from "../../../show";
import { sheet } from "../../../state";
import type { MarkCard, SheetMark, Supervisor } from "../../../wire";
import { Figures } from "../figures";
import { RulePanel } from "../panels";
import { t } from "../words";
import type { CardProps } from "./card";
import { HistoryOf } from "./history";
import { Sign } from "./signs";
import { standingOf, type Thing } from "./things";

export function MarkOnCard({ of, view, onPick }: CardProps) {
  const words = t();
  const [rules, setRules] = useState(false);
  const mark = sheet.value?.marks.find((one) => one.id === of.id);
  if (!mark) return <p class="warning">{words.none}</p>;
  const last = view.marks.find((one) => one.id === of.id);
  return (
    <>
      <p class="standing">
        <svg viewBox="-11 -11 22 22" aria-hidden="true">
          <Sign of={standingOf(last)} />
        </svg>
        <strong>{standingWords(last)}</strong>
      </p>
      {last?.needs_ruling && (
        <Key label={`${words.rule} ${mark.id}`} onPress={() => setRules(true)}>
          {words.rule}
        </Key>
      )}
      <InNow view={view} mark={mark} />
      <Stack mark={mark} onPick={onPick} />
      <p class="quiet">
        {whereWords(mark)} {mark.note}
      </p>
      <PhotosOf view={view} of={of} />
      <HistoryOf of={{ mark: of.id }} />
      {rules && <RulePanel mark={mark.id} onClose={() => setRules(false)} />}
    </>
  );
}

/** "HIGH +0.30 ft · RT · 09:27", or why a last reading counts no more. */
function standingWords(last: MarkCard | undefined): string {
  const words = t();
  if (!last) return words.noReading;
  const when = `${last.by} · ${last.day ?? ""} ${timeOfDay(last.at)}`;
  const counts = gone(last);
  if (counts) return `${counts} · ${when}`;
  const verdict = last.verdict ? `${words.verdicts[last.verdict]} ` : "";
  const ruling = last.ruling ? ` · ${words.rulings[last.ruling]}` : "";
  return `${verdict}${lastFigure(last)} ft · ${when}${ruling}`;
}

/** Whoever said to be at this mark, in a keep-out. */
function InNow({ view, mark }: { view: Supervisor; mark: SheetMark }) {
  const { stages } = t().wayIn;
  const here = view.inside.flatMap(({ machine, people }) =>
    people.filter((one) => one.mark === mark.id).map((one) => ({ machine, one })),
  );
  return (
    <>
      {here.map(({ machine, one }) => (
        <p class="trouble" key={one.visit}>
          {one.person} {stages[one.stage]} · {machine}
        </p>
      ))}
    </>
  );
}

/** From the drawing's surface through the layers down to the dig, as the ground will be built up again. */
function Stack({ mark, onPick }: { mark: SheetMark; onPick: (thing: Thing) => void }) {
  const words = t();
  const { desk } = words;
  const target = sheet.value?.targets.find((one) => one.id === mark.target);
  if (!target) return <p>{desk.noTarget}</p>;
  const { layers, surface } = target.grade.stack;
  const thick = layers.reduce((sum, one) => sum + one.thickness, 0);
  const to = mark.dig_to;
  const dig = to && "at" in to ? to.at : null;
  const none = mark.why_no_grade && said(mark.why_no_grade);
  return (
    <section aria-label={desk.stack}>
      <h3>
        <Key kind="plain" onPress={() => onPick({ kind: "target", id: target.id })}>
          {target.id}
        </Key>{" "}
        <small>
          {target.name} {words.revision(target.revision)}
        </small>
      </h3>
      <ol class="stack">
        <li>
          <span>{surface}</span> <b>{dig === null ? "" : feet(dig + thick)}</b>
        </li>
        {layers.map((one) => (
          <li key={one.name} class="layer">
            <span>{desk.layer(one.name, feet(one.thickness))}</span>
          </li>
        ))}
        <li class="dig">
          <span>{words.digTo}</span> <b>{dig === null ? "" : feet(dig)}</b>
        </li>
      </ol>
      {to && "near_step" in to && (
        <p>
          {desk.nearStep(feet(to.near_step.station, 1), feet(to.near_step.before), feet(to.near_step.after))}
        </p>
      )}
      {!to && <p class="trouble">{none ?? desk.noGrade}</p>}
      <p class="quiet">
        {mark.tolerance && desk.allowed(feet(mark.tolerance.high), feet(mark.tolerance.low))}
        {mark.aim !== 0 && ` · ${desk.aim(signed(mark.aim))}`}
      </p>
    </section>
  );
}

function whereWords(mark: SheetMark): string {
  const { desk } = t();
  const { station, offset, place } = mark;
  const along = station == null ? "" : desk.station(feet(station, 1));
  const beside = !offset ? "" : offset > 0 ? desk.rightOf(feet(offset)) : desk.leftOf(feet(-offset));
  return [along, beside, desk.place(feet(place.x), feet(place.y))].filter(Boolean).join(" · ");
}

/** The photos of a mark or a face. */
export function PhotosOf({ view, of }: { view: Supervisor; of: Thing }) {
  const words = t().desk;
  const key = of.kind === "face" ? "face" : "mark";
  const photos = view.record.photos.filter((one) => one[key] === of.id);
  if (photos.length === 0) return null;
  return (
    <section aria-label={words.photos}>
      <h3>{words.photos}</h3>
      <Figures photos={photos} />
    </section>
  );
}
