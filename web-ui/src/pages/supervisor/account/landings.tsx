/** Where finish passes land, and where to aim, with the curve that says so. */

import { money } from "../../../amounts";
import { FOOT } from "../../../grade";
import { signed } from "../../../show";
import { language } from "../../../state";
import type { AccountView, Advice, LandingCard } from "../../../wire";
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
      {advice.kind === "none" && <p>{language.value === "spanish" ? advice.spanish : advice.english}</p>}
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
          <Curve advice={advice.advice} rock={card.in_rock ?? null} sign={sign} />
        </>
      )}
    </div>
  );
}

const WIDE = 320;
const TALL = 150;
const LEFT = 44;
const FOOT_ROOM = 26;

/** Cost over where the mean lands: a full line for soil, dashes for rock, the least of each marked, and named
 * on its own side: rock costs more. */
function Curve({ advice, rock, sign }: { advice: Advice; rock: Advice | null; sign: string | undefined }) {
  const words = t().account;
  const all = [...advice.curve, ...(rock?.curve ?? [])];
  const ats = all.map((point) => point.at / FOOT);
  const [first, last] = [Math.min(...ats), Math.max(...ats)];
  const most = Math.max(...all.map((point) => point.cost)) || 1;
  const x = (feet: number) => LEFT + ((feet - first) / (last - first || 1)) * (WIDE - LEFT - 12);
  const y = (cost: number) => 12 + (1 - cost / most) * (TALL - 12 - FOOT_ROOM);
  const path = (of: Advice) => of.curve.map((point) => `${x(point.at / FOOT)},${y(point.cost)}`).join(" ");
  const ticks = ats.filter((at) => Math.abs(Math.round(at * 100)) % 5 === 0);
  return (
    <figure class="aim-curve">
      <svg viewBox={`0 0 ${WIDE} ${TALL}`} role="img" aria-label={words.curve}>
        <line class="axis" x1={LEFT} x2={WIDE - 8} y1={y(0)} y2={y(0)} />
        <line class="axis" x1={LEFT} x2={LEFT} y1={8} y2={y(0)} />
        {[...new Set(ticks)].map((at) => (
          <g key={at}>
            <line class="axis" x1={x(at)} x2={x(at)} y1={y(0)} y2={y(0) + 4} />
            <text x={x(at)} y={TALL - 8} text-anchor="middle">
              {feetOf(at, 2)}
            </text>
          </g>
        ))}
        <text x={LEFT - 4} y={y(most) + 4} text-anchor="end">
          {money(most, sign).replace(/\.\d+$/, "")}
        </text>
        <text x={LEFT - 4} y={y(0) + 4} text-anchor="end">
          {sign}0
        </text>
        <polyline class="curve" points={path(advice)} />
        {rock && <polyline class="curve dashed" points={path(rock)} />}
        {[advice, ...(rock ? [rock] : [])].map((of, i) => (
          <g key={i === 0 ? "soil" : "rock"}>
            <circle class="least" cx={x(of.mean / FOOT)} cy={y(of.cost)} r={5} />
            <text
              x={x(of.mean / FOOT) + 9}
              y={i === 0 ? Math.min(y(of.cost) + 15, y(0) - 3) : y(of.cost) - 9}
            >
              {signed(of.mean)}
            </text>
          </g>
        ))}
      </svg>
      <figcaption>{words.curve}</figcaption>
    </figure>
  );
}
