/** What stands over the page from the moment a photo is taken until it is kept or thrown away. */
import { seldom } from "../late";
import { takenPhoto } from "../state";
import { t } from "../words";
import { Panel } from "./panel";

export function TakenPhoto() {
  const taken = takenPhoto.value;
  if (!taken) return null;
  const close = () => {
    takenPhoto.value = null;
  };
  const script = seldom.script.value;
  if (script) return <script.PhotoPanel taken={taken} onClose={close} />;
  return (
    <Panel title={t().photo} onClose={close}>
      <p>{t().loading}</p>
    </Panel>
  );
}
