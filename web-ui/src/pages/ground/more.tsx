/** MORE: a reading beside every mark, on a named surface, of a rocked rod, blind, or booked on paper. */
import { useState } from "preact/hooks";
import { setUpName } from "../../given_names";
import { Choice } from "../../parts/choice";
import { feetTyped } from "../../parts/feet_typed";
import { Field } from "../../parts/field";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { sheet } from "../../state";
import type { Side, SiteTarget, TakeReading, Where } from "../../wire";
import { t } from "../../words_later";
import { Pick } from "../control/form";
import { c } from "../control/words";
import { chosen, mark, rod, setUp } from "./at";
import { FromPaper } from "./paper";

const PLACES = ["mark", "station", "ties", "paced"] as const;
type Place = (typeof PLACES)[number];

/** What was typed, whatever the place; a name that a place does not ask for stands empty. */
type Typed = Record<
  "target" | "station" | "offset" | "first" | "one" | "second" | "two" | "paces" | "of",
  string
>;

const NOTHING: Typed = {
  target: "",
  station: "",
  offset: "",
  first: "",
  one: "",
  second: "",
  two: "",
  paces: "",
  of: "",
};

/** 10+40.5 is station 1040.5. */
export function stationTyped(text: string): number | null {
  const parted = /^(\d{1,4})\+(\d{2}(?:[.,]\d+)?)$/.exec(text.trim());
  return feetTyped(parted ? `${Number(parted[1])}${parted[2]}` : text);
}

function placed(place: Place, typed: Typed, side: Side | null): Where | null {
  const { target, first, second } = typed;
  const count = (text: string) => (/^\d{1,4}$/.test(text.trim()) ? Number(text) : null);
  if (place === "station") {
    const [station, offset] = [stationTyped(typed.station), feetTyped(typed.offset)];
    if (!target || station === null || offset === null || offset < 0 || !side) return null;
    return { kind: "station", target, station, offset: side === "right" ? offset : -offset };
  }
  if (!first || !second || first === second) return null;
  if (place === "ties") {
    const [first_tape, second_tape] = [feetTyped(typed.one), feetTyped(typed.two)];
    if (first_tape === null || second_tape === null || !side) return null;
    return { kind: "ties", first, first_tape, second, second_tape, side };
  }
  const [paces, of] = [count(typed.paces), count(typed.of)];
  return paces === null || of === null ? null : { kind: "paced", from: first, to: second, paces, of };
}

interface MorePanelProps {
  onSend: (command: TakeReading) => void;
  onClose: () => void;
}

