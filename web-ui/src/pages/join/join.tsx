/** Join: name or initials, what you do here, IN. Under fifteen seconds. */
import { useEffect, useState } from "preact/hooks";
import { offer } from "../../hub";
import { lastSeen, rememberMe } from "../../last_seen";
import { Key, StopKey } from "../../parts/keys";
import { LanguageChoice } from "../../parts/settings";
import { useTitle } from "../../parts/title";
import { timeOfDay } from "../../show";
import { allowSound } from "../../sound";
import { bye, language, me, remember, remembered } from "../../state";
import type { JoinOffer, Role } from "../../wire";
import { t } from "../../words";
import { comeIn, type Namesake } from "./come_in";

const NAME = "rodcall.person";

/** The code in the address, if there is one. */
export function codeIn(path: string): string | null {
  const match = /^\/j\/([^/]+)\/?$/.exec(path);
  return match?.[1] ? decodeURIComponent(match[1]) : null;
}

export function JoinPage({ code }: { code: string | null }) {
  const [offered, setOffered] = useState<JoinOffer | null>(null);
  const [trouble, setTrouble] = useState<string | null>(code ? null : t().joinNeedCode);
  useEffect(() => {
    if (!code) return;
    void offer(code).then((got) => {
      if (got.ok) setOffered(got.value);
      else setTrouble(got.text || t().joinVoid);
    });
  }, [code]);
  const words = t();
  useTitle(words.joinTitle, offered?.site);
  return (
    <div class="frame join">
      <main class="body">
        <h1>{offered ? `${words.joinTitle} · ${offered.site}` : words.joinTitle}</h1>
        {bye.value && <p class="warning">{words.bye[bye.value]}</p>}
        {trouble && (
          <p class="warning" role="alert">
            {trouble}
          </p>
        )}
        {!offered && !trouble && <p>{words.loading}</p>}
        {code && offered && <Form code={code} offered={offered} onTrouble={setTrouble} />}
        <LanguageChoice />
        <p class="quiet">{words.joinStay}</p>
      </main>
      {/* A phone that was in still stops everything, or says that nobody heard. */}
      {lastSeen() && (
        <nav class="row">
          <StopKey />
        </nav>
      )}
    </div>
  );
}

interface FormProps {
  code: string;
  offered: JoinOffer;
  onTrouble: (text: string | null) => void;
}

function Form({ code, offered, onTrouble }: FormProps) {
  const words = t();
  const [person, setPerson] = useState(remembered(NAME) ?? "");
  const [roles, setRoles] = useState<Role[]>(offered.roles.length === 1 ? offered.roles : []);
  const turn = (role: Role) =>
    setRoles(roles.includes(role) ? roles.filter((one) => one !== role) : [...roles, role]);
  const [namesake, setNamesake] = useState<Namesake | null>(null);
  const enter = async (name: string, same = false) => {
    void allowSound();
    if (!name) return onTrouble(words.joinNeedName);
    if (roles.length === 0) return onTrouble(words.joinNeedRole);
    const form = { code, person: name, roles, language: language.value, unit: "tenths" as const };
    const got = await comeIn(same ? { ...form, same_person: true } : form);
    if (!got.ok && got.namesake) {
      onTrouble(null);
      setPerson(name);
      return setNamesake(got.namesake);
    }
    if (!got.ok) return onTrouble(got.text);
    rememberMe(got.me);
    remember(NAME, got.me.person);
    // A page that was sent away starts anew; one that comes in for the first time goes on without a load.
    if (bye.value) return location.replace("/");
    history.replaceState(null, "", "/");
    me.value = got.me;
  };
  if (namesake) {
    return (
      <WhoIsIt
        namesake={namesake}
        onSame={() => void enter(person, true)}
        onOther={(name) => void enter(name)}
        onBack={() => setNamesake(null)}
      />
    );
  }
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void enter(person.trim());
      }}
    >
      <label class="field">
        <span>{words.joinWho}</span>
        <input
          value={person}
          maxLength={24}
          autocomplete="nickname"
          autocapitalize="characters"
          onInput={(event) => setPerson(event.currentTarget.value)}
        />
      </label>
      {offered.machine && <p>{words.joinCab(offered.machine)}</p>}
      {offered.roles.length > 1 && (
        <fieldset class="choice">
          <legend>{words.joinRole}</legend>
          <div class="tiles">
            {offered.roles.map((role) => (
              <Key key={role} kind="tile" pressed={roles.includes(role)} onPress={() => turn(role)}>
                {words.roles[role]}
              </Key>
            ))}
          </div>
        </fieldset>
      )}
      <button type="submit" class="key send">
        {words.joinIn}
      </button>
    </form>
  );
}

interface WhoProps {
  namesake: Namesake;
  onSame: () => void;
  onOther: (name: string) => void;
  onBack: () => void;
}

/** Somebody of that name is here: two people never share one way in, nor one place in the log. */
function WhoIsIt({ namesake, onSame, onOther, onBack }: WhoProps) {
  const words = t();
  const { person, since, inside, another } = namesake;
  const [name, setName] = useState(another);
  return (
    <section class="who-is-it" role="alert">
      <h2>{words.sameName(person, timeOfDay(since))}</h2>
      {inside && <p class="warning">{words.sameNameIn(person, inside)}</p>}
      <Key kind="wide" onPress={onSame}>
        {words.samePerson(person)}
      </Key>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          onOther(name.trim());
        }}
      >
        <label class="field">
          <span>{words.otherPerson}</span>
          <input
            value={name}
            maxLength={24}
            autocomplete="off"
            onInput={(event) => setName(event.currentTarget.value)}
          />
        </label>
        <button type="submit" class="key send">
          {words.otherIn}
        </button>
      </form>
      <Key kind="small" onPress={onBack}>
        {words.back}
      </Key>
    </section>
  );
}
