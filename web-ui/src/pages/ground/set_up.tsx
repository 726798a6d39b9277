/** Setting a laser up: which laser, which benchmark, where it stands, what the rod reads. A second benchmark is owed. */
import { useState } from "preact/hooks";
import { say } from "../../hub";
import { Choice } from "../../parts/choice";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { feet } from "../../show";
import { sheet } from "../../state";
import type { LaserSlope, Point, SetUpCard } from "../../wire";
import { t } from "../../words_later";
import { mark } from "./at";
import { nearest } from "./near";
import { RodStep } from "./rod_step";
import { SlopeStep } from "./slope_step";

interface SetUpProps {
  /** The set-up whose backsight is corrected; a new one without. */
  restates?: SetUpCard;
  onClose: () => void;
  onDone: (id: string) => void;
}

export function SetUpPanel({ restates, onClose, onDone }: SetUpProps) {
  const words = t();
  const lasers = sheet.value?.lasers ?? [];
  const only = lasers.length === 1 ? (lasers[0]?.id ?? null) : null;
  const [laser, setLaser] = useState<string | null>(restates?.laser ?? only);
  const [benchmark, setBenchmark] = useState<string | null>(null);
  const [slope, setSlope] = useState<LaserSlope | "asked" | null>(null);
  const [place, setPlace] = useState<Point | null | undefined>(restates ? null : undefined);
  const send = async (text: string, rod: string) => {
    if (laser === null || benchmark === null || slope === "asked") return;
    const reply = await say(
      restates
        ? { kind: "restate_set_up", set_up: restates.id, benchmark, rod, text }
        : {
            kind: "set_up_laser",
            laser,
            benchmark,
            rod,
            text,
            ...(place ? { place } : {}),
            ...(slope ? { slope } : {}),
          },
    );
    if (reply.kind !== "answer") return;
    const came = reply.answer.outcome;
    onDone(came.kind === "set_up" ? came.set_up : (restates?.id ?? ""));
  };
  return (
    <Panel title={restates ? words.restateSetUp : words.setUpNew} onClose={onClose} closeWord={words.cancel}>
      {laser === null ? (
        <Choice
          title={words.whichLaser}
          kind="large"
          options={lasers.map((one) => ({ id: one.id, name: one.id }))}
          onChoose={setLaser}
        />
      ) : benchmark === null ? (
        <BenchmarkChoice onChoose={setBenchmark} />
      ) : slope === "asked" ? (
        <SlopeStep onChoose={setSlope} />
      ) : place === undefined ? (
        <PlaceChoice sloped={slope !== null} onSlope={() => setSlope("asked")} onChoose={setPlace} />
      ) : (
        <RodStep title={words.rodOnBenchmark(benchmark)} onSend={(text, rod) => void send(text, rod)} />
      )}
    </Panel>
  );
}

interface BenchmarkProps {
  /** The one that the set-up already rests on: listed last. */
  used?: string;
  onChoose: (id: string) => void;
}

export function BenchmarkChoice({ used, onChoose }: BenchmarkProps) {
  const all = sheet.value?.benchmarks ?? [];
  const ordered = [...all.filter((one) => one.id !== used), ...all.filter((one) => one.id === used)];
  return (
    <Choice
      title={t().whichBenchmark}
      kind="large"
      options={ordered.map((one) => ({
        id: one.id,
        name: one.id,
        note: `${feet(one.elevation)} ${one.note}`,
      }))}
      onChoose={onChoose}
    />
  );
}

/** Near which mark the laser stands: its distance counts in the doubt of a reading. */
interface PlaceProps {
  /** A sloped laser's height depends on where it stands: it is not skipped. */
  sloped: boolean;
  onSlope: () => void;
  onChoose: (place: Point | null) => void;
}

function PlaceChoice({ sloped, onSlope, onChoose }: PlaceProps) {
  const words = t();
  const here = mark.value;
  const marks = here ? nearest(sheet.value?.marks ?? [], here.place) : [];
  return (
    <>
      {sloped ? (
        <p>{words.slopedPlace}</p>
      ) : (
        <Key kind="wide" onPress={() => onChoose(null)}>
          {words.skip}
        </Key>
      )}
      <Choice
        title={words.whereStands}
        options={marks.map((one) => ({ id: one.id, name: one.id }))}
        onChoose={(id) => onChoose(marks.find((one) => one.id === id)?.place ?? null)}
      />
      {!sloped && (
        <Key kind="wide" onPress={onSlope}>
          {words.slopedLaser} <small>{words.slopedNote}</small>
        </Key>
      )}
    </>
  );
}
