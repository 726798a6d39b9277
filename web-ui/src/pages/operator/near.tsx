/** What is near the machine, as strips over whatever is on its screen; silent, and gone when it is settled or the machine moves. */
import { say } from "../../hub";
import { Key } from "../../parts/keys";
import { nearWords } from "../../parts/near";
import type { Operator, SlewCard } from "../../wire";
import { t } from "../../words";

export function NearStrips({ view }: { view: Operator }) {
  const proposed = view.slews.map((slew) => slew.sides.find((side) => side.machine !== view.machine));
  // A proposal says itself what it is about.
  const left = view.near.filter(
    (near) => near.kind !== "can_meet" || !proposed.some((side) => side?.machine === near.other),
  );
  return (
    <>
      {left.map(nearWords).map((line) => (
        <p class="ground-strip near" role="note" key={line}>
          <strong>{line}</strong>
        </p>
      ))}
      {left.length > 0 && <p class="quiet">{t().crew.asLastSaid}</p>}
      {view.slews.map((slew) => (
        <Slew key={slew.since} slew={slew} machine={view.machine} />
      ))}
    </>
  );
}

/** What this machine keeps out of; pressed once, by its own operator. */
function Slew({ slew, machine }: { slew: SlewCard; machine: string }) {
  const words = t().crew;
  const own = slew.sides.find((side) => side.machine === machine);
  const other = slew.sides.find((side) => side.machine !== machine);
  if (!own || !other) return null;
  const side = words.compass[own.keeps_out_of];
  const pressed = slew.agreed.includes(machine);
  const holds = pressed && slew.agreed.includes(other.machine);
  const line = holds
    ? words.agreedWith(side, other.machine)
    : pressed
      ? words.waitsFor(other.machine, side)
      : words.keepOutOf(side, other.machine);
  return (
    <div class="ground-strip near" role="note">
      <strong>{line}</strong>
      {!pressed && (
        <Key
          onPress={() =>
            void say({ kind: "say_agreed", with: other.machine, keeps_out_of: own.keeps_out_of })
          }
        >
          {words.agree}
        </Key>
      )}
      {slew.note && <span>{slew.note}</span>}
    </div>
  );
}
