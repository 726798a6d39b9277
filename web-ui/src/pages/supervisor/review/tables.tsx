/** Each call, mark and set-up with its whole history. */
import { useState } from "preact/hooks";
import { setUpName } from "../../../given_names";
import { Choice } from "../../../parts/choice";
import { said } from "../../../said";
import { feet, signed, timeOfDay } from "../../../show";
import type { MarkHistory, PhotoCard, Review, Sentence, SetUpHistory } from "../../../wire";
import { Figures, photosAt } from "../figures";
import { t } from "../words";

type Of = "calls" | "marks" | "setUps";
const KINDS: readonly Of[] = ["calls", "marks", "setUps"];

export function Tables({ review, onEntry }: { review: Review; onEntry: (seq: number) => void }) {
  const words = t().review;
  const [of, setOf] = useState<Of>("calls");
  const [only, setOnly] = useState("");
  const fits = (...names: (string | null | undefined)[]) =>
    only === "" || names.some((name) => name?.toLowerCase().includes(only.toLowerCase()));
  return (
    <>
      <div class="histories-head no-print">
        <Choice
          title={words.historyOf}
          options={KINDS.map((id) => ({ id, name: words.histories[id] }))}
          chosen={of}
          onChoose={setOf}
        />
        <label class="field">
          <span>{words.only}</span>
          <input type="search" value={only} onInput={(event) => setOnly(event.currentTarget.value.trim())} />
        </label>
      </div>
      {of === "calls" ? (
        <Calls calls={review.calls.filter((one) => fits(one.machine, one.mark, one.by))} onEntry={onEntry} />
      ) : of === "marks" ? (
        review.marks
          .filter((one) => fits(one.mark))
          .map((one) => <OneMark key={one.mark} mark={one} photos={review.photos} />)
      ) : (
        review.set_ups
          .filter((one) => fits(one.set_up, one.laser))
          .map((one) => <OneSetUp key={one.set_up} setUp={one} />)
      )}
    </>
  );
}

function Calls({ calls, onEntry }: { calls: Review["calls"]; onEntry: (seq: number) => void }) {
  const words = t().review;
  const seconds = (at: number | null | undefined, sent: number) =>
    at == null ? "–" : ((at - sent) / 1_000).toFixed(1);
  const [, , , , , phone, painted, got] = words.callColumns;
  return (
    <div class="wide-table">
      <table class="stacked">
        <thead>
          <tr>
            {words.callColumns.map((name) => (
              <th key={name}>{name}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {calls.map((call) => (
            <tr key={call.call}>
              <td>
                <button type="button" class="line" onClick={() => onEntry(call.call)}>
                  {timeOfDay(call.sent_at, true)}
                </button>
              </td>
              <td>{call.by}</td>
              <td>{call.machine}</td>
              <td>{call.mark ?? ""}</td>
              <td>
                <strong>{call.shown_text ?? said(call)}</strong>
              </td>
              <td data-name={phone}>{seconds(call.delivered_at, call.sent_at)}</td>
              <td data-name={painted}>{seconds(call.shown_at, call.sent_at)}</td>
              <td data-name={got}>{seconds(call.got_at, call.sent_at)}</td>
              <td>{call.how ? t().endings[call.how] : ""}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

interface SentencesProps {
  said: readonly Sentence[];
  photos?: readonly PhotoCard[];
}

/** What was said, each with the photos that go with it. */
export function Sentences({ said: list, photos = [] }: SentencesProps) {
  if (list.length === 0) return <p>{t().review.none}</p>;
  return (
    <ul class="lines">
      {list.map((one) => (
        <li key={one.seq}>
          <span>
            {timeOfDay(one.at)} <strong>{one.by}</strong> {said(one)}
            <Figures photos={photosAt(one.seq, list, photos)} />
          </span>
        </li>
      ))}
    </ul>
  );
}

function OneMark({ mark, photos }: { mark: MarkHistory; photos: readonly PhotoCard[] }) {
  return (
    <section>
      <h3>{mark.mark}</h3>
      <Sentences said={mark.said} photos={photos} />
    </section>
  );
}

function OneSetUp({ setUp }: { setUp: SetUpHistory }) {
  const words = t().review;
  return (
    <section>
      <h3>
        {setUpName(setUp.set_up)} · {setUp.laser}
      </h3>
      <p>
        {setUp.basis.map((one) => `${one.benchmark} ${one.text}, HI ${feet(one.height)} ft`).join("; ")}.{" "}
        {words.readingsOn(setUp.readings)}
      </p>
      <p>
        {setUp.checks
          .map((one) => `${timeOfDay(one.at)} ${one.benchmark} ${signed(one.residual)}`)
          .join(" · ")}
      </p>
      <Sentences said={setUp.said} />
    </section>
  );
}
