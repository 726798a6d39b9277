/** Photos in place: a figure each, in full by a press; one that was promised and has not come is shown as owed. */
import { timeOfDay } from "../../show";
import type { PhotoCard } from "../../wire";
import { t } from "./words";

export function Figures({ photos }: { photos: readonly PhotoCard[] }) {
  const words = t().record;
  if (photos.length === 0) return null;
  return (
    <div class="photos">
      {photos.map((one) => {
        const of = words.photoOf(one.mark ?? one.face ?? "", one.by, timeOfDay(one.at));
        return (
          <figure key={one.photo}>
            {one.sha256 ? (
              <a href={`/api/photos/${one.sha256}`} target="_blank" rel="noreferrer">
                <img src={`/api/photos/${one.sha256}`} alt={`${of} ${one.words}`} loading="lazy" />
              </a>
            ) : (
              <p class="owed">
                {one.given_up ? words.givenUp(one.by, one.given_up) : words.promised(one.by)}
              </p>
            )}
            <figcaption>
              {of} {one.words}
            </figcaption>
          </figure>
        );
      })}
    </div>
  );
}

/** The photos that stand under a sentence: what it says, or else what promised them. */
export function photosAt(
  seq: number,
  said: readonly { seq: number }[],
  photos: readonly PhotoCard[],
): PhotoCard[] {
  const there = (entry: number | null | undefined) => said.some((one) => one.seq === entry);
  return photos.filter((one) => (there(one.entry) ? one.entry : one.seq) === seq);
}
