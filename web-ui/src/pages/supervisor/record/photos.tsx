/** Photos of the day, and one more of whatever it is. */
import { PhotoKey } from "../../../parts/photo_key";
import type { PhotoCard } from "../../../wire";
import { Figures } from "../figures";
import { t } from "../words";

export function Photos({ photos }: { photos: PhotoCard[] }) {
  const words = t().record;
  return (
    <section aria-label={words.photos}>
      <h2>{words.photos}</h2>
      <Figures photos={photos} />
      <div class="tiles">
        <PhotoKey about={{}} />
      </div>
    </section>
  );
}
