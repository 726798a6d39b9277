/** What a failed check or a bump put in doubt: the marks to shoot again in walking order, and those that stand. */
import { setUpName } from "../given_names";
import { length, moment, signed } from "../show";
import { now, unit } from "../state";
import type { SuspectCard } from "../wire";
import { t } from "../words_later";

type Mark = SuspectCard["stand"][number];

export function Suspects({ cards }: { cards: SuspectCard[] }) {
  const words = t();
  return (
    <>
      {cards.map((card) => (
        <section class="card" key={`${card.set_up}-${card.from}`} aria-label={setUpName(card.set_up)}>
          <p class={card.shoot_again.length > 0 ? "trouble" : ""}>{head(card)}</p>
          {card.shoot_again.length > 0 && (
            <>
              <h3>{words.reshoot}</h3>
              <ol class="lines">
                {card.shoot_again.map((mark) => (
                  <Row key={mark.mark} mark={mark} />
                ))}
              </ol>
            </>
          )}
          {card.stand.length > 0 && (
            <>
              <h3>{words.standEither}</h3>
              <ul class="lines">
                {card.stand.map((mark) => (
                  <Row key={mark.mark} mark={mark} />
                ))}
              </ul>
            </>
          )}
        </section>
      ))}
    </>
  );
}

function head(card: SuspectCard): string {
  const words = t();
  const from = moment(card.from, now.value);
  if (card.to == null || card.residual == null)
    return words.suspectOpen(setUpName(card.set_up), from, card.readings);
  const by = length(card.residual, unit.value);
  return words.suspectHead(setUpName(card.set_up), from, moment(card.to, now.value), by, card.readings);
}

function Row({ mark }: { mark: Mark }) {
  const words = t();
  const dev = mark.dev == null ? "" : signed(mark.dev);
  const both = mark.dev_if_moved == null ? dev : words.ifMoved(dev, signed(mark.dev_if_moved));
  return (
    <li>
      <span>
        <strong>{mark.mark}</strong> {words.standings[mark.standing]} {both}
      </span>
    </li>
  );
}
