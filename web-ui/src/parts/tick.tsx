/** The sign of life: a block that fills and empties with each heartbeat. If it stands, nothing on the screen is alive. */
import { beats, linked } from "../state";
import { t } from "../words";

export function Tick() {
  // The two names are the same rule; changing from one to the other lets it run once more.
  const beat = beats.value % 2 === 0 ? "beat-a" : "beat-b";
  return (
    <span
      class={`tick ${linked.value ? beat : "dead"}`}
      role="img"
      aria-label={linked.value ? t().linkUp : t().linkLost}
    >
      <i />
    </span>
  );
}
