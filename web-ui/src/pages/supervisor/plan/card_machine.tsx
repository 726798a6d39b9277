/** A machine's card: its live call and where that stands, who is in, where it was said to stand, its reach, and its log. */
import { MachineCards } from "../../../parts/machine_cards";
import { feet, timeOfDay } from "../../../show";
import { sheet } from "../../../state";
import { t } from "../words";
import type { CardProps } from "./card";
import { HistoryOf } from "./history";

export function MachineOnCard({ of, view }: CardProps) {
  const words = t();
  const { desk } = words;
  const card = view.machines.find((one) => one.id === of.id);
  if (!card) return <p class="warning">{words.none}</p>;
  const reach = sheet.value?.machines.find((one) => one.id === of.id)?.reach;
  return (
    <>
      <MachineCards cards={[card]} />
      <p class={card.place ? "" : "trouble"}>
        {card.place
          ? `${desk.place(feet(card.place.at.x, 1), feet(card.place.at.y, 1))} · ${desk.stoodBy(card.place.by, timeOfDay(card.place.since))}`
          : desk.nobodySaid}
      </p>
      <p class="quiet">
        {desk.keepOut(feet(card.keep_out, 1))}
        {reach && ` · ${desk.reach(feet(reach.reach_at_ground, 1), feet(reach.tail_radius, 1))}`}
      </p>
      <p class="quiet">
        {words.caution} {words.crew.asLastSaid}
      </p>
      <HistoryOf of={{ machine: of.id }} />
    </>
  );
}
