/** What MARKS says of paint and ties; the panels for both come late. */
import { Key } from "../../parts/keys";
import { feet } from "../../show";
import { ground } from "../../state";
import type { GoingMark, Paint } from "../../wire";
import { t } from "../../words_later";

/** How a mark stands on the ground, in a word: `laid 2`. */
export function paintWords(paint: Paint | null | undefined): string {
  if (!paint) return "";
  const doubt = paint.doubt ? ` ±${feet(paint.doubt)}` : "";
  return t().paintState(t().paintStates[paint.state], paint.generation) + doubt;
}

/** What goes next, where nothing would bring it back. */
export function tiesOwed(): GoingMark[] {
  return (ground.value?.going ?? []).filter((one) => one.back === "nothing" || one.back === "not_said");
}

export function TiesFirst({ onTies }: { onTies: (mark: string) => void }) {
  return (
    <>
      {tiesOwed().map((one) => (
        <Key kind="wide" key={one.mark} onPress={() => onTies(one.mark)}>
          {t().tiesFirst(one.machine, one.mark)}
          <small>{toTake(one)}</small>
        </Key>
      ))}
    </>
  );
}

function toTake({ take }: GoingMark): string {
  const words = t();
  if (!take) return words.noTies;
  const angle = words.meetAt(Math.round(take.angle_degrees));
  return `${tiesWords(take)} · ${angle} ±${feet(take.doubt)}${take.weak ? ` · ${words.weakTies}` : ""}`;
}

/** Both tapes: `BM-2 36.93 · BM-3 83.36`. */
export function tiesWords(ties: {
  first: string;
  first_tape: number;
  second: string;
  second_tape: number;
}): string {
  return `${ties.first} ${feet(ties.first_tape)} · ${ties.second} ${feet(ties.second_tape)}`;
}
