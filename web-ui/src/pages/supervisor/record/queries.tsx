/** Queries to the engineer: what is asked, what waits for it, and the answer with its revision. */
import { useState } from "preact/hooks";
import { say } from "../../../hub";
import { Choice } from "../../../parts/choice";
import { Field } from "../../../parts/field";
import { Key } from "../../../parts/keys";
import { Panel } from "../../../parts/panel";
import { PhotoKey } from "../../../parts/photo_key";
import { timeOfDay } from "../../../show";
import { sheet } from "../../../state";
import type { QueryCard, Supervisor } from "../../../wire";
import { Figures } from "../figures";
import { t } from "../words";
import { Pick } from "./pick";

export function Queries({ view }: { view: Supervisor }) {
  const words = t().record;
  const [asks, setAsks] = useState(false);
  const [answers, setAnswers] = useState<QueryCard | null>(null);
  return (
    <section aria-label={words.queries}>
      <h2>{words.queries}</h2>
      {view.record.queries.map((one) => (
        <div class="card" key={one.asked.query}>
          <p>
            <strong>{one.asked.query}</strong> {one.asked.on.join(", ")} · {one.asked.of} · {one.by}{" "}
            {timeOfDay(one.at)}
          </p>
          <p>{one.asked.question}</p>
          <Figures photos={view.record.photos.filter((photo) => photo.photo === one.asked.photo)} />
          {one.answers.length === 0 && (
            <p class={one.asked.stop ? "warning" : "quiet"}>
              {one.asked.stop ? words.stopsWork : words.carriesOn}
            </p>
          )}
          {one.answers.map((answer) => (
            <p key={answer.answer}>
              {words.answeredBy(answer.answered_by, answer.answer)}
              {answer.revision && ` · ${words.byRevision(answer.revision.target, answer.revision.revision)}`}
            </p>
          ))}
          <Key kind="small" label={`${words.answer} ${one.asked.query}`} onPress={() => setAnswers(one)}>
            {words.answer}
          </Key>
        </div>
      ))}
      <div class="tiles">
        <Key kind="tile" onPress={() => setAsks(true)}>
          {words.askQuery}
        </Key>
      </div>
      {asks && <AskPanel onClose={() => setAsks(false)} />}
      {answers && <AnswerPanel query={answers} onClose={() => setAnswers(null)} />}
    </section>
  );
}

function AskPanel({ onClose }: { onClose: () => void }) {
  const words = t().record;
  const [question, setQuestion] = useState("");
  const [of, setOf] = useState("");
  const [on, setOn] = useState<string[]>([]);
  const [photo, setPhoto] = useState<string | null>(null);
  const [stops, setStops] = useState<"stop" | "go" | null>(null);
  const targets = (sheet.value?.targets ?? []).map(({ id, name }) => ({ id, name: name || id }));
  const marks = (sheet.value?.marks ?? []).map(({ id }) => ({ id, name: id }));
  const ready = question.trim() && of.trim() && on.length > 0 && stops;
  return (
    <Panel title={words.askQuery} onClose={onClose} closeWord={t().cancel}>
      <Field name={words.question} text value={question} onValue={setQuestion} />
      <Field name={words.queryOf} text value={of} onValue={setOf} />
      <Choice
        title={words.queryStops}
        options={[
          { id: "stop", name: words.stop },
          { id: "go", name: words.carryOn },
        ]}
        chosen={stops}
        onChoose={setStops}
      />
      {photo ? <p role="status">{words.withPhoto}</p> : <PhotoKey about={{}} onKept={setPhoto} />}
      <Pick title={words.queryOn} all={[...targets, ...marks]} picked={on} onPick={setOn} />
      <Key
        kind="send"
        disabled={!ready}
        onPress={() => {
          void say({
            kind: "ask_query",
            question,
            of,
            on,
            stop: stops === "stop",
            ...(photo ? { photo } : {}),
          });
          onClose();
        }}
      >
        {words.askQuery}
      </Key>
    </Panel>
  );
}

function AnswerPanel({ query, onClose }: { query: QueryCard; onClose: () => void }) {
  const words = t().record;
  const [answer, setAnswer] = useState("");
  const [by, setBy] = useState("");
  const [target, setTarget] = useState("");
  const all = (sheet.value?.targets ?? []).map(({ id, name }) => ({ id, name: name || id }));
  return (
    <Panel title={`${words.answer}: ${query.asked.query}`} onClose={onClose} closeWord={t().cancel}>
      <p>{query.asked.question}</p>
      <Field name={words.answerWords} text value={answer} onValue={setAnswer} />
      <Field name={words.answerBy} text value={by} onValue={setBy} />
      <Choice
        title={words.answerTarget}
        options={[{ id: "", name: words.noTarget }, ...all]}
        chosen={target}
        onChoose={setTarget}
      />
      <Key
        kind="send"
        disabled={!answer.trim() || !by.trim()}
        onPress={() => {
          const revised = target ? { target } : {};
          void say({ kind: "answer_query", query: query.asked.query, answer, answered_by: by, ...revised });
          onClose();
        }}
      >
        {words.answer}
      </Key>
    </Panel>
  );
}
