/** READ: pick the mark, type the rod, see what will be said, send it, see where it has got to. */
import { useState } from "preact/hooks";
import { say } from "../../hub";
import type { Settled } from "../../outbox";
import { Choice } from "../../parts/choice";
import { Keypad, textOf } from "../../parts/keypad";
import { Key } from "../../parts/keys";
import { LatePanel } from "../../parts/late_panel";
import { Panel } from "../../parts/panel";
import { feet } from "../../show";
import { language } from "../../state";
import type { SheetMark, StepSide, TakeReading } from "../../wire";
import { t } from "../../words";
import { AskAfterAll, AskToComeIn } from "./ask_in";
import { choose, chosen, digTo, mark, nearStep, rod, setUp } from "./at";
import { echo } from "./echo";
import { EdgePanel } from "./edge";
import { EyePanel } from "./eye";
import { MarkStrip, RodMust } from "./mark_strip";
import { begin, leaving, type Sent, sent, unsettled, wrong } from "./open";
import { SentCard } from "./sent";
import { toAsk } from "./way_in";

interface ReadProps {
  onLaser: () => void;
  onMarks: () => void;
  onWith: () => void;
}

export function ReadPage(props: ReadProps) {
  const send = (command: TakeReading) => {
    const mine: Sent = { command, reply: null };
    sent.value = mine;
    wrong.value = null;
    void say(command, false, chosen.value.paper?.at).then((reply: Settled) => {
      if (sent.value === mine) sent.value = { ...mine, reply };
    });
  };
  // The cab's number goes at once, whatever becomes of the right one.
  const callWrong = (reading: number, at: string) => {
    void say({ kind: "wrong_number", reading });
    begin();
    wrong.value = { reading, mark: at };
  };
  return (
    <>
      {sent.value ? (
        <SentCard sent={sent.value} onSend={send} onAgain={() => begin()} onRestate={callWrong} />
      ) : (
        <Reading {...props} restates={wrong.value?.reading ?? null} onSend={send} />
      )}
      {leaving.value && <Leaving />}
    </>
  );
}

/** Before another mark is chosen over one that is not settled. */
export function Leaving() {
  const words = t().kept;
  const open = unsettled.value;
  const go = leaving.value;
  if (!open || !go) return null;
  const stay = () => {
    leaving.value = null;
  };
  return (
    <Panel title={words.leaving(open.mark)} onClose={stay} closeWord={words.stayHere}>
      <p>{open.what === "wrong" ? words.leavingWrong : words.leavingQuestion}</p>
      <Key kind="wide" onPress={() => begin(go)}>
        {words.leaveIt}
      </Key>
    </Panel>
  );
}

interface ReadingProps extends ReadProps {
  restates: number | null;
  onSend: (command: TakeReading) => void;
}

