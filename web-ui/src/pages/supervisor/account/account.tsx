/** ACCOUNT: hours and cost, loads, gravel, landings and aim, tests, patches, rock; who is needed next. */
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { Key } from "../../../parts/keys";
import { NextVisits } from "../../../parts/next_visits";
import type { Supervisor } from "../../../wire";
import { atDesk } from "../at_desk";
import { t } from "../words";
import { Answers } from "./answers";
import { Gravel } from "./gravel";
import { Cost, Hours } from "./hours";
import { Landings } from "./landings";
import { Loads, SoilLeft } from "./loads";
import { PricesPanel } from "./prices";
import { Patches, Rock, Tests } from "./soil";

export function AccountPage({ view }: { view: Supervisor }) {
  const words = t().account;
  const [prices, setPrices] = useState(false);
  const account = view.account;
  return (
    <>
      {!account.prices && <p class="trouble">{words.noPrices}</p>}
      {atDesk.value ? (
        <Answers account={account} />
      ) : (
        <div class="row no-print">
          <Key onPress={() => setPrices(true)}>{words.prices}</Key>
        </div>
      )}
      <div class="columns account">
        <Section title={words.next}>
          <NextVisits visits={account.visits} arrivals={account.arrivals} />
        </Section>
        <Section title={words.gravel}>
          <Gravel account={account} />
        </Section>
        <Section title={words.hours}>
          <Hours account={account} />
        </Section>
        <Section title={words.cost}>
          <Cost account={account} />
          {atDesk.value && <Key onPress={() => setPrices(true)}>{words.prices}</Key>}
        </Section>
        <Section title={words.landings}>
          <Landings account={account} />
        </Section>
        <Section title={words.loads}>
          <Loads account={account} />
        </Section>
        <Section title={words.soilLeft}>
          <SoilLeft account={account} />
        </Section>
        <Section title={words.tests}>
          <Tests account={account} />
        </Section>
        <Section title={words.patches}>
          <Patches account={account} />
        </Section>
        <Section title={words.rock}>
          <Rock account={account} />
        </Section>
      </div>
      {prices && <PricesPanel view={view} onClose={() => setPrices(false)} />}
    </>
  );
}

function Section({ title, children }: { title: string; children: ComponentChildren }) {
  return (
    <section aria-label={title}>
      <h2>{title}</h2>
      {children}
    </section>
  );
}
