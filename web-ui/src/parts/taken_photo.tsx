/** What stands over the page from the moment a photo is taken until it is kept or thrown away. */
import { takenPhoto } from "../state";
import { t } from "../words";
import { LatePanel } from "./late_panel";

export function TakenPhoto() {
  const taken = takenPhoto.value;
  if (!taken) return null;
  const close = () => {
    takenPhoto.value = null;
  };
  return (
    <LatePanel title={t().photo} onClose={close}>
      {(late) => <late.PhotoPanel taken={taken} onClose={close} />}
    </LatePanel>
  );
}
