/** Whose phones are in, and what a supervisor says about one: whose it is, that it stays, that another takes its cab, that it goes. */
import { useState } from "preact/hooks";
import { say } from "../../hub";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { timeOfDay } from "../../show";
import { me } from "../../state";
import type { Command, Supervisor } from "../../wire";
import { t } from "./words";

type Person = Supervisor["people"][number];

export function People({ view }: { view: Supervisor }) {
  const words = t();
  const [open, setOpen] = useState<string | null>(null);
  const one = view.people.find((person) => person.device === open);
  return (
    <>
      <ul class="lines">
        {view.people.map((person) => (
          <li key={person.device}>
            <span>
              <strong>{person.person}</strong> {person.roles.map((role) => words.roles[role]).join(" + ")}{" "}
              {person.machine ?? ""} · {timeOfDay(person.since)} {noted(person)}
            </span>
            <Key
              kind="small"
              label={`${words.phones.open} ${person.person}`}
              onPress={() => setOpen(person.device)}
            >
              {words.phones.open}
            </Key>
          </li>
        ))}
      </ul>
      {one && <Phone one={one} onClose={() => setOpen(null)} />}
    </>
  );
}

/** What is to be known of a phone, in a few words. */
function noted(one: Person): string {
  const words = t().phones;
  const notes = [
    one.asks_who ? words.asksWho : "",
    one.confirmed_by ? words.confirmed(one.confirmed_by) : one.competent ? words.notConfirmed : "",
    one.stays ? words.stays : "",
  ];
  return notes
    .filter(Boolean)
    .map((note) => `· ${note}`)
    .join(" ");
}

function Phone({ one, onClose }: { one: Person; onClose: () => void }) {
  const words = t();
  const own = one.device === me.value?.device;
  const press = (command: Command) => {
    void say(command);
    onClose();
  };
  const { device, person, machine } = one;
  return (
    <Panel title={words.phones.of(person)} closeWord={words.cancel} onClose={onClose}>
      {!own && !one.confirmed_by && !one.asks_who && (
        <>
          <p>{words.phones.confirmAsk(person)}</p>
          <Key kind="wide" onPress={() => press({ kind: "confirm_person", device, person })}>
            {words.phones.confirm(person)}
          </Key>
        </>
      )}
      <Key kind="wide" onPress={() => press({ kind: "let_stay", device, stays: !one.stays })}>
        {one.stays ? words.phones.noStay : words.phones.letStay}
      </Key>
      {machine && (
        <>
          <p>{words.phones.giveAsk(machine)}</p>
          <Key kind="wide" onPress={() => press({ kind: "give_cab", machine })}>
            {words.phones.give(machine)}
          </Key>
        </>
      )}
      {!own && (
        <>
          <p>{words.removeAsk(person)}</p>
          <Key kind="wide" onPress={() => press({ kind: "remove_phone", device })}>
            {words.remove}
          </Key>
        </>
      )}
    </Panel>
  );
}
