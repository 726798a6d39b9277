/** OPEN THE NEXT DAY: everybody joins anew; this phone comes in again by itself. */
import { useState } from "preact/hooks";
import { openNextDay } from "../../../hub";
import { Key } from "../../../parts/keys";
import { Panel } from "../../../parts/panel";
import { t } from "../words";

export function NextDayPanel({ onClose }: { onClose: () => void }) {
  const words = t().record;
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState("");
  const open = async () => {
    setBusy(true);
    const got = await openNextDay();
    // The page starts anew with the new day's cookie.
    if (got.ok) return location.replace("/");
    setBusy(false);
    setTrouble(got.text);
  };
  return (
    <Panel title={words.nextDay} onClose={onClose} closeWord={t().cancel}>
      <p>{words.nextDayAsk}</p>
      {trouble && (
        <p class="warning" role="alert">
          {trouble}
        </p>
      )}
      <Key kind="send" disabled={busy} why={t().kept.owed.wait} onPress={() => void open()}>
        {words.nextDay}
      </Key>
    </Panel>
  );
}
