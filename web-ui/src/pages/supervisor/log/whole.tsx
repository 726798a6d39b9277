/** What goes with the whole log: its table, the file that proves itself, and whether everything would come back. */
import { useState } from "preact/hooks";
import { tryRestore } from "../../../hub";
import { Key } from "../../../parts/keys";
import { Panel } from "../../../parts/panel";
import { t } from "../words";
import { logWords } from "./words";

export function WholeLog() {
  const words = t();
  const title = logWords().whole;
  const [open, setOpen] = useState(false);
  return (
    <>
      <Key kind="small seldom" onPress={() => setOpen(true)}>
        {title}
      </Key>
      {open && (
        <Panel title={title} onClose={() => setOpen(false)}>
          <div class="row">
            <a class="key" href="/api/log.csv" download>
              {words.exportTable}
            </a>
            <a class="key" href="/api/export" download>
              {words.exportDay}
            </a>
            <TryRestore />
          </div>
        </Panel>
      )}
    </>
  );
}

/** Whether everything would come back, tried in a scratch folder of the laptop. */
function TryRestore() {
  const words = t().restore;
  const [said, setSaid] = useState("");
  const press = async () => {
    setSaid(words.tries);
    const got = await tryRestore();
    setSaid(
      got.ok ? words.back(got.value.head, got.value.photos, got.value.days, got.value.sheets) : got.text,
    );
  };
  return (
    <>
      <Key onPress={() => void press()}>{words.key}</Key>
      {said && <p role="status">{said}</p>}
    </>
  );
}
