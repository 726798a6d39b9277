/** A buried line that was struck or met: what everybody does at once, then whom to call. Above everything on every page. */
import { ago } from "../show";
import { now } from "../state";
import type { StruckCard } from "../wire";
import { t } from "../words";

export function Struck({ cards }: { cards: readonly StruckCard[] | undefined }) {
  const words = t().struck;
  if (!cards?.length) return null;
  return (
    <>
      {cards.map((card) => (
        <div class="all-stop" role="alert" key={card.since}>
          <p>
            <strong>
              {words.title} {card.lines.join(" / ") || words.notDrawn}
            </strong>{" "}
            <small>
              {card.machine ?? card.by} {ago(now.value - card.since)}
            </small>
          </p>
          <p>
            {words.asks[card.what]} {card.call && t().cuts.callOwner(card.call)}
          </p>
        </div>
      ))}
    </>
  );
}
