/** What is near a machine, in words: the same for the cab, the ground and the supervisor. */
import { feet } from "../show";
import type { Near } from "../wire";
import { t } from "../words";

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
    case "tail_at_pile":
      return words.tail(near.pile, feet(near.apart, 0));
    case "on_slope":
      return words.on_slope(near.zone, feet(near.inside, 1));
    case "overhead":
      return [
        words.overhead(near.line, feet(near.clearance, 0)),
        ...(near.spotted ? [] : [words.spotterNeeded]),
      ].join(" – ");
  }
}