function Reading({ restates, onSend, onLaser, onMarks, onWith }: ReadingProps) {
  const [typed, setTyped] = useState("");
  const [over, setOver] = useState<1 | -1 | 0>(0);
  const [eye, setEye] = useState(false);
  const [edge, setEdge] = useState(false);
  const [refused, setRefused] = useState(false);
  const [more, setMore] = useState(false);
  const words = t();
  const { receiver, care, side, paper } = chosen.value;
  const pad = receiver ? "receiver" : (rod.value?.unit ?? "feet_hundredths");
  const text = textOf(pad, typed);
  const said = echo(text, receiver ? over : null, restates);
  const here = mark.value;
  // What was read long ago needs nobody in the keep-out now.
  const asked = paper ? [] : toAsk(here);
  const sideOwed = nearStep(here) && side === null;
  const owed = owes(said.problem, sideOwed);
  const ready = owed === null && !!here && !!setUp.value && !!rod.value;
  const send = () => {
    if (!ready || !here || !setUp.value || !rod.value) return;
    onSend({
      kind: "take_reading",
      mark: here.id,
      set_up: setUp.value.id,
      rod: rod.value.id,
      text,
      mode: receiver ? (over > 0 ? "receiver_high" : "receiver_low") : "rod",
      care,
      ...(chosen.value.machine ? { machine: chosen.value.machine } : {}),
      ...(side ? { side } : {}),
      ...(restates ? { restates } : {}),
      ...(paper ? { paper: paper.by } : {}),
    });
  };
  return (
    <div class="read">
      <div class="read-top">
        <MarkStrip
          onMarks={onMarks}
          onLaser={onLaser}
          onWith={onWith}
          onEdge={() => (asked.length > 0 ? setRefused(true) : setEdge(true))}
          onMore={() => setMore(true)}
        />
        {refused && asked.length > 0 && (
          <p class="warning" role="alert">
            {words.wayIn.edgeFirst(here?.id ?? "")}
          </p>
        )}
        {restates !== null && <p class="warning">{words.restating}</p>}
        {sideOwed || nearStep(here) ? <SideChoice /> : null}
      </div>
      {asked.length > 0 && here ? (
        <AskToComeIn cards={asked} mark={here} />
      ) : (
        <div class="read-pad">
          {receiver && <OverChoice over={over} onOver={setOver} />}
          <Keypad pad={pad} typed={typed} label={words.ready} onTyped={setTyped} onSend={send}>
            <EchoLine said={said} typed={typed !== ""} />
          </Keypad>
          <div class="send-row">
            <Key kind="eye" onPress={() => setEye(true)}>
              {words.eyeKey}
            </Key>
            <Key kind="send" disabled={!ready} why={owed} onPress={send}>
              {words.send}
            </Key>
          </div>
          <AskAfterAll mark={paper ? null : here} />
        </div>
      )}
      {eye && <EyePanel onClose={() => setEye(false)} />}
      {more && asked.length === 0 && (
        <LatePanel title={words.more} onClose={() => setMore(false)}>
          {(late) => <late.MorePanel onSend={onSend} onClose={() => setMore(false)} />}
        </LatePanel>
      )}
      {edge && asked.length === 0 && <EdgePanel onClose={() => setEdge(false)} />}
    </div>
  );
}

/** What SEND waits for, the first thing first. */
function owes(problem: string | null, side: boolean): string | null {
  const { owed } = t().kept;
  if (!mark.value) return owed.mark;
  if (!setUp.value) return owed.setUp;
  if (side) return owed.side;
  return problem;
}

interface EchoLineProps {
  said: ReturnType<typeof echo>;
  typed: boolean;
}

/** Why a mark that names a target has no grade, in this screen's language. */
const noGrade = (mark: SheetMark & { no_grade_spanish?: string | null }) =>
  (language.value === "spanish" ? mark.no_grade_spanish : null) ?? mark.no_grade;

/** What it will say; before a key is pressed, what the rod must read. */
function EchoLine({ said, typed }: EchoLineProps) {
  const here = mark.value;
  const nothing = here && !here.dig_to ? (noGrade(here) ?? t().noTarget) : "";
  return (
    <div class="echo" role="status">
      {!typed && !chosen.value.receiver && <RodMust />}
      {typed && said.problem ? said.problem : (typed && said.ground) || nothing}
      {typed && said.call && <strong> → {chosen.value.paper ? t().noCall : said.call}</strong>}
    </div>
  );
}

function SideChoice() {
  const words = t();
  const at = mark.value?.dig_to;
  if (!at || !("near_step" in at)) return null;
  const note = (side: StepSide) => digTo(mark.value, side);
  const show = (value: number | null) => (value === null ? "" : feet(value));
  return (
    <Choice
      title={words.nearStep}
      options={[
        { id: "before", name: words.before, note: show(note("before")) },
        { id: "after", name: words.after, note: show(note("after")) },
      ]}
      chosen={chosen.value.side}
      onChoose={(side: StepSide) => choose({ side })}
    />
  );
}

function OverChoice({ over, onOver }: { over: number; onOver: (over: 1 | -1) => void }) {
  return (
    <Choice
      title={t().receiverAsk}
      options={[
        { id: "high", name: t().high },
        { id: "low", name: t().low },
      ]}
      chosen={over === 0 ? null : over > 0 ? "high" : "low"}
      onChoose={(id: "high" | "low") => onOver(id === "high" ? 1 : -1)}
    />
  );
}
