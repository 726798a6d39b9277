/** THE DAY: what was out of the ordinary first and counted by kind, beside it what is open and on record; then the lanes. */
import { useState } from "preact/hooks";
import { Key } from "../../../parts/keys";
import { said } from "../../../said";
import { dateOf, timeOfDay, unbroken } from "../../../show";
import type { Review } from "../../../wire";
import { Lanes } from "../charts/lanes";
import { Figures } from "../figures";
import { t } from "../words";
import { Sentences } from "./tables";

interface DayProps {
  review: Review;
  /** An entry is looked at, or a time. */
  onEntry: (seq: number) => void;
  onReplay: (at: number) => void;
}

export function DayPart({ review, onEntry, onReplay }: DayProps) {
  const words = t().review;
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
                {one.by}: {said(one)}
              </li>
            ))}
          </ul>
        </>
      )}
      <div class="beside">
        <Exceptions review={review} onEntry={onEntry} />
        <section>
          <h2>
            {words.open} <small>{review.open.length}</small>
          </h2>
          {review.open.length === 0 && <p>{words.nothingOpen}</p>}
          <ul class="lines">
            {review.open.map((one) => (
              <li key={one.english}>{said(one)}</li>
            ))}
          </ul>
          <h2>{words.record}</h2>
          <Sentences said={review.record} photos={review.photos} />
          <h2>{words.changes}</h2>
          <Sentences said={review.changes} />
        </section>
      </div>
      <h2>{words.lanes}</h2>
      <p class="no-print">{words.lanesHere}</p>
      <Lanes review={review} onPick={onReplay} />
    </>
  );
}

type Kind = Review["exceptions"][number]["kind"];

/** How often each kind happened, the first that happened first. */
function tally(review: Review): [Kind, number][] {
  const counts = new Map<Kind, number>();
  for (const { kind } of review.exceptions) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return [...counts];
}

/** A pressed count leaves its kind alone on the page; pressed again, all stand. Paper has them all. */
function Exceptions({ review, onEntry }: Pick<DayProps, "review" | "onEntry">) {
  const words = t().review;
  const [chosen, setOnly] = useState<Kind | null>(null);
  const kinds = tally(review);
  const only = kinds.some(([kind]) => kind === chosen) ? chosen : null;
  return (
    <section>
      <h2>
        {words.exceptions} <small>{review.exceptions.length}</small>
      </h2>
      {kinds.length === 0 && <p>{words.none}</p>}
      {kinds.length > 1 && (
        <p class="counts no-print">
          {kinds.map(([kind, count]) => (
            <Key
              key={kind}
              kind="small"
              pressed={kind === only}
              onPress={() => setOnly(kind === only ? null : kind)}
            >
              {words.kinds[kind]} {count}
            </Key>
          ))}
        </p>
      )}
      <ul class="lines">
        {review.exceptions.map((one) => (
          <li key={one.said.seq} class={only && one.kind !== only ? "on-paper" : ""}>
            <button type="button" class="line" onClick={() => onEntry(one.said.seq)}>
              <span class="seq">{timeOfDay(one.said.at)}</span> <strong>{words.kinds[one.kind]}</strong>{" "}
              {said(one.said)}
            </button>
            <Figures photos={review.photos.filter((photo) => photo.entry === one.said.seq)} />
          </li>
        ))}
      </ul>
    </section>
  );
}
