/** A photo that was just taken: seen as it will be kept, with a word about it; kept, or thrown away. */
import { useEffect, useRef, useState } from "preact/hooks";
import { Field } from "../parts/field";
import { Key } from "../parts/keys";
import { Panel } from "../parts/panel";
import { language, type TakenPhoto } from "../state";
import { t } from "../words";
import { photo as photoWords } from "../words.gen/photo";
import { keep } from "./bring";
import { type Reduced, reduce } from "./reduce";

interface PhotoPanelProps {
  taken: TakenPhoto;
  onClose: () => void;
}

export function PhotoPanel({ taken, onClose }: PhotoPanelProps) {
  const words = photoWords[language.value];
  const [reduced, setReduced] = useState<Reduced | null>(null);
  const [trouble, setTrouble] = useState(false);
  const [said, setSaid] = useState("");
  const { mark, face, entry } = taken.about;
  useEffect(() => {
    reduce(taken.file).then(setReduced, () => setTrouble(true));
  }, [taken]);
  const send = () => {
    if (!reduced) return;
    const photo = keep(reduced, taken.about, said.trim());
    taken.onKept?.(photo);
    onClose();
  };
  const of = mark ?? face ?? (entry ? words.withEntry(entry) : "");
  return (
    <Panel title={`${t().photo} ${of}`} onClose={onClose} closeWord={words.throwAway}>
      {trouble && <p class="warning">{words.noPicture}</p>}
      {!trouble && !reduced && <p role="status">{words.reducing}</p>}
      {reduced && (
        <>
          <Picture canvas={reduced.canvas} label={of || t().photo} />
          <p class="quiet">
            {words.size(reduced.canvas.width, reduced.canvas.height, Math.ceil(reduced.bytes.length / 1000))}{" "}
            {words.nobodyInIt}
          </p>
          <Field name={words.about} text value={said} onValue={setSaid} />
          <Key kind="send" onPress={send}>
            {words.keep}
          </Key>
        </>
      )}
    </Panel>
  );
}

/** The very dots that were encoded. */
function Picture({ canvas, label }: { canvas: HTMLCanvasElement; label: string }) {
  const frame = useRef<HTMLDivElement>(null);
  useEffect(() => frame.current?.replaceChildren(canvas), [canvas]);
  return <div class="taken" role="img" aria-label={label} ref={frame} />;
}
