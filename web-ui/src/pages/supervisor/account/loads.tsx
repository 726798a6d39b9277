/** Loads by material, their tickets, what was measured; soil still to remove. */
import { useState } from "preact/hooks";
import { numberTyped } from "../../../amounts";
import { say } from "../../../hub";
import { Field } from "../../../parts/field";
import { Key } from "../../../parts/keys";
import { Panel } from "../../../parts/panel";
import { timeOfDay } from "../../../show";
import type { AccountView, LoadCard, MaterialCard } from "../../../wire";
import { t } from "../words";

export function Loads({ account }: { account: AccountView }) {
  const words = t().account;
  const [ticket, setTicket] = useState<LoadCard | null>(null);
  const [measures, setMeasures] = useState(false);
  return (
    <>
      {account.materials.length === 0 && <p>{words.noLoads}</p>}
      {account.materials.map((one) => (
        <Material key={`${one.way} ${one.material}`} card={one} />
      ))}
      <ul class="lines">
        {account.loads.map((one) => (
          <li key={one.load}>
            <span class={one.taken_back ? "taken-back" : ""}>
              {timeOfDay(one.at)} {words.way[one.way]} {one.trucks} × {one.material} · {one.by}
              {one.ticket && ` · № ${one.ticket}`}
              {one.taken_back && ` · ${words.takenBack}`}
              {!one.taken_back && one.loose_cy == null && one.tons == null && ` · ${words.amountOwed}`}
            </span>
            {!one.taken_back && !one.ticket && (
              <Key kind="small" label={words.ticketOf(one.material)} onPress={() => setTicket(one)}>
                {words.ticket}
              </Key>
            )}
          </li>
        ))}
      </ul>
      <Key onPress={() => setMeasures(true)}>{words.measure}</Key>
      {ticket && <TicketPanel load={ticket} onClose={() => setTicket(null)} />}
      {measures && <MeasurePanel account={account} onClose={() => setMeasures(false)} />}
    </>
  );
}

function Material({ card }: { card: MaterialCard }) {
  const words = t().account;
  const percent = (part: number) => (100 * part).toFixed(0);
  const { agree } = card;
  const facts = [
    ...(card.trucks > 0 ? [words.trucksOf(card.trucks)] : []),
    ...(card.loose_cy > 0 ? [words.looseYards(card.loose_cy.toFixed(1))] : []),
    ...(card.tons > 0 ? [words.tonsOf(card.tons.toFixed(1))] : []),
    ...(card.bank_cy == null
      ? []
      : [
          words.measuredIs(
            card.bank_cy.toFixed(1),
            card.measured_loose_cy?.toFixed(1) ?? "–",
            String(card.measured_loads ?? "–"),
          ),
        ]),
    ...(card.limit == null ? [] : [words.limit[card.limit]]),
    ...(agree.counted_by_measured == null ? [] : [words.countedBy(percent(agree.counted_by_measured))]),
    ...(agree.tickets_by_counted == null ? [] : [words.agrees(percent(agree.tickets_by_counted))]),
    ...(agree.tickets_missing > 0 ? [words.ticketsMissing(agree.tickets_missing)] : []),
  ];
  return (
    <div class="card">
      <h3>
        {words.way[card.way]} · {card.material}
      </h3>
      <p>{facts.join(" · ")}</p>
      {!agree.agrees && <p class="trouble">{words.differs}</p>}
    </div>
  );
}

function TicketPanel({ load, onClose }: { load: LoadCard; onClose: () => void }) {
  const words = t().account;
  const [number, setNumber] = useState("");
  const [yards, setYards] = useState("");
  const [tons, setTons] = useState("");
  const ready = number.trim() !== "" && numberTyped(yards) !== null && numberTyped(tons) !== null;
  const send = () => {
    if (!ready) return;
    void say({
      kind: "add_ticket",
      load: load.load,
      ticket: number,
      loose_cy: numberTyped(yards) ?? null,
      tons: numberTyped(tons) ?? null,
    });
    onClose();
  };
  return (
    <Panel title={words.ticketOf(load.material)} onClose={onClose} closeWord={t().cancel}>
      <Field name={words.ticketNumber} value={number} onValue={setNumber} text />
      <Field name={words.ticketYards} value={yards} onValue={setYards} />
      <Field name={words.ticketTons} value={tons} onValue={setTons} />
      <Key kind="send" disabled={!ready} onPress={send}>
        {t().send}
      </Key>
    </Panel>
  );
}

function MeasurePanel({ account, onClose }: { account: AccountView; onClose: () => void }) {
  const words = t().account;
  const names = [...new Set(account.materials.map((one) => one.material))];
  const [material, setMaterial] = useState(names[0] ?? "");
  const [yards, setYards] = useState("");
  const [how, setHow] = useState("");
  const bank = numberTyped(yards);
  const ready = material.trim() !== "" && how.trim() !== "" && typeof bank === "number";
  const send = () => {
    if (!ready) return;
    void say({ kind: "measure_soil", material, bank_cy: bank, how });
    onClose();
  };
  return (
    <Panel title={words.measureTitle} onClose={onClose} closeWord={t().cancel}>
      <Field name={words.materialName} value={material} onValue={setMaterial} text />
      <Field name={words.bankYards} value={yards} onValue={setYards} />
      <Field name={words.how} value={how} onValue={setHow} text />
      <Key kind="send" disabled={!ready} onPress={send}>
        {t().send}
      </Key>
    </Panel>
  );
}

export function SoilLeft({ account }: { account: AccountView }) {
  const words = t().account;
  const swell = account.prices?.materials?.[0]?.factors.swell;
  return (
    <ul class="lines">
      {account.soil_left.map((one) => (
        <li key={one.target}>
          <span>
            <strong>
              {words.soilLeftOf(
                one.target,
                one.cut_cy.toFixed(1),
                swell === undefined ? "" : words.looseOf((one.cut_cy * swell).toFixed(1)),
              )}
            </strong>{" "}
            <small>
              {words.soilRead(one.read, one.marks)}
              {one.low_cy >= 0.05 && ` · ${words.low(one.low_cy.toFixed(1))}`}
            </small>
          </span>
        </li>
      ))}
    </ul>
  );
}