export function MorePanel({ onSend, onClose }: MorePanelProps) {
  const words = c().more;
  const [place, setPlace] = useState<Place>("mark");
  const [typed, setTyped] = useState<Typed>(NOTHING);
  const [side, setSide] = useState<Side | null>(null);
  const [surface, setSurface] = useState("");
  const [text, setText] = useState("");
  const [rocked, setRocked] = useState("");
  const [blind, setBlind] = useState<"no" | "yes">("no");
  const [paper, setPaper] = useState(chosen.value.paper !== null);
  const where = place === "mark" ? null : placed(place, typed, side);
  const { owed } = t().kept;
  const missing = !setUp.value
    ? owed.setUp
    : !(place === "mark" ? mark.value : where)
      ? owed.place
      : !text.trim() || !rod.value
        ? owed.rod
        : null;
  const named =
    place === "station" ? typed.target : place === "mark" ? mark.value?.target : targetOf(typed.first);
  const stack = sheet.value?.targets.find((one) => one.id === named)?.grade.stack;
  const send = () => {
    if (missing || !setUp.value || !rod.value) return;
    onSend({
      kind: "take_reading",
      mark: place === "mark" ? mark.value?.id : "",
      ...(where ? { place: where } : {}),
      ...(surface ? { surface } : {}),
      set_up: setUp.value.id,
      rod: rod.value.id,
      text: text.trim(),
      mode: "rod",
      care: chosen.value.care,
      ...(chosen.value.machine ? { machine: chosen.value.machine } : {}),
      ...(place === "mark" && chosen.value.side ? { side: chosen.value.side } : {}),
      rocked: rocked.split(/\s*;\s*/).filter((one) => one !== ""),
      blind: blind === "yes",
      ...(chosen.value.paper ? { paper: chosen.value.paper.by } : {}),
    });
    onClose();
  };
  if (paper) {
    return (
      <Panel title={c().paper.title} onClose={onClose}>
        <FromPaper onClose={onClose} />
      </Panel>
    );
  }
  return (
    <Panel title={t().more} onClose={onClose}>
      <Choice
        kind="names pairs"
        title={words.where}
        options={PLACES.map((id) => ({
          id,
          name: id === "mark" ? (mark.value?.id ?? "–") : words.places[id],
        }))}
        chosen={place}
        onChoose={setPlace}
      />
      {place !== "mark" && (
        <Placing place={place} typed={typed} onTyped={setTyped} side={side} onSide={setSide} />
      )}
      <div class="asks-two fields">
        {stack && <Pick name={words.stands} value={surface} options={surfaces(stack)} onPick={setSurface} />}
        <Field
          name={words.rod(rod.value?.id ?? "–", setUp.value ? setUpName(setUp.value.id) : "–")}
          value={text}
          onValue={setText}
          text
        />
        <Field name={words.rocked} value={rocked} onValue={setRocked} text />
        {place === "mark" && (
          <Choice
            kind="chips"
            title={words.blind}
            options={[
              { id: "no", name: words.no },
              { id: "yes", name: words.yes },
            ]}
            chosen={blind}
            onChoose={setBlind}
          />
        )}
      </div>
      <div class="send-row panel-send">
        <Key onPress={() => setPaper(true)}>{c().paper.title}</Key>
        <Key kind="send" disabled={missing !== null} why={missing} onPress={send}>
          {t().send}
        </Key>
      </div>
    </Panel>
  );
}

function targetOf(id: string): string | null | undefined {
  return sheet.value?.marks.find((one) => one.id === id)?.target;
}

/** From the top down; without a choice the rod stands on the ground to dig to. */
function surfaces(stack: SiteTarget["grade"]["stack"]): string[] {
  return [stack.surface, ...stack.layers.map((layer) => layer.name)];
}

interface PlacingProps {
  place: Exclude<Place, "mark">;
  typed: Typed;
  onTyped: (typed: Typed) => void;
  side: Side | null;
  onSide: (side: Side) => void;
}

/** What fixes a place: a station and an offset, two tapes, or paces. */
function Placing({ place, typed, onTyped, side, onSide }: PlacingProps) {
  const words = c().more;
  const marks = (sheet.value?.marks ?? []).map((one) => one.id);
  const lines = (sheet.value?.drawn ?? []).filter((one) => one.drawn.line.length > 0).map((one) => one.id);
  const pick = (key: keyof Typed, name: string, options: readonly string[]) => (
    <Pick
      name={name}
      value={typed[key]}
      options={options}
      onPick={(id) => onTyped({ ...typed, [key]: id })}
    />
  );
  const field = (key: keyof Typed, name: string) => (
    <Field name={name} value={typed[key]} onValue={(value) => onTyped({ ...typed, [key]: value })} text />
  );
  return (
    <>
      {place === "station" && pick("target", c().target, lines)}
      {place === "station" && field("station", words.station)}
      {place === "station" && field("offset", words.offset)}
      {place !== "station" && pick("first", words.first, marks)}
      {place === "ties" && field("one", words.tape)}
      {place !== "station" && pick("second", words.second, marks)}
      {place === "ties" && field("two", words.tape2)}
      {place === "paced" && field("paces", words.paces)}
      {place === "paced" && field("of", words.of)}
      {place !== "paced" && (
        <Choice
          kind="chips"
          title={place === "station" ? words.upStation : words.toSecond}
          options={[
            { id: "left", name: words.left },
            { id: "right", name: words.right },
          ]}
          chosen={side}
          onChoose={onSide}
        />
      )}
    </>
  );
}
