/** Hours by what each machine did, and what the day costs. */
import { hoursOf, money } from "../../../amounts";
import type { AccountView, CostOf } from "../../../wire";
import { t } from "../words";

export function Hours({ account }: { account: AccountView }) {
  const words = t().account;
  const sign = account.prices?.money;
  if (account.hours.length === 0) return <p>{words.noHours}</p>;
  return (
    <>
      {account.hours.map((one) => (
        <div class="card figures" key={one.machine}>
          <h3>
            {one.machine} <small>{words.doing[one.doing]}</small>
          </h3>
          <table>
            <tbody>
              {one.sums.map((sum) => (
                <tr key={sum.doing}>
                  <th scope="row">{words.doing[sum.doing]}</th>
                  <td>{hoursOf(sum.ms)}</td>
                  <td>{sum.cost == null ? "" : money(sum.cost, sign)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      ))}
      <p class="quiet">{words.hoursNote}</p>
    </>
  );
}

export function Cost({ account }: { account: AccountView }) {
  const words = t().account;
  const { cost, prices } = account;
  return (
    <>
      <table>
        <tbody>
          {cost.lines.map((line) => (
            <tr key={JSON.stringify(line.what)}>
              <th scope="row">{lineWords(line.what)}</th>
              <td>{money(line.cost, prices?.money)}</td>
            </tr>
          ))}
          <tr>
            <th scope="row">
              <strong>{words.dayCost}</strong>
            </th>
            <td>
              <strong>{money(cost.day, prices?.money)}</strong>
            </td>
          </tr>
          <tr>
            <th scope="row">{words.jobCost}</th>
            <td>{money(cost.job, prices?.money)}</td>
          </tr>
        </tbody>
      </table>
      {cost.without_rate.length > 0 && (
        <p class="trouble">{words.withoutRate(cost.without_rate.join(", "))}</p>
      )}
    </>
  );
}

function lineWords(what: CostOf): string {
  const words = t().account;
  switch (what.kind) {
    case "machine":
      return words.costOf.machine(what.machine);
    case "waiting":
      return words.costOf.waiting(words.doing[what.cause]);
    case "loads":
      return words.costOf.loads(what.material);
    case "gravel":
      return words.costOf.gravel(what.tons.toFixed(1));
    case "patches":
      return words.costOf.patches(what.cy.toFixed(2));
  }
}
