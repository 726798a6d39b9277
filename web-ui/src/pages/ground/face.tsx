/** FACE: what is seen at a cut face goes to everybody at once; the competent person inspects it here too. */
import { useState } from "preact/hooks";
import { say } from "../../hub";
import { Choice } from "../../parts/choice";
import { FaceFacts } from "../../parts/face_facts";
import { Keypad, textOf } from "../../parts/keypad";
import { Key } from "../../parts/keys";
import { LatePanel } from "../../parts/late_panel";
import { Panel } from "../../parts/panel";
import { PhotoKey } from "../../parts/photo_key";
import { RainLine, RainStoppedKey, sayRain } from "../../parts/rain";
import { Typed } from "../../parts/typed";
import { Waters } from "../../parts/water";
import { ground, me } from "../../state";
import type { FaceCard, Sight } from "../../wire";
import { t } from "../../words_later";

const SIGHTS: readonly Sight[] = ["water", "crack", "rain", "vibration", "load", "trimmed"];

type Step = "menu" | "load" | "slough" | "pins" | "inspect" | "retype";

export function FacePanel({ onClose }: { onClose: () => void }) {
  const words = t().cuts;
  const cards = ground.value?.cuts.faces ?? [];
  const alarmed = cards.find((card) => card.alarm) ?? cards[0];
  const [id, setId] = useState(alarmed?.id ?? "");
  const [step, setStep] = useState<Step>("menu");
  const card = cards.find((one) => one.id === id);
  if (!card) return null;
  if (step === "inspect" || step === "retype") {
    return (
      <LatePanel title={words.inspectTitle(card.name)} onClose={onClose}>
        {(late) => <late.InspectPanel card={card} retype={step === "retype"} onClose={onClose} />}
      </LatePanel>
    );
  }
  const competent = ground.value?.cuts.competent.includes(me.value?.person ?? "");
  return (
    <Panel title={`${words.face}: ${card.name}`} onClose={onClose}>
      {step === "menu" ? (
        <>
          {cards.length > 1 && (
            <Choice
              kind="chips"
              title={words.faces}
              options={cards.map((one) => ({ id: one.id, name: one.id, note: one.name }))}
              chosen={id}
              onChoose={setId}
            />
          )}
          {ground.value && <RainLine rain={ground.value.rain} />}
          <Waters waters={ground.value?.water} />
          <Menu card={card} onStep={setStep} onClose={onClose} competent={competent ?? false} />
          <FaceFacts card={card} />
          <p class="quiet">{words.caution}</p>
        </>
      ) : step === "load" ? (
        <Load card={card} onClose={onClose} />
      ) : step === "slough" ? (
        <Slough card={card} onClose={onClose} />
      ) : (
        <Pins card={card} onClose={onClose} />
      )}
    </Panel>
  );
}

interface MenuProps {
  card: FaceCard;
  competent: boolean;
  onStep: (step: Step) => void;
  onClose: () => void;
}

function Menu({ card, competent, onStep, onClose }: MenuProps) {
  const words = t().cuts;
  const see = (what: Sight) => {
    if (what === "load") return onStep("load");
    // It rains on the whole site, not at one face.
    if (what === "rain") sayRain();
    else void say({ kind: "see_at_face", zone: card.id, what });
    onClose();
  };
  // Everybody is told first; how much came down is asked for afterwards.
  const cameDown = () => {
    void say({ kind: "say_came_down", zone: card.id });
    onStep("slough");
  };
  return (
    <div class="tiles close">
      <Key kind="tile" onPress={cameDown}>
        {words.cameDown}
      </Key>
      {SIGHTS.map((what) => (
        <Key key={what} kind="tile" onPress={() => see(what)}>
          {words.seenAt[what]}
        </Key>
      ))}
      {card.pins.length > 0 && (
        <Key kind="tile" onPress={() => onStep("pins")}>
          {words.pins}
        </Key>
      )}
      <PhotoKey about={{ face: card.id }} />
      {competent && (
        <>
          <Key kind="tile" onPress={() => onStep("inspect")}>
            {words.inspect}
          </Key>
          <Key kind="tile" onPress={() => onStep("retype")}>
            {words.signRetype}
          </Key>
        </>
      )}
      <RainStoppedKey rain={ground.value?.rain} kind="tile" onSaid={onClose} />
    </div>
  );
}

/** Spoil or a load: how far back from the crest it stands. */
function Load({ card, onClose }: { card: FaceCard; onClose: () => void }) {
  const words = t();
  const [typed, setTyped] = useState("");
  const text = textOf("feet_hundredths", typed);
  const send = () => {
    if (text === "") return;
    void say({ kind: "see_at_face", zone: card.id, what: "load", text });
    onClose();
  };
  return (
    <div class="beside">
      <Keypad
        pad="feet_hundredths"
        typed={typed}
        label={words.cuts.loadBack}
        onTyped={setTyped}
        onSend={send}
      />
      <div class="send-row panel-send">
        <Key kind="send" disabled={text === ""} why={t().kept.owed.number} onPress={send}>
          {words.send}
        </Key>
      </div>
    </div>
  );
}

/** How much came down, for the log and the inspection: everybody has been told already. */
function Slough({ card, onClose }: { card: FaceCard; onClose: () => void }) {
  const words = t();
  const [sizes, setSizes] = useState({ length: "", height: "", back: "" });
  const [mark, setMark] = useState("");
  const good = (text: string) => /^\d{1,3}([.,]\d{1,2})?$/.test(text.trim());
  const ready = Object.values(sizes).every(good);
  const send = () => {
    if (!ready) return;
    const plain = (text: string) => text.trim().replace(",", ".");
    void say({
      kind: "see_slough",
      zone: card.id,
      length: plain(sizes.length),
      height: plain(sizes.height),
      back: plain(sizes.back),
      mark: mark.trim().toUpperCase() || null,
    });
    onClose();
  };
  return (
    <>
      <p role="status">{words.cuts.slough.told}</p>
      {(["length", "height", "back"] as const).map((name) => (
        <Typed
          key={name}
          label={words.cuts.slough[name]}
          text={sizes[name]}
          bad={sizes[name] !== "" && !good(sizes[name])}
          decimal
          onTyped={(text) => setSizes({ ...sizes, [name]: text })}
        />
      ))}
      <Typed label={words.cuts.slough.mark} text={mark} onTyped={setMark} />
      <Key kind="send" disabled={!ready} why={t().kept.owed.sizes} onPress={send}>
        {words.send}
      </Key>
    </>
  );
}

/** The tape between two pins. */
function Pins({ card, onClose }: { card: FaceCard; onClose: () => void }) {
  const words = t();
  const [pins, setPins] = useState(card.pins[0]?.pins ?? "");
  const [typed, setTyped] = useState("");
  const text = textOf("feet_hundredths", typed);
  const send = () => {
    if (text === "" || pins === "") return;
    void say({ kind: "read_pins", zone: card.id, pins, text });
    onClose();
  };
  return (
    <div class="beside">
      <Choice
        title={words.cuts.pins}
        options={card.pins.map((one) => ({ id: one.pins, name: one.pins }))}
        chosen={pins}
        onChoose={setPins}
      />
      <Keypad
        pad="feet_hundredths"
        typed={typed}
        label={words.cuts.pinsTape}
        onTyped={setTyped}
        onSend={send}
      />
      <div class="send-row panel-send">
        <Key kind="send" disabled={text === ""} why={t().kept.owed.number} onPress={send}>
          {words.send}
        </Key>
      </div>
    </div>
  );
}
