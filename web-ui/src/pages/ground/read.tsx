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
import type { StepSide, TakeReading } from "../../wire";
import { t } from "../../words";
import { AskToComeIn, InBar } from "./ask_in";
import { choose, chosen, digTo, keptLines, mark, nearStep, rod, setUp } from "./at";
import { NotSentBefore, remembersEcho } from "./by_hand";
import { echo } from "./echo";
import { EchoRows } from "./echo_rows";
import { KeepOutLine, MarkKey, MarkSteps } from "./mark_strip";
import { begin, leaving, type Sent, sent, unsettled, wrong } from "./open";
import { ReadKeys } from "./read_keys";
import { LaserState, SendRow } from "./send_row";
import { SentCard } from "./sent";
import { toAsk } from "./way_in";

interface ReadProps {
  onMarks: () => void;
  onWith: () => void;
}

export function ReadPage(props: ReadProps) {
  const send = (command: TakeReading) => {
    const mine: Sent = { command, reply: null };
    remembersEcho(command);
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
        <>
          <InBar />
          <SentCard sent={sent.value} onSend={send} onAgain={() => begin()} onRestate={callWrong} />
        </>
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

function Reading({ restates, onSend, onMarks, onWith }: ReadingProps) {
  const [typed, setTyped] = useState("");
  const [over, setOver] = useState<1 | -1 | 0>(0);
  const [open, setOpen] = useState<"eye" | "edge" | "more" | null>(null);
  const [refused, setRefused] = useState(false);
  const words = t();
  const { receiver, care, side, paper } = chosen.value;
  const pad = receiver ? "receiver" : (rod.value?.unit ?? "feet_hundredths");
  const text = textOf(pad, typed);
  const said = echo(text, receiver ? over : null, restates);
  const here = mark.value;
  // What was read long ago needs nobody in the keep-out now.
  const asked = paper ? [] : toAsk(here);
  const owed = owes(said.problem, nearStep(here) && side === null);
  const ready = owed === null && !!here && !!setUp.value && !!rod.value;
  const close = () => setOpen(null);
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
  if (asked.length > 0 && here) {
    return (
      <div class="read asking">
        <InBar />
        <div class="window-row">
          <MarkSteps>
            <MarkKey onMarks={onMarks} bare />
          </MarkSteps>
          {keptLines().length > 0 && (
            <Key kind="chip" onPress={() => setRefused(true)}>
              {words.edge}
            </Key>
          )}
        </div>
        {refused && (
          <p class="warning" role="alert">
            {words.wayIn.edgeFirst(here.id)}
          </p>
        )}
        <LaserState owed />
        <AskToComeIn cards={asked} mark={here} />
      </div>
    );
  }
  return (
    <div class="read">
      <div class="read-top">
        <KeepOutLine />
        <NotSentBefore />
        {restates !== null && <p class="warning">{words.restating}</p>}
        {nearStep(here) && <SideChoice />}
        {receiver && <OverChoice over={over} onOver={setOver} />}
      </div>
      <Keypad
        pad={pad}
        typed={typed}
        label={words.ready}
        onTyped={setTyped}
        onSend={send}
        between={
          <div class="between">
            <ReadKeys onWith={onWith} onEdge={() => setOpen("edge")} onMore={() => setOpen("more")} />
            <EchoRows said={said} typed={typed !== ""} />
          </div>
        }
      >
        <MarkKey onMarks={onMarks} />
      </Keypad>
      <SendRow>
        <Key kind="eye" onPress={() => setOpen("eye")}>
          {words.eyeKey}
        </Key>
        <Key kind={said.kept ? "keep" : "send"} disabled={!ready} why={owed} onPress={send}>
          {said.kept ? words.keepKey : words.send}
        </Key>
      </SendRow>
      {open === "eye" && (
        <LatePanel title={words.eyeKey} onClose={close}>
          {(late) => <late.EyePanel onClose={close} />}
        </LatePanel>
      )}
      {open === "more" && (
        <LatePanel title={words.more} onClose={close}>
          {(late) => <late.MorePanel onSend={onSend} onClose={close} />}
        </LatePanel>
      )}
      {open === "edge" && (
        <LatePanel title={words.edgeAt(here?.id ?? "")} onClose={close}>
          {(late) => <late.EdgePanel onClose={close} />}
        </LatePanel>
      )}
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
