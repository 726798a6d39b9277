/** SUMS: layout that a person would work out on the back of a stake, worked out by the hub. */
import { useState } from "preact/hooks";
import { compute, say } from "../../hub";
import { Choice } from "../../parts/choice";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { language } from "../../state";
import { sums } from "../../words.gen/sums";
import { t } from "../../words_later";
import { mark } from "./at";

/** Each sum with what goes in, in the order in which it is asked for; lengths may be typed in feet alone. */
const SUMS = {
  offset_hub: ["top", "dig_to", "offset"],
  slope_tape: ["slope", "rise"],
  diagonals: ["base", "across", "a_to_c", "b_to_d"],
  corner: ["one", "other", "between"],
  swing_tie: ["first", "first_tape", "second", "second_tape"],
  batter_string: ["first_board", "second_board", "apart", "along", "dig_to"],
  width: ["strict_edge", "free_edge", "least_width", "strict_drawn"],
} as const;

type Sum = keyof typeof SUMS;
const NAMES = Object.keys(SUMS) as Sum[];

/** A bare number is feet; two parted by a blank or a semicolon are a place, east then north. */
export function withUnit(typed: string): string {
  const bare = /^[−-]?\d+([.,]\d+)?$/;
  return typed
    .trim()
    .split(/\s*;\s*|\s+(?=[−-]?\d+(?:[.,]\d+)?$)/)
    .map((part) => (bare.test(part) ? `${part} ft` : part))
    .join("; ");
}

export function SumsPanel({ onClose }: { onClose: () => void }) {
  const words = t();
  const own = sums[language.value];
  const [sum, setSum] = useState<Sum>("offset_hub");
  const [typed, setTyped] = useState<Record<string, string>>({});
  const [came, setCame] = useState<[string, string][]>([]);
  const [trouble, setTrouble] = useState("");
  const names = SUMS[sum];
  const ready = names.every((name) => (typed[name] ?? "").trim() !== "");
  const work = async () => {
    const inputs = Object.fromEntries(names.map((name) => [name, withUnit(typed[name] ?? "")]));
    const answer = await compute(sum, inputs);
    setTrouble(answer.ok ? "" : answer.text);
    setCame(answer.ok ? Object.entries(answer.value.outputs) : []);
  };
  return (
    <Panel title={words.sums} onClose={onClose}>
      <Choice
        kind="names"
        title={own.whichSum}
        options={NAMES.map((id) => ({ id, name: own.sumNames[id] }))}
        chosen={sum}
        onChoose={(id: Sum) => {
          setSum(id);
          setCame([]);
          setTrouble("");
        }}
      />
      <div class="asks-two fields">
        {names.map((name) => (
          <label class="field" key={name}>
            <span>{own.sumInputs[name]}</span>
            <input
              inputMode="decimal"
              autocomplete="off"
              value={typed[name] ?? ""}
              onInput={(event) => setTyped({ ...typed, [name]: event.currentTarget.value })}
            />
          </label>
        ))}
      </div>
      <div class="send-row panel-send">
        <Key kind="send" disabled={!ready} why={t().kept.owed.number} onPress={() => void work()}>
          {own.workOut}
        </Key>
      </div>
      {sum === "diagonals" && came.length > 0 && (
        <Key
          kind="wide"
          onPress={() => {
            const what = mark.value?.target ?? mark.value?.id ?? own.sumNames.diagonals;
            const [base = "", across = "", a_to_c = "", b_to_d = ""] = SUMS.diagonals.map((name) =>
              withUnit(typed[name] ?? ""),
            );
            void say({ kind: "measure_diagonals", what, base, across, a_to_c, b_to_d });
            onClose();
          }}
        >
          {own.enterDiagonals(mark.value?.target ?? mark.value?.id ?? "")}
        </Key>
      )}
      {trouble && <p class="warning">{trouble}</p>}
      <div role="status">
        <dl class="sum-came">
          {came.map(([name, value]) => (
            <div key={name}>
              <dt>{own.sumOutputs[name as keyof typeof own.sumOutputs] ?? name}</dt>
              <dd>{own.sumSays[value as keyof typeof own.sumSays] ?? value}</dd>
            </div>
          ))}
        </dl>
      </div>
      <p>{own.sumNote}</p>
    </Panel>
  );
}
