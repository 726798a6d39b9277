/** Photos of the job; one that was promised and has not come is shown as owed. */
import { timeOfDay } from "../../../show";
import type { PhotoCard } from "../../../wire";
import { t } from "../words";

export function Photos({ photos }: { photos: PhotoCard[] }) {
  const words = t().record;
  return (
    <section aria-label={words.photos}>
      <h2>{words.photos}</h2>
      <div class="photos">
        {photos.map((one) => {
          const of = words.photoOf(one.mark ?? "", one.by, timeOfDay(one.at));
          return (
            <figure key={one.photo}>
              {one.sha256 ? (
                <a href={`/api/photos/${one.sha256}`} target="_blank" rel="noreferrer">
                  <img src={`/api/photos/${one.sha256}`} alt={`${of} ${one.words}`} loading="lazy" />
                </a>
              ) : (
                <p class="owed">{words.promised(one.by)}</p>
              )}
              <figcaption>
                {of} {one.words}
              </figcaption>
            </figure>
          );
        })}
      </div>
    </section>
  );
}
