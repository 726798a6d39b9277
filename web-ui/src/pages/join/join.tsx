/** Join: name or initials, what you do here, IN. Under fifteen seconds. */
import { useEffect, useState } from "preact/hooks";
import { type JoinOffer, join, offer } from "../../hub";
import { lastSeen, rememberMe } from "../../last_seen";
import { Key, StopKey } from "../../parts/keys";
import { LanguageChoice } from "../../parts/settings";
import { allowSound } from "../../sound";
import { bye, language, me, remember, remembered } from "../../state";
import type { Role } from "../../wire";
import { t } from "../../words";

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
  onTrouble: (text: string) => void;
}

function Form({ code, offered, onTrouble }: FormProps) {
  const words = t();
  const [person, setPerson] = useState(remembered(NAME) ?? "");
  const [roles, setRoles] = useState<Role[]>(offered.roles.length === 1 ? offered.roles : []);
  const turn = (role: Role) =>
    setRoles(roles.includes(role) ? roles.filter((one) => one !== role) : [...roles, role]);
  const enter = async () => {
    void allowSound();
    if (!person.trim()) return onTrouble(words.joinNeedName);
    if (roles.length === 0) return onTrouble(words.joinNeedRole);
    remember(NAME, person.trim());
    const got = await join({
      code,
      person: person.trim(),
      roles,
      language: language.value,
      unit: "tenths",
    });
    if (!got.ok) return onTrouble(got.text);
    rememberMe(got.value);
    // A page that was sent away starts anew; one that comes in for the first time goes on without a load.
    if (bye.value) return location.replace("/");
    history.replaceState(null, "", "/");
    me.value = got.value;
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void enter();
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
