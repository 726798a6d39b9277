/** Gravel before the pit closes: what is expected, what is enough, what is ordered, came and is short. */
import { useState } from "preact/hooks";
import { money, numberTyped } from "../../../amounts";
import { say } from "../../../hub";
import { Key } from "../../../parts/keys";
import { Panel } from "../../../parts/panel";
import type { AccountView } from "../../../wire";
import { t } from "../words";

export function Gravel({ account }: { account: AccountView }) {
  const words = t().account;
  const [orders, setOrders] = useState(false);
  const card = account.gravel;
  const sign = account.prices?.money;
  return (
    <>
      {!card ? (
        <p>{words.noGravel}</p>
      ) : (
        <div class="card">
          <table>
            <tbody>
              <tr>
                <th scope="row">{words.mean}</th>
                <td>
                  {words.gravelLine(card.mean_tons.toFixed(1), card.mean_loads, money(card.mean_cost, sign))}
                </td>
              </tr>
              <tr>
                <th scope="row">{words.enough}</th>
                <td>
                  <strong>
                    {words.gravelLine(
                      card.enough_tons.toFixed(1),
                      card.enough_loads,
                      money(card.enough_cost, sign),
                    )}
                  </strong>
                </td>
              </tr>
            </tbody>
          </table>
          <p>
            {words.gravelParts(
              card.nominal_cy.toFixed(1),
              card.low_cy.toFixed(1),
              card.patches_cy.toFixed(1),
            )}
          </p>
          <p>{words.ordered(card.ordered_tons.toFixed(1), card.came_tons.toFixed(1))}</p>
          {card.short_tons >= 0.5 && <p class="warning">{words.short(card.short_tons.toFixed(1))}</p>}
        </div>
      )}
      <Key onPress={() => setOrders(true)}>{words.order}</Key>
      {orders && <OrderPanel usual={card?.enough_tons ?? 0} onClose={() => setOrders(false)} />}
    </>
  );
}

function OrderPanel({ usual, onClose }: { usual: number; onClose: () => void }) {
  const words = t().account;
  const [typed, setTyped] = useState(usual > 0 ? String(Math.ceil(usual)) : "");
  const [note, setNote] = useState("");
  const tons = numberTyped(typed);
  const send = () => {
    if (!tons) return;
    void say({ kind: "order_gravel", tons, note });
    onClose();
  };
  return (
    <Panel title={words.orderTitle} onClose={onClose} closeWord={t().cancel}>
      <label class="field">
        <span>{words.orderTons}</span>
        <input inputMode="decimal" value={typed} onInput={(event) => setTyped(event.currentTarget.value)} />
      </label>
      <label class="field">
        <span>{words.orderNote}</span>
        <input value={note} onInput={(event) => setNote(event.currentTarget.value)} />
      </label>
      <Key kind="send" disabled={!tons} onPress={send}>
        {words.order}
      </Key>
    </Panel>
  );
}
