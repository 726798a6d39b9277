/** Near misses that are open: what the hub knew at the stop, what was said, and what a supervisor adds. */
import { useState } from "preact/hooks";
import { say } from "../../hub";
import { Field } from "../../parts/field";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { PhotoKey } from "../../parts/photo_key";
import { said } from "../../said";
import { ago, feet, timeOfDay } from "../../show";
import { now } from "../../state";
import type { MachineThen, NearMissCard, Supervisor } from "../../wire";
import { Figures } from "./figures";
import { t } from "./words";

export function NearMisses({ view }: { view: Supervisor }) {
  const words = t().nearMiss;
  const [open, setOpen] = useState<number | null>(null);
  if (view.near_misses.length === 0) return null;
  return (
    <section aria-label={words.title}>
      <h2>{words.title}</h2>
      <ul class="lines">
        {view.near_misses.map((one) => (
          <li key={one.then.number}>
            <span>
              <strong>{words.name(one.then.number)}</strong> {one.voices[0]?.by} {one.then.why}{" "}
              <small>{t().ago(ago(now.value - one.since))}</small>
            </span>
            <Key
              kind="small"
              label={`${words.act} ${words.name(one.then.number)}`}
              onPress={() => setOpen(one.then.number)}
            >
              {words.act}
            </Key>
          </li>
        ))}
      </ul>
      {open !== null && <NearMissPanel view={view} number={open} onClose={() => setOpen(null)} />}
    </section>
  );
}

interface PanelProps {
  view: Supervisor;
  number: number;
  onClose: () => void;
}

/** Filled in beforehand; words are needed to add to it and to close it. */
export function NearMissPanel({ view, number, onClose }: PanelProps) {
  const words = t().nearMiss;
  const [said, setSaid] = useState("");
  const one = view.near_misses.find((card) => card.then.number === number);
  if (!one) return null;
  const tell = (close: boolean) => {
    void say({ kind: "tell_near_miss", number, words: said.trim(), close });
    onClose();
  };
  const mute = said.trim() === "";
  return (
    <Panel title={`${words.name(number)} · ${timeOfDay(one.since)}`} onClose={onClose} closeWord={t().cancel}>
      <Known one={one} />
      <Figures photos={view.record.photos.filter((photo) => photo.entry === one.entry)} />
      {one.entry > 0 && <PhotoKey about={{ entry: one.entry }} />}
      <Field name={words.ask} value={said} onValue={setSaid} text />
      <div class="row">
        <Key kind="send" disabled={mute} onPress={() => tell(false)}>
          {words.add}
        </Key>
        <Key kind="wide" disabled={mute} onPress={() => tell(true)}>
          {words.close}
        </Key>
      </div>
    </Panel>
  );
}

function Known({ one }: { one: NearMissCard }) {
  const words = t().nearMiss;
  const spoken = [...one.voices.map((voice) => ({ ...voice, words: voice.words || "STOP" })), ...one.told];
  return (
    <>
      <h3>{words.knew}</h3>
      <ul class="lines">
        {one.then.machines.map((machine) => (
          <li key={machine.machine}>
            <span>
              <strong>{machine.machine}</strong> {machineWords(machine)}
            </span>
          </li>
        ))}
      </ul>
      {one.then.faces_left.length > 0 && <p>{words.facesLeft(one.then.faces_left.join(", "))}</p>}
      <h3>{words.said}</h3>
      <ul class="lines">
        {spoken.map((voice) => (
          <li key={`${voice.at} ${voice.by} ${voice.words}`}>
            <span>
              {timeOfDay(voice.at, true)} <strong>{voice.by}</strong>: {voice.words}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}

/** Where it was said to stand, its call, who asked or was in, the face near by. */
function machineWords(then: MachineThen): string {
  const words = t();
  const { place, call, people, face } = then;
  const parts = [
    place
      ? words.nearMiss.stood(feet(place.at.x, 1), feet(place.at.y, 1), place.by, timeOfDay(place.since))
      : words.nearMiss.noPlace,
    call ? `${call.mark ?? ""} ${said(call)}` : words.noCall,
    ...people.map((person) => `${person.person} ${words.wayIn.stages[person.stage]}`),
    face ? words.nearMiss.face(face.zone, feet(face.away, 0)) : "",
  ];
  return parts.filter(Boolean).join(" · ");
}
