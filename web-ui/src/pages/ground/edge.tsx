/** EDGE: the tape from a line that nobody may cross to the edge of the cut. */
import { useState } from "preact/hooks";
import { say } from "../../hub";
import { Choice } from "../../parts/choice";
import { Keypad, textOf } from "../../parts/keypad";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { PhotoKey } from "../../parts/photo_key";
import { ground, sheet } from "../../state";
import type { Line } from "../../wire";
import { t } from "../../words";
import { machine, mark } from "./at";
import { paintWords } from "./ties_first";

/** The lines of this site that must not be crossed. */
export function keptLines(): Line[] {
  return (sheet.value?.lines ?? []).filter((line) => line.no_cross);
}

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
      {lines.length > 1 && (
        <Choice
          title={words.line}
          options={lines.map((one) => named(one.id))}
          chosen={line}
          onChoose={setLine}
        />
      )}
      {machines.length > 1 && (
        <Choice
          title={words.machine}
          options={machines.map((one) => named(one.id))}
          chosen={to}
          onChoose={setTo}
        />
      )}
      {mark.value?.paint && mark.value.paint.state !== "scraped" && (
        <Choice
          title={words.tapedFrom}
          options={[
            { id: "line", name: words.parents.string, note: words.stringOn(line) },
            { id: "mark", name: mark.value.id, note: paintWords(mark.value.paint) },
          ]}
          chosen={from}
          onChoose={(id: "line" | "mark") => setFrom(id)}
        />
      )}
      <Choice
        title={from === "mark" ? words.edgeOfMark(mark.value?.id ?? "", line) : words.edgeLies(line)}
        options={[
          { id: "inside", name: from === "mark" ? words.shortOfMark : words.insideLine },
          { id: "over", name: from === "mark" ? words.pastMark : words.overLine },
        ]}
        chosen={over}
        onChoose={(id: "inside" | "over") => setOver(id)}
      />
      <Keypad pad="feet_hundredths" typed={typed} label={words.tapeFeet} onTyped={setTyped} onSend={send} />
      <div class="send-row">
        <PhotoKey kind="" about={mark.value ? { mark: mark.value.id } : {}} />
        <Key kind="send" disabled={!ready} why={missing} onPress={send}>
          {words.send}
        </Key>
      </div>
    </Panel>
  );
}
