/** What every form of CONTROL has: names to pick, figures to type, and what the hub says to it. */
import type { ComponentChildren } from "preact";
import { useId, useState } from "preact/hooks";
import { log, say } from "../../hub";
import { Key } from "../../parts/keys";
import { said } from "../../said";
import { sheet } from "../../state";
import type { Command, LogLine } from "../../wire";
import { t } from "../../words_later";
import { c } from "./words";

interface PickProps {
  name: string;
  value: string;
  options: readonly string[];
  onPick: (id: string) => void;
  /** How a name of the hub's is read. */
  read?: (id: string) => string;
}

export function Pick({ name, value, options, onPick, read = String }: PickProps) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{name}</label>
      <select id={id} value={value} onChange={(event) => onPick(event.currentTarget.value)}>
        <option value="">–</option>
        {options.map((one) => (
          <option key={one} value={one}>
            {read(one)}
          </option>
        ))}
      </select>
    </div>
  );
}

/** The rod that is read; the only one there is needs no choice. */
export function useRod(): [string, ComponentChildren] {
  const rods = (sheet.value?.rods ?? []).map((one) => one.id);
  const [rod, setRod] = useState(rods.length === 1 ? (rods[0] ?? "") : "");
  return [rod, <Pick key="rod" name={t().rod} value={rod} options={rods} onPick={setRod} />];
}

interface SendsProps {
  /** Nothing while something is missing. */
  command: Command | null;
}

/** Sends it, and shows what went into the log, or what was wrong; what was typed stays. */
export function Sends({ command }: SendsProps) {
  const [came, setCame] = useState<LogLine[]>([]);
  const [trouble, setTrouble] = useState("");
  const [sending, setSending] = useState(false);
  const send = async () => {
    if (!command || sending) return;
    setSending(true);
    setCame([]);
    setTrouble("");
    const reply = await say(command, true);
    setSending(false);
    if (reply.kind === "refused") setTrouble(said(reply.refused));
    if (reply.kind !== "answer") return;
    const { first, last } = reply.answer;
    const got = last < first ? null : await log({ after: first - 1, limit: last - first + 1 });
    setTrouble(got && !got.ok ? got.text : "");
    setCame(got?.ok ? got.value.lines : []);
  };
  return (
    <>
      <Key
        kind="send"
        disabled={!command || sending}
        why={sending ? t().kept.owed.wait : t().kept.owed.something}
        onPress={() => void send()}
      >
        {c().send}
      </Key>
      {trouble && <p class="trouble">{trouble}</p>}
      <div role="status">
        {came.map((line) => (
          <p class="sent-line" key={line.seq}>
            {said(line)}
          </p>
        ))}
      </div>
    </>
  );
}
