/** REVIEW: a day afterwards. What was out of the ordinary first, then what is open, lanes, replay, pictures, who told, paper. */
import { useEffect, useState } from "preact/hooks";
import { Choice } from "../../../parts/choice";
import type { Review } from "../../../wire";
import { t } from "../words";
import { days, review as fetchReview } from "./ask";
import { DayPart } from "./day";
import { Papers } from "./papers";
import { Pictures } from "./pictures";
import { Replay } from "./replay";
import { Tables } from "./tables";
import { Told } from "./told";

type Part = "day" | "replay" | "pictures" | "tables" | "told" | "paper";
const PARTS: readonly Part[] = ["day", "replay", "pictures", "tables", "told", "paper"];

export function ReviewPage() {
  const words = t().review;
  const [all, setAll] = useState<string[]>([]);
  const [day, setDay] = useState("");
  const [got, setGot] = useState<Review | null>(null);
  const [trouble, setTrouble] = useState("");
  const [part, setPart] = useState<Part>("day");
  const [at, setAt] = useState<number | null>(null);
  useEffect(() => {
    void days().then((answer) => answer.ok && setAll([...answer.value].reverse()));
  }, []);
  useEffect(() => {
    setAt(null);
    void fetchReview(day).then((answer) => {
      setTrouble(answer.ok ? "" : answer.text);
      if (answer.ok) setGot(answer.value);
    });
  }, [day]);
  const replayAt = (moment: number) => {
    setAt(moment);
    setPart("replay");
  };
  return (
    <div class="review">
      <div class="no-print">
        {all.length > 1 && (
          <label class="field">
            <span>{words.day}</span>
            <select value={got?.day ?? ""} onChange={(event) => setDay(event.currentTarget.value)}>
              {all.map((name) => (
                <option key={name}>{name}</option>
              ))}
            </select>
          </label>
        )}
        <Choice
          title={words.part}
          options={PARTS.map((id) => ({ id, name: words.parts[id] }))}
          chosen={part}
          onChoose={setPart}
        />
      </div>
      {trouble && <p class="warning">{trouble}</p>}
      {!got ? (
        !trouble && <p class="empty">{t().loading}</p>
      ) : part === "day" ? (
        <DayPart review={got} onReplay={replayAt} />
      ) : part === "replay" ? (
        <Replay review={got} from={at ?? got.from} />
      ) : part === "pictures" ? (
        <Pictures review={got} />
      ) : part === "tables" ? (
        <Tables review={got} onReplay={replayAt} />
      ) : part === "told" ? (
        <Told review={got} />
      ) : (
        <Papers review={got} />
      )}
    </div>
  );
}
