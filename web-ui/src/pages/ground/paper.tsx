/** FROM PAPER: what was booked while the hub was away is typed in on READ, under its own time and its own reader. */
import { useState } from "preact/hooks";
import { Field } from "../../parts/field";
import { Key } from "../../parts/keys";
import { timeOfDay } from "../../show";
import { now } from "../../state";
import { t } from "../../words_later";
import { c } from "../control/words";
import { choose, chosen } from "./at";

/** The moment of a time of day that lies behind us, today or before midnight; null when nothing was typed. */
export function momentPast(typed: string, today: number): number | null {
  const [hours, minutes] = typed.split(":").map(Number);
  if (hours === undefined || minutes === undefined || Number.isNaN(hours + minutes)) return null;
  const at = new Date(today);
  at.setHours(hours, minutes, 0, 0);
  if (at.getTime() > today) at.setDate(at.getDate() - 1);
  return at.getTime();
}

export function FromPaper({ onClose }: { onClose: () => void }) {
  const words = c().paper;
  const set = chosen.value.paper;
  const [time, setTime] = useState(set ? timeOfDay(set.at) : "");
  const [by, setBy] = useState(set?.by ?? "");
  const at = momentPast(time, now.value);
  return (
    <>
      <p>{words.note}</p>
      <label class="field">
        <span>{words.at}</span>
        <input type="time" value={time} onInput={(event) => setTime(event.currentTarget.value)} />
      </label>
      <Field name={words.by} value={by} onValue={setBy} text />
      <Key
        kind="send"
        disabled={at === null || by.trim() === ""}
        why={at === null ? t().kept.owed.time : t().kept.owed.name}
        onPress={() => {
          if (at !== null) choose({ paper: { at, by: by.trim() } });
          onClose();
        }}
      >
        {words.type}
      </Key>
      {set && (
        <Key
          onPress={() => {
            choose({ paper: null });
            onClose();
          }}
        >
          {words.end}
        </Key>
      )}
    </>
  );
}
