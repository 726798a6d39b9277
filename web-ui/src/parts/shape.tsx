/** The large shape that tells machines apart without a hue. */
import type { MachineShape } from "../wire";

const PATHS: Record<MachineShape, string> = {
  square: "M3 3h18v18H3z",
  triangle: "M12 2l10.5 19h-21z",
  ring: "M12 1a11 11 0 1 0 .01 0zM12 7a5 5 0 1 1-.01 0z",
  bars: "M2 3h7v18H2zM15 3h7v18h-7z",
};

export function Shape({ of }: { of: MachineShape }) {
  return (
    <svg class="shape" viewBox="0 0 24 24" aria-hidden="true">
      <path d={PATHS[of]} fill-rule="evenodd" />
    </svg>
  );
}
