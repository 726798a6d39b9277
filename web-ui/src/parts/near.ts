/** What is near a machine, in words: the same for the cab, the ground and the supervisor. */
import { feet } from "../show";
import type { MachineCard, Near, Operator } from "../wire";
import { t } from "../words";

/** What stands round a machine, from either view of it. */
type Round = Pick<MachineCard & Operator, "near" | "slews" | "spotter">;

export function nearWords(near: Near): string {
  const words = t().crew.near;
  switch (near.kind) {
    case "can_meet":
      return words.can_meet(near.other, feet(near.apart, 0), feet(near.needs, 0));
    case "tail_at_machine":
      return words.tail(near.other, feet(near.apart, 0));
    case "tail_at_face":
      return words.tail(near.zone, feet(near.apart, 0));
    case "tail_at_wall":
      return words.tail(near.structure, feet(near.apart, 0));
    case "on_slope":
      return words.on_slope(near.zone, feet(near.inside, 1));
    case "overhead":
      return words.overhead(near.line, feet(near.clearance, 0));
  }
}

/** Whether somebody watches whose phone is heard. */
export function watched(round: Pick<Round, "spotter">): boolean {
  return !!round.spotter && round.spotter.lost == null;
}

/** What is near a machine that nobody has settled: no agreement, no spotter. */
export function unsettled(machine: string, round: Round): string[] {
  const left = round.near.filter((near) => {
    if (near.kind === "overhead") return !watched(round);
    if (near.kind !== "can_meet") return true;
    return !round.slews.some((slew) => [machine, near.other].every((id) => slew.agreed.includes(id)));
  });
  return left.map((near) => {
    const more = near.kind === "overhead" ? ` – ${t().crew.near.spotterNeeded}` : "";
    return `${nearWords(near)}${more}`;
  });
}
