/** Why a face is left, in words. */
import type { FaceCard } from "../wire";
import { t } from "../words";

export function alarmWhy(why: NonNullable<FaceCard["alarm"]>["why"]): string {
  const words = t().cuts.leaveWhy;
  return why.kind === "pins" ? words.pins(why.pins) : words[why.kind];
}
