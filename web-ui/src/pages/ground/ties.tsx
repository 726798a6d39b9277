/** TIES: what a machine takes next and nothing would bring back, with the two tapes to take first. */
import { useState } from "preact/hooks";
import { say } from "../../hub";
import { Choice } from "../../parts/choice";
import { Field } from "../../parts/field";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { ground, sheet } from "../../state";
import type { SheetMark } from "../../wire";
import { t } from "../../words_later";
import { nearest } from "./near";
import { tiesWords } from "./ties_first";

/** As many marks, besides the benchmarks, are offered to hold a tape at. */
const OFFERED = 4;

export function TiesPanel({ of, onClose }: { of: SheetMark; onClose: () => void }) {
  const words = t();
  const take = ground.value?.going.find((one) => one.mark === of.id)?.take;
  const [first, setFirst] = useState(take?.first ?? "");
  const [second, setSecond] = useState(take?.second ?? "");
  const [tapes, setTapes] = useState({ first: "", second: "" });
  const points = heldAt(of, [first, second]);
  const named = (but: string) => points.filter((id) => id !== but).map((id) => ({ id, name: id }));
  const ready = first && second && tapes.first.trim() && tapes.second.trim();
  const send = () => {
    const { first: first_tape, second: second_tape } = tapes;
    void say({ kind: "take_ties", mark: of.id, first, first_tape, second, second_tape });
    onClose();
  };
  return (
    <Panel title={words.tiesOf(of.id)} onClose={onClose} closeWord={words.cancel}>
      {of.ties && <p>{tiesWords(of.ties.ties)}</p>}
      <Choice title={words.heldAt} kind="chips" options={named(second)} chosen={first} onChoose={setFirst} />
      <Field
        name={words.tapeLevel(first)}
        value={tapes.first}
        onValue={(text) => setTapes({ ...tapes, first: text })}
      />
      <Choice title={words.heldAt} kind="chips" options={named(first)} chosen={second} onChoose={setSecond} />
      <Field
        name={words.tapeLevel(second)}
        value={tapes.second}
        onValue={(text) => setTapes({ ...tapes, second: text })}
      />
      <Key kind="send" disabled={!ready} why={t().kept.owed.something} onPress={send}>
        {words.send}
      </Key>
    </Panel>
  );
}

/** Where a tape can be held: benchmarks with a place, what is chosen, and the nearest marks that stand. */
function heldAt(of: SheetMark, chosen: string[]): string[] {
  const benchmarks = (sheet.value?.benchmarks ?? []).filter((one) => one.place).map((one) => one.id);
  const going = new Set((ground.value?.going ?? []).map((one) => one.mark));
  const stands = (one: SheetMark) =>
    one.id !== of.id && one.paint && one.paint.state !== "scraped" && !going.has(one.id);
  const marks = nearest((sheet.value?.marks ?? []).filter(stands), of.place).slice(0, OFFERED);
  return [...new Set([...benchmarks, ...chosen.filter(Boolean), ...marks.map((one) => one.id)])];
}
