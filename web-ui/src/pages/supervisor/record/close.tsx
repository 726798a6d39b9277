/** CLOSE THE DAY: what is missing is closed over one by one, each with its reason; nobody closes over people. */
import { useState } from "preact/hooks";
import { say } from "../../../hub";
import { Field } from "../../../parts/field";
import { Key } from "../../../parts/keys";
import { Panel } from "../../../parts/panel";
import type { RecordCard } from "../../../wire";
import { t } from "../words";
import { missingWords } from "./missing";

export function ClosePanel({ record, onClose }: { record: RecordCard; onClose: () => void }) {
  const words = t().record;
  const [whys, setWhys] = useState<Record<string, string>>({});
  const [said, setSaid] = useState("");
  const named = record.missing.map((missing) => ({ missing, key: JSON.stringify(missing) }));
  const ready = named.every(({ missing, key }) => missing.kind !== "people_in" && whys[key]?.trim());
  return (
    <Panel title={words.close} onClose={onClose} closeWord={t().cancel}>
      {named.map(({ missing, key }) => (
        <fieldset class="missing" key={key}>
          <legend>{missingWords(missing)}</legend>
          {missing.kind === "closing_check" && <p class="quiet">{words.unprovenThen}</p>}
          {missing.kind !== "people_in" && (
            <Field
              name={words.closeOver}
              text
              value={whys[key] ?? ""}
              onValue={(why) => setWhys({ ...whys, [key]: why })}
            />
          )}
        </fieldset>
      ))}
      <Field name={words.closeAsk} text value={said} onValue={setSaid} />
      <Key
        kind="send"
        disabled={!ready}
        onPress={() => {
          const overrides = named.map(({ missing, key }) => ({ missing, why: whys[key] ?? "" }));
          void say({ kind: "close_day", overrides, words: said });
          onClose();
        }}
      >
        {words.close}
      </Key>
    </Panel>
  );
}
