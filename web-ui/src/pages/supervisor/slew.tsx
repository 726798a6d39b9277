/** Two booms that can meet: which side each machine keeps out of, for both operators to agree to. */
import { useState } from "preact/hooks";
import { say } from "../../hub";
import { Choice } from "../../parts/choice";
import { Field } from "../../parts/field";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import type { Compass } from "../../wire";
import { t } from "./words";

interface SlewProps {
  machine: string;
  other: string;
  onClose: () => void;
}

export function SlewPanel({ machine, other, onClose }: SlewProps) {
  const words = t();
  const [sides, setSides] = useState<Record<string, Compass>>({});
  const [note, setNote] = useState("");
  const all = (Object.keys(words.crew.compass) as Compass[]).map((id) => ({
    id,
    name: words.crew.compass[id],
  }));
  const both = [machine, other];
  const chosen = both.flatMap((id) => {
    const side = sides[id];
    return side ? [{ machine: id, keeps_out_of: side }] : [];
  });
  const propose = () => {
    void say({
      kind: "agree_slew",
      sides: chosen,
      note: note.trim(),
    });
    onClose();
  };
  return (
    <Panel title={words.slew.title(machine, other)} onClose={onClose} closeWord={words.cancel}>
      <p>{words.slew.why}</p>
      {both.map((id) => (
        <Choice
          key={id}
          title={words.slew.keepsOut(id)}
          options={all}
          chosen={sides[id] ?? null}
          onChoose={(side) => setSides({ ...sides, [id]: side })}
        />
      ))}
      <Field name={words.slew.note} value={note} onValue={setNote} text />
      <Key kind="send" disabled={chosen.length < both.length} onPress={propose}>
        {words.slew.propose}
      </Key>
    </Panel>
  );
}
