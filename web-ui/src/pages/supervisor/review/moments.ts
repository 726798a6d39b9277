/** The moments of a day that are walked through: what was out of the ordinary, all that was said, or what was said about a mark. */
import { eachSaid } from "../../../said";
import type { Review, Sentence } from "../../../wire";
import { plain } from "../log/filter";

export interface AMoment {
  seq: number;
  at: number;
  said: Sentence;
  /** What was out of the ordinary about it. */
  kind: Review["exceptions"][number]["kind"] | null;
}

/** All that was said; a mark stands for itself. */
export const ALL = "*";

/** Those of one choice, the earliest first: empty for what was out of the ordinary. */
export function momentsOf(review: Review, of: string): AMoment[] {
  const kinds = new Map(review.exceptions.map((one) => [one.said.seq, one.kind]));
  const said =
    of === ""
      ? review.exceptions.map((one) => one.said)
      : of === ALL
        ? [
            ...review.exceptions.map((one) => one.said),
            ...review.marks.flatMap((one) => one.said),
            ...review.set_ups.flatMap((one) => one.said),
            ...review.record,
            ...review.changes,
          ]
        : (review.marks.find((one) => one.mark === of)?.said ?? []);
  const once = new Map(said.map((one) => [one.seq, one]));
  return [...once.values()]
    .map((one) => ({ seq: one.seq, at: one.at, said: one, kind: kinds.get(one.seq) ?? null }))
    .sort((a, b) => a.at - b.at || a.seq - b.seq);
}

/** Those with all of these words, in any language; capitals and accents do not matter. */
export function withWords(moments: readonly AMoment[], words: string): AMoment[] {
  const wanted = plain(words).split(/\s+/).filter(Boolean);
  return moments.filter(({ said }) => {
    const text = plain([said.by, ...eachSaid(said)].join("\n"));
    return wanted.every((word) => text.includes(word));
  });
}

/** Where a replay begins: at the first thing that was out of the ordinary; none on a day without. */
export function beginningOf(review: Review): AMoment | undefined {
  return momentsOf(review, "")[0];
}

/** The moment that is shown, the one before it and the next: by the entry that was picked, else by the time. */
export function around(moments: readonly AMoment[], at: number, picked: number | null) {
  const index = moments.findIndex((one) => one.seq === picked);
  if (index >= 0) {
    return { before: moments[index - 1], here: moments[index], next: moments[index + 1] };
  }
  const past = moments.filter((one) => one.at <= at);
  const here = past[past.length - 1];
  // Between two moments, the one before is the one that lies behind.
  const before = here && here.at < at ? here : past.filter((one) => one.at < at).pop();
  return { before, here, next: moments[past.length] };
}
