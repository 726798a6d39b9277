/** One benchmark on site: a point, the laser at another height, the benchmark, the point again. */
import { useState } from "preact/hooks";
import { setUpName } from "../../given_names";
import { say } from "../../hub";
import { Panel } from "../../parts/panel";
import type { Outcome, SetUpCard } from "../../wire";
import { t } from "../../words_later";
import { RodStep } from "./rod_step";

export function LevelPanel({ card, onClose }: { card: SetUpCard; onClose: () => void }) {
  const words = t();
  const [read, setRead] = useState<string[]>([]);
  const [came, setCame] = useState<Outcome | null>(null);
  const next = async (text: string, rod: string) => {
    const all = [...read, text];
    setRead(all);
    const [before, benchmark, again] = all;
    if (before === undefined || benchmark === undefined || again === undefined) return;
    const reply = await say({
      kind: "level_again",
      set_up: card.id,
      rod,
      point_before: before,
      benchmark_again: benchmark,
      point_again: again,
    });
    if (reply.kind === "answer") setCame(reply.answer.outcome);
    else setRead([]);
  };
  return (
    <Panel title={`${setUpName(card.id)}: ${words.levelAgain}`} onClose={onClose}>
      {came ? (
        <p class="sent-line" role="status">
          {words.proven(setUpName(card.id))}
        </p>
      ) : (
        <RodStep
          key={read.length}
          title={`${read.length + 1}. ${words.levelSteps[read.length] ?? ""}`}
          onSend={(text, rod) => void next(text, rod)}
        />
      )}
    </Panel>
  );
}
