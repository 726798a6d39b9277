/** A box to sign in with a finger: straight strokes on a field of 300 × 100, as the log keeps them. */
import { useRef, useState } from "preact/hooks";
import { Key } from "./keys";

const WIDE = 300;
const TALL = 100;
/** Points closer than this add nothing to a signature. */
const CLOSE = 1.5;
/** The hub takes no longer path than 4000 characters. */
const LONGEST = 3_900;

interface PadProps {
  label: string;
  wipe: string;
  strokes: string;
  onStrokes: (strokes: string) => void;
}

export function SignaturePad({ label, wipe, strokes, onStrokes }: PadProps) {
  const box = useRef<SVGSVGElement>(null);
  const last = useRef<{ x: number; y: number } | null>(null);
  const [path, setPath] = useState(strokes);
  const take = (next: string) => {
    if (next.length > LONGEST) return;
    setPath(next);
    onStrokes(next);
  };
  const at = (event: PointerEvent) => {
    const frame = box.current?.getBoundingClientRect();
    if (!frame || frame.width === 0) return null;
    const within = (value: number, most: number) => Math.min(Math.max(value, 0), most);
    return {
      x: within(((event.clientX - frame.left) * WIDE) / frame.width, WIDE),
      y: within(((event.clientY - frame.top) * TALL) / frame.height, TALL),
    };
  };
  const written = (point: { x: number; y: number }) => `${point.x.toFixed(1)} ${point.y.toFixed(1)}`;
  const begin = (event: PointerEvent) => {
    const point = at(event);
    if (!point) return;
    box.current?.setPointerCapture(event.pointerId);
    last.current = point;
    take(`${path}M${written(point)}`);
  };
  const go = (event: PointerEvent) => {
    const [point, before] = [at(event), last.current];
    if (!point || !before) return;
    if (Math.hypot(point.x - before.x, point.y - before.y) < CLOSE) return;
    last.current = point;
    take(`${path}L${written(point)}`);
  };
  return (
    <div class="signature">
      <span>{label}</span>
      <svg
        ref={box}
        viewBox={`0 0 ${WIDE} ${TALL}`}
        role="img"
        aria-label={label}
        onPointerDown={begin}
        onPointerMove={go}
        onPointerUp={() => {
          last.current = null;
        }}
      >
        <line class="signature-line" x1="12" x2={WIDE - 12} y1="80" y2="80" />
        <path d={path || "M0 0"} />
      </svg>
      <Key kind="small" onPress={() => take("")}>
        {wipe}
      </Key>
    </div>
  );
}

/** A signature as it was drawn. */
export function Drawn({ strokes, name }: { strokes: string; name: string }) {
  return (
    <svg class="drawn" viewBox={`0 0 ${WIDE} ${TALL}`} role="img" aria-label={name}>
      <path d={strokes} />
    </svg>
  );
}
