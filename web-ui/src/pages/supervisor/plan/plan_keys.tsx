/** The keys of the desk's plan: closer, farther, along, all of it. */
import { Key } from "../../../parts/keys";
import { t } from "../words";

interface PlanKeysProps {
  onZoom: (by: number) => void;
  onMove: (x: number, y: number) => void;
  onAll: () => void;
}

export function PlanKeys({ onZoom, onMove, onAll }: PlanKeysProps) {
  const words = t();
  const keys: [string, string, () => void][] = [
    ["+", words.closer, () => onZoom(1.6)],
    ["−", words.farther, () => onZoom(1 / 1.6)],
    ["◂", words.westward, () => onMove(-1, 0)],
    ["▸", words.eastward, () => onMove(1, 0)],
    ["▴", words.northward, () => onMove(0, -1)],
    ["▾", words.southward, () => onMove(0, 1)],
  ];
  return (
    <div class="site-plan-keys" title={words.desk.planKeys}>
      {keys.map(([sign, name, press]) => (
        <Key key={sign} label={name} onPress={press}>
          {sign}
        </Key>
      ))}
      <Key onPress={onAll}>{words.allOfIt}</Key>
    </div>
  );
}
