/** PAINT: marks are laid, checked by somebody else, gone, and laid again. */
import { useState } from "preact/hooks";
import { say } from "../../hub";
import { Choice } from "../../parts/choice";
import { Keypad, textOf } from "../../parts/keypad";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { sheet } from "../../state";
import type { SheetMark } from "../../wire";
import { t } from "../../words_later";
import { mark } from "./at";
import { TiesPanel } from "./ties";
import { paintWords, tiesWords } from "./ties_first";

const PARENTS = ["hub", "string", "control", "ties"] as const;

export function PaintPanel({ onClose }: { onClose: () => void }) {
  const words = t();
  const [whole, setWhole] = useState<"one" | "all">("one");
  const [checking, setChecking] = useState(false);
  const [tying, setTying] = useState(false);
  const here = mark.value;
  if (!here) return null;
  if (tying) return <TiesPanel of={here} onClose={onClose} />;
  const all = (sheet.value?.marks ?? []).filter((one: SheetMark) => one.target === here.target);
  const marks = whole === "all" && here.target ? all.map((one) => one.id) : [here.id];
  const lay = (kind: (typeof PARENTS)[number]) => {
    void say({ kind: "lay_marks", marks, from: { kind }, note: "" });
    onClose();
  };
  const gone = () => {
    void say({ kind: "scrape_marks", marks });
    onClose();
  };
  return (
    <Panel title={words.paintOf(here.id)} onClose={onClose} closeWord={words.cancel}>
      <p>{paintWords(here.paint)}</p>
      {here.ties && <p>{tiesWords(here.ties.ties)}</p>}
      {here.target && (
        <Choice
          title={words.whichMarks}
          options={[
            { id: "one", name: here.id },
            { id: "all", name: words.allOf(here.target), note: String(all.length) },
          ]}
          chosen={whole}
          onChoose={(id: "one" | "all") => setWhole(id)}
        />
      )}
      {checking ? (
        <Apart marks={marks} onClose={onClose} />
      ) : (
        <>
          <Choice
            title={words.laidFrom}
            options={PARENTS.filter((id) => id !== "ties" || here.ties).map((id) => ({
              id,
              name: words.parents[id],
            }))}
            onChoose={lay}
          />
          <div class="tiles">
            <Key kind="tile" onPress={() => setChecking(true)}>
              {words.checkMark}
            </Key>
            <Key kind="tile" onPress={() => setTying(true)}>
              {words.ties}
            </Key>
            <Key kind="tile" onPress={gone}>
              {words.paintGone}
            </Key>
          </div>
        </>
      )}
    </Panel>
  );
}

/** How far the second measure is from the first. */
function Apart({ marks, onClose }: { marks: string[]; onClose: () => void }) {
  const words = t();
  const [typed, setTyped] = useState("");
  const apart = textOf("feet_hundredths", typed);
  const send = () => {
    if (apart === "") return;
    void say({ kind: "check_marks", marks, apart });
    onClose();
  };
  return (
    <>
      <Keypad pad="feet_hundredths" typed={typed} label={words.apartFeet} onTyped={setTyped} onSend={send} />
      <Key kind="send" disabled={apart === ""} why={t().kept.owed.number} onPress={send}>
        {words.send}
      </Key>
    </>
  );
}
