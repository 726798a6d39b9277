/** LOAD: one press is one truck; and what a machine waits for. */
import { useState } from "preact/hooks";
import { numberTyped } from "../../../amounts";
import { say } from "../../../hub";
import { Choice } from "../../../parts/choice";
import { Field } from "../../../parts/field";
import { Key } from "../../../parts/keys";
import { Panel } from "../../../parts/panel";
import { ground } from "../../../state";
import { t } from "../../../words_later";
import { machine } from "../at";
import { w } from "./words";

type Way = "out" | "in";

export function LoadPanel({ names, onClose }: { names: string[]; onClose: () => void }) {
  const words = w();
  const [way, setWay] = useState<Way>("out");
  const [other, setOther] = useState(names.length === 0);
  const [material, setMaterial] = useState("");
  const [yards, setYards] = useState("");
  const loose = numberTyped(yards);
  const count = (name: string) => {
    if (name.trim() === "" || loose === null) return;
    void say({ kind: "count_load", way, material: name, loose_cy: loose ?? null });
    onClose();
  };
  return (
    <Panel title={words.loadTitle} onClose={onClose} closeWord={t().cancel}>
      <Choice
        title={words.loadSent}
        options={(["out", "in"] as const).map((id) => ({ id, name: words.way[id] }))}
        chosen={way}
        onChoose={(id: Way) => setWay(id)}
      />
      <p class="quiet">{t().cuts.also.falling_loads}</p>
      {other ? (
        <>
          <Field name={words.materialName} value={material} onValue={setMaterial} text />
          <Field name={words.yards} value={yards} onValue={setYards} />
          <Key
            kind="send"
            disabled={material.trim() === "" || loose === null}
            why={material.trim() === "" ? t().kept.owed.material : t().kept.owed.yards}
            onPress={() => count(material)}
          >
            {t().send}
          </Key>
        </>
      ) : (
        <div class="tiles">
          {names.map((name) => (
            <Key key={name} kind="tile" onPress={() => count(name)}>
              {name}
            </Key>
          ))}
          <Key kind="tile" onPress={() => setOther(true)}>
            {words.otherLoad}
          </Key>
        </div>
      )}
    </Panel>
  );
}

const CAUSES = ["truck", "attachment", "broken", "parked", "other"] as const;

/** The ground person says it for a machine; an operator for their own. */
export function WaitPanel({ own, onClose }: { own?: string; onClose: () => void }) {
  const words = w();
  const machines = ground.value?.machines ?? [];
  const [of, setOf] = useState(own ?? machine.value?.id ?? machines[0]?.id ?? "");
  const said = (cause: (typeof CAUSES)[number]) => {
    void say({ kind: "say_waiting", machine: of, cause });
    onClose();
  };
  const again = () => {
    void say({ kind: "work_again", machine: of });
    onClose();
  };
  return (
    <Panel title={`${words.waitTitle} ${of}`} onClose={onClose} closeWord={t().cancel}>
      {!own && machines.length > 1 && (
        <Choice
          title={t().machine}
          options={machines.map((one) => ({ id: one.id, name: one.id }))}
          chosen={of}
          onChoose={setOf}
        />
      )}
      <Choice
        title={words.waitTitle}
        options={CAUSES.map((id) => ({ id, name: words.wait[id] }))}
        onChoose={said}
      />
      <Key kind="send" onPress={again}>
        {words.again}
      </Key>
    </Panel>
  );
}
