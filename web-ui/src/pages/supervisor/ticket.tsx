/** CHECK TICKET: who has answered what, kind by kind, before the day begins. */
import { useState } from "preact/hooks";
import { say } from "../../hub";
import { Choice } from "../../parts/choice";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import type { Answered, TicketCard } from "../../wire";
import { t } from "./words";

const ANSWERS: readonly Answered[] = ["marked", "none_here", "silent"];

export function TicketPanel({ card, onClose }: { card: TicketCard; onClose: () => void }) {
  const words = t().cuts;
  const [answers, setAnswers] = useState<Partial<Record<string, Answered>>>({});
  const responses = card.asks.flatMap((kind) => {
    const answer = answers[kind];
    return answer ? [{ kind, answer }] : [];
  });
  const ready = responses.length === card.asks.length;
  const send = () => {
    if (!ready) return;
    void say({ kind: "check_ticket", ticket: card.id, responses });
    onClose();
  };
  return (
    <Panel title={`${words.checkTicket} ${card.id}`} onClose={onClose} closeWord={t().cancel}>
      {card.asks.map((kind) => (
        <Choice
          key={kind}
          title={words.kinds[kind]}
          options={ANSWERS.map((id) => ({ id, name: words.answers[id] }))}
          chosen={answers[kind] ?? null}
          onChoose={(answer) => setAnswers({ ...answers, [kind]: answer })}
        />
      ))}
      <Key kind="send" disabled={!ready} onPress={send}>
        {words.checkTicket}
      </Key>
    </Panel>
  );
}
