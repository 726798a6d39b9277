/** EDGE: the tape from a line that nobody may cross to the edge of the cut. */
import { useState } from "preact/hooks";
import { say } from "../../hub";
import { Choice } from "../../parts/choice";
import { Keypad, textOf } from "../../parts/keypad";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { PhotoKey } from "../../parts/photo_key";
import { ground } from "../../state";
import { t } from "../../words_later";
import { keptLines, machine, mark } from "./at";
import { paintWords } from "./ties_first";

export function EdgePanel({ onClose }: { onClose: () => void }) {
  const words = t();
  const lines = keptLines();
  const machines = ground.value?.machines ?? [];
  const [line, setLine] = useState(lines[0]?.id ?? "");
  const [to, setTo] = useState(machine.value?.id ?? machines[0]?.id ?? "");
  const [over, setOver] = useState<"inside" | "over" | null>(null);
  const [from, setFrom] = useState<"line" | "mark">("line");
  const [typed, setTyped] = useState("");
  const text = textOf("feet_hundredths", typed);
  const { owed } = words.kept;
  const missing = !line
    ? owed.line
    : !to
      ? owed.machine
      : !over
        ? owed.overLine
        : text === ""
          ? owed.number
          : null;
  const ready = missing === null;
  const send = () => {
    if (!ready) return;
    const here = mark.value ? { mark: mark.value.id, from_mark: from === "mark" } : {};
    void say({ kind: "read_edge", machine: to, line, text, over: over === "over", ...here });
    onClose();
  };
  const named = (id: string) => ({ id, name: id });
  return (
    <Panel title={words.edgeAt(mark.value?.id ?? "")} onClose={onClose} closeWord={words.cancel}>
      <div class="beside">
        <div class="beside-left">
          <div class="asks-two">
            {lines.length > 1 && (
              <Choice
                title={words.line}
                kind="chips"
                options={lines.map((one) => named(one.id))}
                chosen={line}
                onChoose={setLine}
              />
            )}
            {machines.length > 1 && (
              <Choice
                title={words.machine}
                kind="chips"
                options={machines.map((one) => named(one.id))}
                chosen={to}
                onChoose={setTo}
              />
            )}
          </div>
          {mark.value?.paint && mark.value.paint.state !== "scraped" && (
            <Choice
              title={words.tapedFrom}
              kind="chips"
              options={[
                { id: "line", name: words.parents.string, note: words.stringOn(line) },
                { id: "mark", name: mark.value.id, note: paintWords(mark.value.paint) },
              ]}
              chosen={from}
              onChoose={(id: "line" | "mark") => setFrom(id)}
            />
          )}
          <Choice
            kind="chips"
            title={from === "mark" ? words.edgeOfMark(mark.value?.id ?? "", line) : words.edgeLies(line)}
            options={[
              { id: "inside", name: from === "mark" ? words.shortOfMark : words.insideLine },
              { id: "over", name: from === "mark" ? words.pastMark : words.overLine },
            ]}
            chosen={over}
            onChoose={(id: "inside" | "over") => setOver(id)}
          />
        </div>
        <Keypad pad="feet_hundredths" typed={typed} label={words.tapeFeet} onTyped={setTyped} onSend={send} />
        <div class="send-row panel-send">
          <PhotoKey kind="" about={mark.value ? { mark: mark.value.id } : {}} />
          <Key kind="send" disabled={!ready} why={missing} onPress={send}>
            {words.send}
          </Key>
        </div>
      </div>
    </Panel>
  );
}
