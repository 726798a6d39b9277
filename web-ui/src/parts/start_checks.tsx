/** How the day begins: each check with what was seen, on the ground page and the supervisor's. */
import { useState } from "preact/hooks";
import { say } from "../hub";
import { dateOf, timeOfDay } from "../show";
import type { HandSignal, StartCard, StartCheckCard } from "../wire";
import { t } from "../words_later";
import { Field } from "./field";
import { Key } from "./keys";
import { Panel } from "./panel";
import { PhotoKey } from "./photo_key";

/** One line: READY since when, or how many checks have a value. */
export function startLine(start: StartCard): string {
  const words = t().crew.start;
  if (start.ready) return words.ready(start.ready.by, timeOfDay(start.ready.at));
  const said = start.checks.filter((one) => one.said).length;
  return words.notReady(said, start.checks.length);
}

/** Each check with its value; press it to say or correct one. */
export function StartChecks({ start }: { start: StartCard }) {
  const words = t().crew.start;
  const [open, setOpen] = useState<StartCheckCard | null>(null);
  return (
    <>
      <ul class="lines">
        {start.checks.map((one) => (
          <li key={one.check}>
            <span>
              <strong>{words.checks[one.check]}</strong> {saidOf(one, start)}
            </span>
            <Key kind="small" label={`${words.say} ${words.checks[one.check]}`} onPress={() => setOpen(one)}>
              {words.say}
            </Key>
          </li>
        ))}
      </ul>
      {open && (
        <SayPanel
          key={open.check}
          one={open}
          onClose={() => setOpen(null)}
          // What was typed leads to the next that nobody has said; "the same" leads back, or two presses would say two.
          onSent={() => setOpen(start.checks.find((one) => !one.said && one.check !== open.check) ?? null)}
        />
      )}
    </>
  );
}

function saidOf(one: StartCheckCard, start: StartCard): string {
  const words = t().crew.start;
  if (one.said) {
    return `${wordsOf(one.said)} · ${one.said.by} ${timeOfDay(one.said.at)}`;
  }
  const why = start.ready?.overrides.find((other) => other.check === one.check)?.why;
  return why ? words.without(why) : "–";
}

/** What was said: the signals, and the words. */
function wordsOf(said: NonNullable<StartCheckCard["said"]>): string {
  const signals = said.signals.map((signal) => t().crew.start.signals[signal]).join(", ");
  return [signals, said.value].filter(Boolean).join(" · ");
}

interface SayProps {
  one: StartCheckCard;
  onClose: () => void;
  onSent: () => void;
}

function SayPanel({ one, onClose, onSent }: SayProps) {
  const words = t().crew.start;
  const [value, setValue] = useState(one.said?.value ?? "");
  const [signals, setSignals] = useState<readonly HandSignal[]>(one.said?.signals ?? []);
  const bySign = one.check === "hand_signals";
  const [busy, setBusy] = useState(false);
  // What the hub refuses stays as it was typed.
  const send = async () => {
    setBusy(true);
    const what = { value: value.trim(), signals: [...signals] };
    const reply = await say({ kind: "say_start_check", check: one.check, ...what });
    setBusy(false);
    if (reply.kind === "answer") onSent();
  };
  const before = one.before;
  const again = () => {
    if (before) void say({ kind: "say_start_check", check: one.check, as_before: before.at });
    onClose();
  };
  return (
    <Panel title={words.checks[one.check]} onClose={onClose} closeWord={t().cancel}>
      {before && !one.said && (
        <>
          <p>{words.before(before.by, dateOf(before.as_before ?? before.at))}</p>
          <p>
            <strong>“{wordsOf(before)}”</strong>
          </p>
          <p>{words.asks[one.check]}</p>
          <Key kind="wide" onPress={again}>
            {words.seenSame}
          </Key>
          <p>{words.different}</p>
        </>
      )}
      {bySign && <Signals chosen={signals} onChosen={setSignals} />}
      <Field name={words.asks[one.check]} value={value} onValue={setValue} text />
      <PhotoKey kind="" about={{}} />
      <Key
        kind="send"
        disabled={busy || (bySign ? !signals.includes("stop") : value.trim() === "")}
        why={busy ? t().kept.owed.wait : bySign ? t().kept.owed.stop : t().kept.owed.words}
        onPress={() => void send()}
      >
        {t().send}
      </Key>
    </Panel>
  );
}

interface SignalsProps {
  chosen: readonly HandSignal[];
  onChosen: (signals: readonly HandSignal[]) => void;
}

function Signals({ chosen, onChosen }: SignalsProps) {
  const words = t().crew.start;
  const all = Object.keys(words.signals) as HandSignal[];
  const turn = (one: HandSignal) =>
    onChosen(chosen.includes(one) ? chosen.filter((other) => other !== one) : [...chosen, one]);
  return (
    <fieldset class="choice">
      <legend>{words.signalsAsk}</legend>
      <div class="tiles">
        {all.map((one) => (
          <Key key={one} kind="tile" pressed={chosen.includes(one)} onPress={() => turn(one)}>
            {words.signals[one]}
          </Key>
        ))}
      </div>
    </fieldset>
  );
}
