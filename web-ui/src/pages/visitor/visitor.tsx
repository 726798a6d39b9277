/** A visitor looks on; STOP works for them too. */
import { Frame } from "../../parts/frame";
import { MachineCards } from "../../parts/machine_cards";
import { ground, me } from "../../state";
import { t } from "../../words";

export function VisitorPage() {
  const words = t();
  return (
    <Frame title={me.value?.person ?? words.title} tabs={[]} tab="" onTab={() => undefined}>
      <p>{words.visitor}</p>
      {ground.value && <MachineCards cards={ground.value.machines} />}
      <p class="quiet">{words.caution}</p>
    </Frame>
  );
}
