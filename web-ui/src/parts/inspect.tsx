/** The competent person's inspection: values, not ticks. The soil is typed anew on the same form. */
import { useState } from "preact/hooks";
import { say } from "../hub";
import type { Evidence, FaceCard, SoilClass } from "../wire";
import { t } from "../words_later";
import { Choice } from "./choice";
import { Key } from "./keys";
import { Panel } from "./panel";
import { Typed } from "./typed";

const CLASSES: readonly SoilClass[] = ["rock", "a", "b", "c"];
const FINDS = ["cracks", "vibration", "disturbed", "water"] as const;
const THUMBS = ["great_effort", "some_effort", "easily"] as const;
const MATERIALS = [
  "stable_rock",
  "loose_rock",
  "cemented",
  "cohesive",
  "silt_or_angular",
  "granular",
] as const;

interface InspectProps {
  card: FaceCard;
  /** Only the soil is typed anew, with the reason. */
  retype?: boolean;
  onClose: () => void;
}

export function InspectPanel({ card, retype = false, onClose }: InspectProps) {
  const words = t().cuts;
  // What is released is what this panel showed when it was opened.
  const [alarm] = useState(card.alarm?.alarm ?? null);
  // What was said of the face since then asks for another look.
  const [word, setWord] = useState(card.word);
  const [soil, setSoil] = useState<SoilClass | null>(null);
  const [material, setMaterial] = useState<(typeof MATERIALS)[number] | null>(null);
  const [thumb, setThumb] = useState<(typeof THUMBS)[number] | null>(null);
  const [tsf, setTsf] = useState("");
  const [finds, setFinds] = useState<readonly string[]>([]);
  const [seen, setSeen] = useState("");
  const [hand, setHand] = useState("");
  const [why, setWhy] = useState("");
  const strength = /^\d{1,2}([.,]\d{1,2})?$/.test(tsf.trim()) ? Number(tsf.trim().replace(",", ".")) : null;
  const badStrength = tsf.trim() !== "" && strength === null;
  const byHand = hand.trim() !== "" || thumb !== null || strength !== null;
  const ready = soil !== null && !badStrength && (retype ? why.trim() !== "" : seen.trim() !== "" && byHand);
  const send = () => {
    if (!ready) return;
    const evidence: Evidence = {
      ...(material && { material }),
      ...(thumb && { thumb }),
      ...(strength !== null && { strength: { unit: "tsf", value: strength } }),
      ...Object.fromEntries(finds.map((find) => [find, true])),
    };
    const about = { zone: card.id, class: soil, evidence };
    void say(
      retype
        ? { kind: "retype_soil", ...about, why: why.trim() }
        : {
            kind: "inspect_face",
            ...about,
            seen: seen.trim(),
            by_hand: hand.trim(),
            release: why.trim(),
            alarm,
            word,
          },
    );
    onClose();
  };
  const turn = (find: string) =>
    setFinds(finds.includes(find) ? finds.filter((one) => one !== find) : [...finds, find]);
  return (
    <Panel
      title={retype ? words.retypeTitle(card.name) : words.inspectTitle(card.name)}
      onClose={onClose}
      closeWord={t().cancel}
    >
      {!retype && (
        <ul class="lines plain">
          {card.also.map((one) => (
            <li key={one.what}>
              {words.also[one.what]} <small>{one.section}</small>
            </li>
          ))}
        </ul>
      )}
      {!retype && <Typed label={words.seen} text={seen} onTyped={setSeen} />}
      <Choice
        title={words.thumb}
        options={THUMBS.map((id) => ({ id, name: words.thumbs[id] }))}
        chosen={thumb}
        onChoose={setThumb}
      />
      <Typed label={words.strength} text={tsf} onTyped={setTsf} bad={badStrength} decimal />
      {!retype && <Typed label={words.byHand} text={hand} onTyped={setHand} />}
      <Choice
        title={words.material}
        options={MATERIALS.map((id) => ({ id, name: words.materials[id] }))}
        chosen={material}
        onChoose={setMaterial}
      />
      <fieldset class="choice">
        <legend>{words.found}</legend>
        <div class="tiles">
          {FINDS.map((find) => (
            <button
              key={find}
              type="button"
              class="key tile"
              aria-pressed={finds.includes(find)}
              onClick={() => turn(find)}
            >
              {words.finds[find]}
            </button>
          ))}
        </div>
      </fieldset>
      <Choice
        title={words.pickClass}
        options={CLASSES.map((id) => ({ id, name: words.classes[id] }))}
        chosen={soil}
        onChoose={setSoil}
      />
      <p class="quiet">{words.onlyLowers}</p>
      {(retype || card.alarm) && (
        <Typed label={retype ? words.why : words.release} text={why} onTyped={setWhy} />
      )}
      {!retype && card.word !== word ? (
        <>
          <p class="warning" role="alert">
            {words.toldSince}
          </p>
          <Key onPress={() => setWord(card.word)}>{words.lookedAgain}</Key>
        </>
      ) : (
        <Key kind="send" disabled={!ready} onPress={send}>
          {retype ? words.signRetype : words.sign}
        </Key>
      )}
    </Panel>
  );
}
