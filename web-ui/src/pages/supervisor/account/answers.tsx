/** The account's answers before their reasons: what the day costs, what is short, what is still to remove, who is needed next. */
import { money } from "../../../amounts";
import { timeOfDay } from "../../../show";
import type { AccountView, VisitCard } from "../../../wire";
import { t } from "../words";

export function Answers({ account }: { account: AccountView }) {
  const words = t().account;
  const sign = account.prices?.money;
  const gravel = account.gravel;
  const short = gravel && gravel.short_tons >= 0.5 ? words.short(gravel.short_tons.toFixed(1)) : null;
  const next = account.visits[0];
  const owed = account.tests.filter((one) => one.standing !== "passes" && !one.replaced);
  const answers: [string, string, boolean][] = [
    [words.cost, money(account.cost.day, sign), false],
    ...(gravel
      ? [
          [
            words.gravel,
            short ?? words.ordered(gravel.ordered_tons.toFixed(1), gravel.came_tons.toFixed(1)),
            short !== null,
          ] as [string, string, boolean],
        ]
      : []),
    ...(next ? [[words.next, nextWords(next), next.waits_since != null] as [string, string, boolean]] : []),
    ...(owed.length > 0
      ? [
          [
            words.tests,
            owed.map((one) => `${one.mark} ${words.standing[one.standing]}`).join(", "),
            true,
          ] as [string, string, boolean],
        ]
      : []),
  ];
  return (
    <dl class="account-answers">
      {answers.map(([name, figure, grave]) => (
        <div key={name} class={grave ? "grave" : ""}>
          <dt>{name}</dt>
          <dd>{figure}</dd>
        </div>
      ))}
    </dl>
  );
}

/** "EX-1 at N-06: look by 09:29", or since when it waits. */
function nextWords({ machine, mark, waits_since, look }: VisitCard): string {
  const words = t().account;
  if (waits_since != null) return words.waits(machine, timeOfDay(waits_since));
  return words.lookBy(machine, mark ?? "", timeOfDay(look ?? 0));
}
