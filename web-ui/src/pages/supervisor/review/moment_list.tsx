/** The list that a replay is walked by: chosen, searched, and pressed; the moment that is shown stands out. */
import { useLayoutEffect, useRef } from "preact/hooks";
import { said } from "../../../said";
import { timeOfDay } from "../../../show";
import type { Review } from "../../../wire";
import { t } from "../words";
import { ALL, type AMoment } from "./moments";

/** Fields that the keyboard goes to. */
export const SEARCH = "moments-words";
export const CHOICE = "moments-of";

interface MomentListProps {
  review: Review;
  /** Those that fit. */
  moments: readonly AMoment[];
  of: string;
  words: string;
  here: AMoment | undefined;
  onOf: (of: string) => void;
  onWords: (words: string) => void;
  onPick: (one: AMoment) => void;
}

export function MomentList({ review, moments, of, words, here, onOf, onWords, onPick }: MomentListProps) {
  const say = t().review;
  const list = useRef<HTMLOListElement>(null);
  useLayoutEffect(() => {
    list.current?.querySelector("[aria-current]")?.scrollIntoView?.({ block: "nearest" });
  }, [here?.seq]);
  return (
    <section class="moments no-print">
      <div class="moments-head">
        <label class="field">
          <span>{say.momentsOf}</span>
          <select id={CHOICE} value={of} onChange={(event) => onOf(event.currentTarget.value)}>
            <option value="">{say.momentsNoted}</option>
            <option value={ALL}>{say.momentsAll}</option>
            {review.marks.map((one) => (
              <option key={one.mark} value={one.mark}>
                {say.momentsMark(one.mark)}
              </option>
            ))}
          </select>
        </label>
        <label class="field">
          <span>{say.momentsWith}</span>
          <input
            id={SEARCH}
            type="search"
            autocomplete="off"
            value={words}
            onInput={(event) => onWords(event.currentTarget.value)}
          />
        </label>
      </div>
      <output>{moments.length === 0 ? say.noMoment : say.moments(moments.length)}</output>
      <ol class="lines" ref={list}>
        {moments.map((one) => (
          <li key={one.seq}>
            <button
              type="button"
              class="line"
              aria-current={one.seq === here?.seq ? "true" : undefined}
              onClick={() => onPick(one)}
            >
              <span class="seq">{timeOfDay(one.at, true)}</span>{" "}
              {one.kind && <strong>{say.kinds[one.kind]}</strong>} {one.said.by}: {said(one.said)}
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}
