/** The large shape that tells machines apart without a hue. */
import type { MachineShape } from "../wire";

const PATHS: Record<MachineShape, string> = {
  square: "M3 3h18v18H3z",
  triangle: "M12 2l10.5 19h-21z",
  circle: "M12 2a10 10 0 1 0 .01 0z",
  diamond: "M12 1l11 11-11 11L1 12z",
};

export function Shape({ of }: { of: MachineShape }) {
  return (
    <svg class="shape" viewBox="0 0 24 24" aria-hidden="true">
      <path d={PATHS[of]} />
    </svg>
  );
}
