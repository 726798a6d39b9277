/** Photos of the day, one more of whatever it is, and those that are not waited for any more. */
import { useState } from "preact/hooks";
import { Key } from "../../../parts/keys";
import { PhotoKey } from "../../../parts/photo_key";
import { timeOfDay } from "../../../show";
import type { PhotoCard } from "../../../wire";
import { Figures } from "../figures";
import { WhyPanel } from "../panels";
import { t } from "../words";

export function Photos({ photos }: { photos: PhotoCard[] }) {
  const words = t().record;
  const [lost, setLost] = useState<PhotoCard | null>(null);
  const owed = photos.filter((one) => !one.sha256 && !one.given_up);
  return (
    <section aria-label={words.photos}>
      <h2>{words.photos}</h2>
      <Figures photos={photos} />
      <div class="tiles">
        <PhotoKey about={{}} />
        {owed.map((one) => (
          <Key key={one.photo} kind="tile" onPress={() => setLost(one)}>
            {words.giveUp} <small>{words.giveUpOf(one.by, timeOfDay(one.at))}</small>
          </Key>
        ))}
      </div>
      {lost && (
        <WhyPanel
          title={words.giveUpOf(lost.by, timeOfDay(lost.at))}
          ask={words.giveUpWhy}
          act={words.giveUp}
          command={(why) => ({ kind: "give_up_photo", photo: lost.photo, why })}
          onClose={() => setLost(null)}
        />
      )}
    </section>
  );
}
