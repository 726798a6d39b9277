/** PHOTO: opens the phone's own camera, which works on plain http too. What becomes of the photo comes in a script of its own. */
import { type PhotoAbout, takenPhoto } from "../state";
import { t } from "../words";

interface PhotoKeyProps {
  about: PhotoAbout;
  kind?: string;
  /** Hears the photo's name once it is kept. */
  onKept?: (photo: string) => void;
}

export function PhotoKey({ about, kind = "tile", onKept }: PhotoKeyProps) {
  return (
    <label class={`key photo ${kind}`}>
      {t().photo} <small>{t().nobodyInIt}</small>
      <input
        class="unseen"
        type="file"
        accept="image/*"
        capture="environment"
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          if (file) takenPhoto.value = { file, about, onKept };
          // The same file may be chosen again.
          currentTarget.value = "";
        }}
      />
    </label>
  );
}
