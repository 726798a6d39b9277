/** The moments of a day that are walked through: what was out of the ordinary, all that was said, or what was said about a mark. */
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

/** Those with all of these words, in either language; capitals and accents do not matter. */
export function withWords(moments: readonly AMoment[], words: string): AMoment[] {
  const wanted = plain(words).split(/\s+/).filter(Boolean);
  return moments.filter(({ said }) => {
    const text = plain(`${said.by}\n${said.english}\n${said.spanish}`);
    return wanted.every((word) => text.includes(word));
  });
}

/** Where a replay begins: at the first thing that was out of the ordinary, else where the day does. */
export function beginningOf(review: Review): number {
  return momentsOf(review, "")[0]?.at ?? review.from;
}

/** The moment before and after one, and the last of those at it. Moments of one time are one step. */
export function around(moments: readonly AMoment[], at: number) {
  const before = moments.filter((one) => one.at < at);
  return {
    before: before[before.length - 1],
    next: moments.find((one) => one.at > at),
    here: moments.filter((one) => one.at <= at).pop(),
  };
}
