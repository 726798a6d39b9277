/** CAN'T: what is in the way, what the machine waits for, and a battery that runs low. */
import { say } from "../../hub";
import { Choice } from "../../parts/choice";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { operator } from "../../state";
import type { CantReason } from "../../wire";
import { t } from "../../words_later";

const REASONS: readonly CantReason[] = ["hard_ground", "water", "pipe", "line", "face", "other"];

const WAITS = ["truck", "attachment", "broken", "parked"] as const;

export function CantPanel({ onClose }: { onClose: () => void }) {
  const low = operator.value?.battery_low != null;
  const choose = (why: CantReason) => {
    void say({ kind: "say_cant", why });
    onClose();
  };
  return (
    <Panel title={t().cantKey} onClose={onClose} closeWord={t().cancel}>
      <div class="cant">
        <div>
          <Choice
            title={t().cantWhy}
            kind="large"
            options={REASONS.map((id) => ({ id, name: t().cant[id] }))}
            onChoose={choose}
          />
          <p>{t().cantStops}</p>
        </div>
        <div>
          <Choice
            title={t().account.waitTitle}
            options={WAITS.map((id) => ({ id, name: t().account.wait[id] }))}
            onChoose={(cause) => {
              void say({ kind: "say_waiting", cause });
              onClose();
            }}
          />
          <div class="row">
            <Key
              onPress={() => {
                void say({ kind: "work_again" });
                onClose();
              }}
            >
              {t().account.again}
            </Key>
            <Key
              pressed={low}
              onPress={() => {
                void say({ kind: "low_battery", charging: low });
                onClose();
              }}
            >
              {low ? t().crew.batteryCharges : t().crew.batteryLow}
            </Key>
          </div>
        </div>
      </div>
    </Panel>
  );
}
