/** Where finish passes land, and where to aim, with the curve that says so. */

import { money } from "../../../amounts";
import { said } from "../../../said";
import { signed } from "../../../show";
import type { AccountView, LandingCard } from "../../../wire";
import { AimCurve } from "../charts/aim";
import { t } from "../words";

export function Landings({ account }: { account: AccountView }) {
  const words = t().account;
  if (account.landings.length === 0) return <p>{words.noLandings}</p>;
  return (
    <>
      {account.landings.map((card) => (
        <Card key={`${card.machine} ${card.surface}`} card={card} sign={account.prices?.money} />
      ))}
    </>
  );
}

function feetOf(value: number, places: number): string {
  const text = Math.abs(value).toFixed(places);
  return `${value < 0 && Number(text) !== 0 ? "−" : "+"}${text}`;
}

function Card({ card, sign }: { card: LandingCard; sign: string | undefined }) {
  const words = t().account;
  const { landing, advice } = card;
  return (
    <div class="card">
      <h3>
        {card.machine ?? words.allMachines} {card.surface && <small>{words.surfaces[card.surface]}</small>}
      </h3>
      <p>{words.landsAt(feetOf(landing.mean_ft, 3), landing.sd_ft.toFixed(3), landing.count)}</p>
      {card.capability && <p>{words.within((100 * card.capability.within).toFixed(0))}</p>}
      {advice.kind === "no_prices" && <p>{words.aimNoPrices}</p>}
      {advice.kind === "none" && <p>{said(advice)}</p>}
      {advice.kind === "aim" && (
        <>
          <p class="told-line">
            {words.aimAt(signed(advice.advice.aim))}
            {card.in_rock && ` · ${words.aimRock(signed(card.in_rock.aim))}`}
          </p>
          <p>
            {words.aimSaves(money(advice.advice.cost, sign), money(advice.advice.cost_on_target, sign))};{" "}
            {words.aimSure(signed(advice.advice.from), signed(advice.advice.to))}
          </p>
          <AimCurve soil={advice.advice} rock={card.in_rock ?? null} sign={sign} />
        </>
      )}
    </div>
  );
}
