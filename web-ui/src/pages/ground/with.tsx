/** With what: rod or receiver, which rod, which set-up, how finely, which machine, and where that stands. */
import { setUpName } from "../../given_names";
import { say } from "../../hub";
import { Choice } from "../../parts/choice";
import { Key } from "../../parts/keys";
import { callLine, troubles } from "../../parts/machine";
import { Panel } from "../../parts/panel";
import { ago } from "../../show";
import { ground, me, now, sheet } from "../../state";
import type { Care, MachineCard } from "../../wire";
import { t } from "../../words_later";
import { choose, chosen, machine, mark, rod, setUp } from "./at";
import { nearest } from "./near";

const CARES: readonly Care[] = ["fine", "coarse", "by_eye", "muddy"];

export function WithPanel({ onClose }: { onClose: () => void }) {
  const words = t();
  const named = (id: string) => ({ id, name: id });
  return (
    <Panel title={words.options} onClose={onClose}>
      {machine.value && <MachineFacts card={machine.value} />}
      <div class="asks-two">
        <Choice
          kind="chips"
          title={words.machine}
          options={(ground.value?.machines ?? []).map((one) => named(one.id))}
          chosen={machine.value?.id ?? null}
          onChoose={(id) => choose({ machine: id === mark.value?.machine ? null : id })}
        />
        <Choice
          kind="chips"
          title={words.mode}
          options={[
            { id: "rod", name: words.rodWord },
            { id: "receiver", name: words.receiver },
          ]}
          chosen={chosen.value.receiver ? "receiver" : "rod"}
          onChoose={(id: "rod" | "receiver") => choose({ receiver: id === "receiver" })}
        />
        <Choice
          kind="chips"
          title={words.rod}
          options={(sheet.value?.rods ?? []).map((one) => named(one.id))}
          chosen={rod.value?.id ?? null}
          onChoose={(id) => choose({ rod: id })}
        />
        <Choice
          kind="chips"
          title={words.setUp}
          options={(ground.value?.set_ups ?? []).map((one) => ({
            id: one.id,
            name: setUpName(one.id),
          }))}
          chosen={setUp.value?.id ?? null}
          onChoose={(id) => choose({ setUp: id })}
        />
      </div>
      <Choice
        kind="chips"
        title={words.careTitle}
        options={CARES.map((id) => ({ id, name: words.care[id] }))}
        chosen={chosen.value.care}
        onChoose={(care: Care) => choose({ care })}
      />
    </Panel>
  );
}

/** What this machine was told, what is wrong, and where it was last said to stand. */
function MachineFacts({ card }: { card: MachineCard }) {
  const words = t();
  const here = mark.value;
  const place = card.place;
  const by = place ? (nearest(sheet.value?.marks ?? [], place.at)[0]?.id ?? "") : "";
  return (
    <section class="facts-box">
      <p>
        <strong>{card.id}</strong> {callLine(card)}
      </p>
      {troubles(card).map((line) => (
        <p key={line} class="trouble">
          {line}
        </p>
      ))}
      <p>
        {place ? words.placeSaid(by, ago(now.value - place.since)) : words.placeNotSaid}
        {". "}
        {words.caution}
      </p>
      <div class="tiles close">
        {here && (
          <Key
            kind="tile"
            onPress={() => void say({ kind: "place_machine", machine: card.id, at: here.place })}
          >
            {words.standsHere(card.id, here.id)}
          </Key>
        )}
        <Key kind="tile" onPress={() => void say({ kind: "say_moved", machine: card.id })}>
          {words.moved(card.id)}
        </Key>
        <SpotKey card={card} />
      </div>
    </section>
  );
}

/** To watch a machine is to do nothing else: the cab names who does. */
function SpotKey({ card }: { card: MachineCard }) {
  const words = t().crew;
  const mine = card.spotter?.device === me.value?.device;
  const kind = mine ? "end_spotter" : "be_spotter";
  return (
    <Key kind="tile" onPress={() => void say({ kind, machine: card.id })}>
      {mine ? words.spotNoMore(card.id) : words.spotFor(card.id)}
      {card.spotter && !mine && <small>{words.spotter(card.spotter.person)}</small>}
    </Key>
  );
}
