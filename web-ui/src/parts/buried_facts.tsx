/** What is buried, as a card: the kind in a word, its depth where it was bared, how clear each trench crosses it. */
import { feet, moment, signed } from "../show";
import { now } from "../state";
import type { Crossing, TicketCard, UtilityCard } from "../wire";
import { t } from "../words_later";

export function UtilityFacts({ card, crossings }: { card: UtilityCard; crossings: Crossing[] }) {
  const words = t().cuts;
  const own = crossings.filter((one) => one.utility === card.utility.id);
  return (
    <>
      <p>
        <strong>{words.kinds[card.utility.kind]}</strong>
        {card.utility.id.toUpperCase() !== words.kinds[card.utility.kind] && ` ${card.utility.id}`}
        {card.utility.call && ` · ${words.callOwner(card.utility.call)}`}
      </p>
      {card.paint_gone != null && (
        <p class="trouble">
          <strong>{words.paintGone}</strong> {moment(card.paint_gone, now.value)}
        </p>
      )}
      {card.potholes.length === 0 && <p class="trouble">{words.depthUnknown}</p>}
      <ul class="lines plain">
        {card.potholes.map((one) => (
          <li key={one.since}>{words.bared(feet(one.top), feet(one.bottom), one.by)}</li>
        ))}
        {own.map((one) => (
          <li key={`${one.zone}${one.by_hand.from}`}>
            {words.crossing(one.zone, feet(one.by_hand.from, 0), feet(one.by_hand.to, 0))}
            {one.clear != null && (
              <span class={one.clear < one.need ? "trouble" : ""}>
                {" · "}
                {words.clear(signed(one.clear), feet(one.need))}
                {one.clear < one.need && <strong> {words.tooNear}</strong>}
              </span>
            )}
          </li>
        ))}
      </ul>
    </>
  );
}

export function TicketFacts({ card }: { card: TicketCard }) {
  const words = t().cuts;
  const days = card.days_left ?? -1;
  return (
    <>
      <p class={days < 0 ? "trouble" : ""}>
        {days < 0 ? words.ticketLapsed(card.id, card.to) : words.ticketHolds(card.id, card.to, days)}
      </p>
      <p class={card.checked ? "" : "trouble"}>
        {card.checked
          ? words.ticketChecked(card.checked.by, moment(card.checked.at, now.value))
          : words.ticketNotChecked}
      </p>
      {card.silent.length > 0 && (
        <p class="trouble">{words.ticketSilent(card.silent.map((kind) => words.kinds[kind]).join(", "))}</p>
      )}
    </>
  );
}
