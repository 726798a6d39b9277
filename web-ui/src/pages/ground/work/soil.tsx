/** A low spot that gets gravel, a lift that is rammed, a point on rock. */
import { useState } from "preact/hooks";
import { numberTyped } from "../../../amounts";
import { patchName } from "../../../given_names";
import { say } from "../../../hub";
import { Choice } from "../../../parts/choice";
import { feetTyped } from "../../../parts/feet_typed";
import { Field } from "../../../parts/field";
import { Key } from "../../../parts/keys";
import { Panel } from "../../../parts/panel";
import type { PatchCard } from "../../../wire";
import { t } from "../../../words_later";
import { mark } from "../at";
import { w } from "./words";

/** Typed feet; null when wrong, undefined when nothing is typed. */
export function lengthTyped(text: string): number | null | undefined {
  return text.trim() === "" ? undefined : feetTyped(text);
}

export function PatchPanel({ onClose }: { onClose: () => void }) {
  const words = w();
  const [long, setLong] = useState("");
  const [wide, setWide] = useState("");
  const [deep, setDeep] = useState("");
  const here = mark.value?.id ?? "";
  const [length, width] = [lengthTyped(long), lengthTyped(wide)];
  const depth = lengthTyped(deep);
  const ready = typeof length === "number" && typeof width === "number" && depth !== null && here !== "";
  const send = () => {
    if (!ready) return;
    void say({ kind: "add_patch", mark: here, length, width, depth: depth ?? null });
    onClose();
  };
  return (
    <Panel title={words.patchTitle(here)} onClose={onClose} closeWord={t().cancel}>
      <p class="trouble">{words.patchNever}</p>
      <Field name={words.long} value={long} onValue={setLong} />
      <Field name={words.wide} value={wide} onValue={setWide} />
      <Field name={words.deep} value={deep} onValue={setDeep} />
      <Key kind="send" disabled={!ready} why={t().kept.owed.something} onPress={send}>
        {t().send}
      </Key>
    </Panel>
  );
}

const DAMPS = ["dry", "right", "wet"] as const;
type Damp = (typeof DAMPS)[number];

export function RamPanel({ patches, onClose }: { patches: PatchCard[]; onClose: () => void }) {
  const words = w();
  const filled = patches.filter((one) => one.step === "filled");
  const here = mark.value;
  const places = [
    ...filled.map((one) => one.patch),
    ...(here ? [here.id] : []),
    ...(here?.target ? [here.target] : []),
  ];
  const [on, setOn] = useState(places[0] ?? "");
  const nextLift = (id: string) => String((filled.find((one) => one.patch === id)?.lifts ?? 0) + 1);
  const [lift, setLift] = useState(nextLift(on));
  const [thick, setThick] = useState("0.5");
  const [passes, setPasses] = useState("4");
  const [damp, setDamp] = useState<Damp | null>(null);
  const whole = (text: string) => {
    const count = numberTyped(text);
    return typeof count === "number" && Number.isInteger(count) ? count : null;
  };
  const [lifts, times] = [whole(lift), whole(passes)];
  const thickness = lengthTyped(thick);
  const ready =
    on !== "" && damp !== null && typeof thickness === "number" && lifts !== null && times !== null;
  const send = () => {
    if (!ready) return;
    void say({ kind: "compact", on, lift: lifts, passes: times, thickness, damp });
    onClose();
  };
  return (
    <Panel title={words.ramTitle} onClose={onClose} closeWord={t().cancel}>
      <Choice
        title={words.ramWhat}
        options={places.map((id) => ({
          id,
          name: filled.some((one) => one.patch === id) ? patchName(id) : id,
        }))}
        chosen={on}
        onChoose={(id) => {
          setOn(id);
          setLift(nextLift(id));
        }}
        kind="chips"
      />
      <Choice
        title={words.dampTitle}
        options={DAMPS.map((id) => ({ id, name: words.damp[id] }))}
        chosen={damp}
        onChoose={(id: Damp) => setDamp(id)}
        kind="chips"
      />
      <Field name={words.liftNumber} value={lift} onValue={setLift} />
      <Field name={words.liftThick} value={thick} onValue={setThick} />
      <Field name={words.passes} value={passes} onValue={setPasses} />
      <Key kind="send" disabled={!ready} why={t().kept.owed.something} onPress={send}>
        {t().send}
      </Key>
    </Panel>
  );
}

export function RockPanel({ onClose }: { onClose: () => void }) {
  const words = w();
  const [what, setWhat] = useState("");
  const [top, setTop] = useState("");
  const here = mark.value?.id ?? "";
  const elevation = lengthTyped(top);
  const send = () => {
    if (elevation === null || here === "") return;
    void say({ kind: "point_rock", mark: here, top: elevation ?? null, what });
    onClose();
  };
  return (
    <Panel title={words.rockTitle(here)} onClose={onClose} closeWord={t().cancel}>
      <Field name={words.rockWhat} value={what} onValue={setWhat} text />
      <Field name={words.rockTop} value={top} onValue={setTop} />
      <Key
        kind="send"
        disabled={elevation === null || here === ""}
        why={here === "" ? t().kept.owed.mark : t().kept.owed.number}
        onPress={send}
      >
        {t().send}
      </Key>
    </Panel>
  );
}
