/** CODES: what the crew scans at the tailgate, printable; new ones void the old. */
import { useEffect, useState } from "preact/hooks";
import { chooseAddress, codes, say } from "../../hub";
import { languageOptions } from "../../languages";
import { Choice } from "../../parts/choice";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { unbroken } from "../../show";
import { supervisor } from "../../state";
import type { Codes, Lasts } from "../../wire";
import { snake } from "../../words/covers";
import { PocketPage } from "./pocket";
import { sheet } from "./review/ask";
import { t } from "./words";

/** For the cab and the tailgate, in the language of whoever reads it there. */
const CAB_PAPERS = ["cab-card", "hand-signals"] as const;

const LASTS: Lasts[] = ["today", "this_week", "until_renewed"];

export function CodesPage() {
  const words = t();
  const [got, setGot] = useState<Codes | null>(null);
  const [trouble, setTrouble] = useState("");
  const [renewing, setRenewing] = useState(false);
  const [pocket, setPocket] = useState(false);
  const generation = supervisor.value?.codes_generation;
  const load = async () => {
    const answer = await codes();
    setTrouble(answer.ok ? "" : answer.text);
    if (answer.ok) setGot(answer.value);
  };
  useEffect(() => void load(), [generation]);
  if (pocket) return <PocketPage onClose={() => setPocket(false)} />;
  if (trouble) return <p class="warning">{trouble}</p>;
  if (!got) return <p class="empty">{words.loading}</p>;
  const others = got.addresses.filter((one) => one.host !== got.address.host);
  return (
    <div class="codes">
      {got.changed_since_yesterday && <p class="warning">{words.addressChanged}</p>}
      <div class="row no-print">
        <Key onPress={() => window.print()}>{words.print}</Key>
        <Key onPress={() => setRenewing(true)}>{words.newCodes}</Key>
        <Key onPress={() => setPocket(true)}>{words.pocketSheet}</Key>
      </div>
      <div class="no-print">
        <Choice
          title={words.codesLast}
          options={LASTS.map((id) => ({ id, name: words.lasts[id] }))}
          chosen={supervisor.value?.codes_last ?? null}
          onChoose={(lasts: Lasts) => void say({ kind: "set_codes_last", lasts })}
        />
        <p>{words.lastsNote}</p>
      </div>
      <p class="no-print">{words.cabPapers}</p>
      <div class="row wrap no-print">
        {CAB_PAPERS.flatMap((kind) =>
          languageOptions.map(({ id, name }) => (
            <a key={`${kind} ${id}`} class="key" href={sheet(kind, "", id)} target="_blank" rel="noreferrer">
              {words.review.sheetNames[snake(kind)]} · {name}
            </a>
          )),
        )}
      </div>
      <p>
        {words.codesAddress}{" "}
        <strong>
          {got.address.host}:{got.address.port}
        </strong>
      </p>
      <div class="code-cards">
        {got.wifi && (
          <Code title={`${words.wifi}: ${got.wifi.ssid}`} svg={got.wifi.svg} under={words.joinStay} />
        )}
        {got.codes.map((one) => (
          <Code
            key={one.url}
            title={[...one.roles.map((role) => words.roles[role]), one.machine ?? ""].join(" ")}
            svg={one.svg}
            under={one.url}
          />
        ))}
      </div>
      {others.length > 0 && (
        <ul class="lines no-print">
          {others.map((one) => (
            <li key={one.host}>
              <span>
                {one.host} ({one.interface}) {one.why}
              </span>
              <Key
                kind="small"
                label={`${words.choose} ${one.host}`}
                onPress={() => void chooseAddress(one.host).then(load)}
              >
                {words.choose}
              </Key>
            </li>
          ))}
        </ul>
      )}
      {renewing && <Renew onClose={() => setRenewing(false)} />}
    </div>
  );
}

interface CodeProps {
  title: string;
  svg: string;
  under: string;
}

/** The hub draws the code; as a picture it can run nothing on this page. */
function Code({ title, svg, under }: CodeProps) {
  return (
    <figure class="code">
      <figcaption>{unbroken(title)}</figcaption>
      <img src={`data:image/svg+xml,${encodeURIComponent(svg)}`} alt={`${title}: ${under}`} />
      <small>{under}</small>
    </figure>
  );
}

function Renew({ onClose }: { onClose: () => void }) {
  const words = t();
  return (
    <Panel title={words.newCodes} onClose={onClose} closeWord={words.cancel}>
      <p>{words.newCodesAsk}</p>
      <Key
        kind="large"
        onPress={() => {
          void say({ kind: "renew_codes" });
          onClose();
        }}
      >
        {words.newCodes}
      </Key>
    </Panel>
  );
}
