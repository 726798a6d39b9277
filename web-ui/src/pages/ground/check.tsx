/** A check shot: the rod on a benchmark proves that the set-up holds, or puts it in doubt. */
import { useState } from "preact/hooks";
import { setUpName } from "../../given_names";
import { rodText } from "../../grade";
import { say } from "../../hub";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { length } from "../../show";
import { unit } from "../../state";
import type { Outcome, SetUpCard, Slip } from "../../wire";
import { t } from "../../words_later";
import { rod } from "./at";
import { RodStep } from "./rod_step";
import { BenchmarkChoice } from "./set_up";

type Checked = Extract<Outcome, { kind: "checked" }>;

export function CheckPanel({ card, onClose }: { card: SetUpCard; onClose: () => void }) {
  const words = t();
  const [benchmark, setBenchmark] = useState<string | null>(null);
  const [came, setCame] = useState<Outcome | null>(null);
  const send = async (text: string, on: string) => {
    if (benchmark === null) return;
    const reply = await say({ kind: "shoot_check", set_up: card.id, benchmark, rod: on, text });
    if (reply.kind === "answer") setCame(reply.answer.outcome);
  };
  const again = () => {
    setCame(null);
    setBenchmark(null);
  };
  const owed = card.state.kind === "unproven";
  return (
    <Panel
      title={`${setUpName(card.id)}: ${owed ? words.secondBenchmark : words.checkShot}`}
      onClose={onClose}
    >
      {came ? (
        <Came outcome={came} set_up={card.id} onAgain={again} />
      ) : benchmark === null ? (
        <>
          {owed && <p>{words.secondOwed}</p>}
          <BenchmarkChoice used={card.benchmark} onChoose={setBenchmark} />
        </>
      ) : (
        <RodStep title={words.rodOnBenchmark(benchmark)} onSend={(text, on) => void send(text, on)} />
      )}
    </Panel>
  );
}

interface CameProps {
  outcome: Outcome;
  set_up: string;
  onAgain: () => void;
}

function Came({ outcome, set_up, onAgain }: CameProps) {
  const words = t();
  if (outcome.kind === "proven") return <p class="sent-line">{words.proven(setUpName(set_up))}</p>;
  if (outcome.kind !== "checked") return <p class="sent-line">{words.outcome.noChange}</p>;
  return (
    <div role="status">
      <p class="sent-line">{words.checked[outcome.check](length(outcome.residual, unit.value))}</p>
      {outcome.usable && <p>{words.usable}</p>}
      <Slips outcome={outcome} />
      <Key kind="wide" onPress={onAgain}>
        {words.readAgain}
      </Key>
    </div>
  );
}

/** Slips that would explain a misclosure: asked, never applied. */
function Slips({ outcome }: { outcome: Checked }) {
  if (outcome.slips.length === 0) return null;
  return (
    <>
      <p>{t().slipsAsk}</p>
      <ul>
        {outcome.slips.map((slip) => (
          <li key={JSON.stringify(slip)}>{slipWords(slip)}</li>
        ))}
      </ul>
    </>
  );
}

function slipWords(slip: Slip): string {
  const words = t().slips;
  const read = (value: number) => (rod.value ? rodText(rod.value, value) : length(value, unit.value));
  switch (slip.kind) {
    case "other_benchmark":
      return words.other_benchmark(slip.used, slip.perhaps);
    case "digits_swapped":
      return words.digits_swapped(read(slip.typed), read(slip.perhaps));
    case "laser_moved":
      return words.laser_moved(slip.shoot, read(slip.reads));
    case "inches_as_tenths":
      return words.inches_as_tenths(read(slip.typed), read(slip.perhaps));
    default:
      return words[slip.kind];
  }
}
