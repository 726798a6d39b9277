/** Calls by eye, without a number. They never close a mark. */
import { say } from "../../hub";
import { Choice } from "../../parts/choice";
import { Panel } from "../../parts/panel";
import { ground } from "../../state";
import type { QuickWord } from "../../wire";
import { t } from "../../words";
import { machine, mark } from "./at";

const WORDS: readonly QuickWord[] = ["more", "a_little", "there", "too_deep", "come_to_me", "look_here"];

export function EyePanel({ onClose }: { onClose: () => void }) {
  const to = machine.value ?? ground.value?.machines[0] ?? null;
  if (!to) return null;
  const send = (word: QuickWord) => {
    const here = mark.value;
    void say({ kind: "quick_call", machine: to.id, word, ...(here ? { mark: here.id } : {}) });
    onClose();
  };
  return (
    <Panel title={t().eyeTo(to.id)} onClose={onClose} closeWord={t().cancel}>
      <Choice
        title={mark.value?.id ?? ""}
        kind="large"
        options={WORDS.map((id) => ({ id, name: t().quick[id] }))}
        onChoose={send}
      />
    </Panel>
  );
}
