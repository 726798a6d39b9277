/** REVIEW: a day afterwards. What was out of the ordinary first, then what is open, lanes, replay, pictures, who told, paper. */
import { useEffect, useState } from "preact/hooks";
import { Choice } from "../../../parts/choice";
import { dateOf, timeOfDay, unbroken } from "../../../show";
import { language } from "../../../state";
import type { Review } from "../../../wire";
import { Lanes } from "../charts/lanes";
import { Figures } from "../figures";
import { t } from "../words";
import { days, review as fetchReview } from "./ask";
import { Papers } from "./papers";
import { Pictures } from "./pictures";
import { Replay } from "./replay";
import { Sentences, Tables } from "./tables";
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

function DayPart({ review, onReplay }: { review: Review; onReplay: (at: number) => void }) {
  const words = t().review;
  const own = (one: { english: string; spanish: string }) =>
    language.value === "spanish" ? one.spanish : one.english;
  return (
    <>
      {review.amended_later.length > 0 && (
        <>
          <h2>{words.amendedLater}</h2>
          <ul class="lines">
            {review.amended_later.map((one) => (
              <li key={one.seq}>
                <strong>
                  {unbroken(dateOf(one.at))} {timeOfDay(one.at)}
                </strong>{" "}
                {one.by}: {own(one)}
              </li>
            ))}
          </ul>
        </>
      )}
      <h2>{words.exceptions}</h2>
      {review.exceptions.length === 0 && <p>{words.none}</p>}
      <ul class="lines">
        {review.exceptions.map((one) => (
          <li key={one.said.seq}>
            <button type="button" class="line" onClick={() => onReplay(one.said.at)}>
              <span class="seq">{timeOfDay(one.said.at)}</span> <strong>{words.kinds[one.kind]}</strong>{" "}
              {own(one.said)}
            </button>
            <Figures photos={review.photos.filter((photo) => photo.entry === one.said.seq)} />
          </li>
        ))}
      </ul>
      <h2>{words.open}</h2>
      {review.open.length === 0 && <p>{words.nothingOpen}</p>}
      <ul class="lines">
        {review.open.map((one) => (
          <li key={one.english}>{own(one)}</li>
        ))}
      </ul>
      <h2>{words.lanes}</h2>
      <Lanes review={review} onReplay={onReplay} />
      <h2>{words.record}</h2>
      <Sentences said={review.record} photos={review.photos} />
      <h2>{words.changes}</h2>
      <Sentences said={review.changes} />
    </>
  );
}
