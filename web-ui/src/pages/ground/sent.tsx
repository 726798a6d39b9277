/** After SEND: where the call has got to, in plain words; take it back, restate it, or go on. */
import { say } from "../../hub";
import { notSent } from "../../outbox";
import { labelWords, live, stateWords } from "../../parts/call";
import { Key } from "../../parts/keys";
import { PhotoKey } from "../../parts/photo_key";
import { Shape } from "../../parts/shape";
import { said } from "../../said";
import { feet, length, overFeet, signed } from "../../show";
import { ground, unit } from "../../state";
import type { CallView, MachineCard, Outcome, TakeReading } from "../../wire";
import { t } from "../../words";
import { machine, mark, step } from "./at";
import { ByHand } from "./by_hand";
import { groundLine } from "./echo";
import { Unbroken } from "./large";
import type { Sent } from "./open";
import { QuestionCard } from "./question";
import { SendRow } from "./send_row";

interface SentProps {
  sent: Sent;
  onSend: (command: TakeReading) => void;
  onAgain: () => void;
  onRestate: (reading: number, mark: string) => void;
}

export function SentCard({ sent, onSend, onAgain, onRestate }: SentProps) {
  const words = t();
  const reply = sent.reply;
  if (reply?.kind === "answer" && reply.answer.outcome.kind === "asked") {
    return (
      <QuestionCard command={sent.command} asked={reply.answer.outcome} onSend={onSend} onAgain={onAgain} />
    );
  }
  const reading = reply?.kind === "answer" ? reply.answer.first : null;
  return (
    <div class="sent">
      <div class="sent-what">
        {reply?.kind === "answer" ? (
          <Came outcome={reply.answer.outcome} />
        ) : !reply && isNotSent(sent) ? (
          <ByHand command={sent.command} />
        ) : (
          <p class="state" role="status">
            {reply?.kind === "dropped"
              ? words.kept.dropped
              : reply
                ? words.outcome.noChange
                : words.states.waiting}
          </p>
        )}
      </div>
      <div class="sent-keys">
        <div class="sent-less">
          <Key onPress={onAgain}>{words.readAgain}</Key>
          {reading && (
            <Key onPress={() => onRestate(reading, sent.command.mark || mark.value?.id || "")}>
              {words.restate}
            </Key>
          )}
          <PhotoKey
            kind=""
            about={{ ...(mark.value ? { mark: mark.value.id } : {}), ...(reading ? { entry: reading } : {}) }}
          />
        </div>
        <SendRow>
          <Key
            kind="send"
            onPress={() => {
              step(1);
              onAgain();
            }}
          >
            {words.nextMark} ▸
          </Key>
        </SendRow>
      </div>
    </div>
  );
}

const isNotSent = (sent: Sent) => notSent.value.some((item) => item.command === sent.command);

function Came({ outcome }: { outcome: Outcome }) {
  const words = t();
  switch (outcome.kind) {
    case "called":
      return <Called outcome={outcome} />;
    case "needs_ruling":
      return <Plain title={signed(outcome.dev)} text={words.outcome.needsRuling} />;
    case "from_paper":
      return (
        <Plain
          title={`${mark.value?.id ?? ""}: ${groundLine(outcome.dev, outcome.verdict)}`}
          text={words.outcome.paper}
        />
      );
    case "spot":
      return (
        <Plain
          title={mark.value?.id ?? ""}
          text={words.outcome.spot(`${feet(outcome.elevation)} ft`, words.spot[outcome.why])}
        />
      );
    case "late":
      return (
        <Plain
          title={mark.value?.id ?? ""}
          text={
            outcome.why.kind === "newer_reading"
              ? words.outcome.late(outcome.why.by)
              : outcome.why.kind === "newer_call"
                ? words.outcome.newerCall(outcome.why.mark)
                : outcome.why.kind === "day_closed"
                  ? words.outcome.dayClosed
                  : words.outcome.tooOld
          }
        />
      );
    default:
      return <Plain title={mark.value?.id ?? ""} text={words.outcome.noChange} />;
  }
}

function Plain({ title, text }: { title: string; text: string }) {
  return (
    <div role="status">
      <p class="sent-line">{title}</p>
      <p>{text}</p>
    </div>
  );
}

type CalledOutcome = Extract<Outcome, { kind: "called" }>;

function Called({ outcome }: { outcome: CalledOutcome }) {
  const words = t();
  const card = ground.value?.machines.find((one) => one.id === outcome.machine) ?? machine.value;
  const call = card?.call?.id === outcome.call ? card.call : null;
  const newer = !!card?.call && card.call.id > outcome.call;
  const state = call && card ? stateWords(call, card) : newer ? words.endings.superseded : words.states.sent;
  return (
    <>
      <p class="sent-line">
        {card && <Shape of={card.shape} />}
        <span>
          <Unbroken of={`${outcome.machine}: ${said(outcome)}`} />
        </span>
      </p>
      <p class="state" role="status">
        {state}
      </p>
      {call && card && <CallKeys call={call} card={card} />}
    </>
  );
}

/** What the ground person can do with a live call. */
function CallKeys({ call, card }: { call: CallView; card: MachineCard }) {
  const words = t();
  const dev = call.message.kind === "measured" ? call.message.dev : null;
  return (
    <>
      <p>
        {call.mark}{" "}
        {dev === null
          ? ""
          : `${signed(dev)} ft${unit.value === "tenths" ? "" : ` = ${length(dev, unit.value)}`}`}
        {labelWords(call).map((label) => ` · ${label}`)}
      </p>
      {card.beyond_reach != null && <p>{words.crew.beyondReach(card.id, overFeet(card.beyond_reach))}</p>}
      {card.stop && <p class="trouble">{words.stopped(card.id, card.stop.by)}</p>}
      {live(call) && (
        <div class="tiles">
          <Key
            kind="tile"
            disabled={call.state.kind === "got"}
            why={t().kept.owed.gotIt}
            onPress={() => void say({ kind: "saw_nod", call: call.id })}
          >
            {words.nod}
          </Key>
          <Key kind="tile" onPress={() => void say({ kind: "withdraw_call", call: call.id })}>
            {words.withdraw}
          </Key>
        </div>
      )}
    </>
  );
}
