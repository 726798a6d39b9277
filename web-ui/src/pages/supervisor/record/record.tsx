/** DAY: close, sign, amend, open the next; what is open; visitors, inspections, queries, notes and photos. */
import { useState } from "preact/hooks";
import { setUpName } from "../../../given_names";
import { Key } from "../../../parts/keys";
import { Drawn } from "../../../parts/signature_pad";
import { said } from "../../../said";
import { timeOfDay, unbroken } from "../../../show";
import type { RecordCard, Supervisor } from "../../../wire";
import { WhyPanel } from "../panels";
import { t } from "../words";
import { ClosePanel } from "./close";
import { Inspections } from "./inspections";
import { missingWords } from "./missing";
import { NextDayPanel } from "./next_day";
import { Photos } from "./photos";
import { Queries } from "./queries";
import { AmendPanel, SignDayPanel } from "./sign";
import { Visitors } from "./visitors";

type Open = "close" | "sign" | "amend" | "next" | "note";

export function RecordPage({ view }: { view: Supervisor }) {
  const words = t().record;
  const [open, setOpen] = useState<Open | null>(null);
  const close = () => setOpen(null);
  const { record } = view;
  return (
    <div class="columns record">
      <section aria-label={words.today(view.day)}>
        <h2>{words.today(unbroken(view.day))}</h2>
        <Standing record={record} />
        <div class="tiles">
          {!record.closed && (
            <Key kind="tile" onPress={() => setOpen("close")}>
              {words.close}
            </Key>
          )}
          {record.closed && !record.signed && (
            <Key kind="tile" onPress={() => setOpen("sign")}>
              {words.sign}
            </Key>
          )}
          {(record.signed || record.days.some((day) => day.signed)) && (
            <Key kind="tile" onPress={() => setOpen("amend")}>
              {words.amend}
            </Key>
          )}
          <Key kind="tile" onPress={() => setOpen("note")}>
            {words.note}
          </Key>
          {record.closed && (
            <Key kind="tile" onPress={() => setOpen("next")}>
              {words.nextDay}
            </Key>
          )}
        </div>
      </section>
      <section aria-label={words.open}>
        <h2>{words.open}</h2>
        {record.open.length === 0 && <p>{words.nothingOpen}</p>}
        <ul class="lines">
          {record.open.map((item) => (
            <li key={item.english}>{said(item)}</li>
          ))}
        </ul>
      </section>
      <Visitors view={view} />
      <Inspections view={view} />
      <Queries view={view} />
      <Photos photos={record.photos} />
      <Papers record={record} />
      {open === "close" && <ClosePanel record={record} onClose={close} />}
      {open === "sign" && <SignDayPanel onClose={close} />}
      {open === "amend" && <AmendPanel onClose={close} />}
      {open === "next" && <NextDayPanel onClose={close} />}
      {open === "note" && (
        <WhyPanel
          title={words.note}
          ask={words.noteWords}
          act={words.note}
          command={(said) => ({ kind: "add_note", words: said })}
          onClose={close}
        />
      )}
    </div>
  );
}

/** Whether the day is open, closed or signed, and what was closed over. */
function Standing({ record }: { record: RecordCard }) {
  const words = t().record;
  const { closed, signed, missing } = record;
  if (!closed) {
    return (
      <>
        <p>{words.isOpen}</p>
        {missing.length > 0 && (
          <>
            <h3>{words.missing}</h3>
            <ul class="lines">
              {missing.map((one) => (
                <li key={JSON.stringify(one)}>{missingWords(one)}</li>
              ))}
            </ul>
          </>
        )}
      </>
    );
  }
  return (
    <>
      <p>
        <strong>{words.closedBy(closed.by, timeOfDay(closed.at))}</strong> {closed.how.words}
      </p>
      {closed.how.empty && <p class="warning">{words.emptyDay}</p>}
      {closed.how.unproven.map((one) => (
        <p class="warning" key={one.set_up}>
          {words.closedUnproven(setUpName(one.set_up), one.since ? timeOfDay(one.since) : words.never)}
        </p>
      ))}
      {closed.how.overrides.map((one) => (
        <p key={JSON.stringify(one.missing)}>{words.closedOver(missingWords(one.missing), one.why)}</p>
      ))}
      {signed && (
        <>
          <p>
            <strong>{words.signedBy(signed.how.signature.name, timeOfDay(signed.at))}</strong>{" "}
            {signed.how.words}
          </p>
          <Drawn strokes={signed.how.signature.strokes} name={signed.how.signature.name} />
          <p class="code-line">{words.headCode(headCode(signed.how.head.hash), signed.how.head.seq)}</p>
        </>
      )}
    </>
  );
}

/** The first sixteen signs of a hash in fours, as it is read out and compared. */
function headCode(hash: string): string {
  return hash.slice(0, 16).match(/.{4}/g)?.join(" ") ?? hash;
}

/** Notes, amendments, and the days before. */
function Papers({ record }: { record: RecordCard }) {
  const words = t().record;
  return (
    <>
      {record.notes.length > 0 && (
        <section aria-label={words.notes}>
          <h2>{words.notes}</h2>
          <ul class="lines">
            {record.notes.map((one) => (
              <li key={one.entry}>
                {timeOfDay(one.at)} {one.by}
                {one.mark && ` ${one.mark}`}: {one.words}
              </li>
            ))}
          </ul>
        </section>
      )}
      {record.amended.length > 0 && (
        <section aria-label={words.amendments}>
          <h2>{words.amendments}</h2>
          <ul class="lines">
            {record.amended.map((one) => (
              <li key={one.at}>{words.amended(one.entry, unbroken(one.day), one.words, one.name)}</li>
            ))}
          </ul>
        </section>
      )}
      {record.days.length > 0 && (
        <section aria-label={words.daysBefore}>
          <h2>{words.daysBefore}</h2>
          <ul class="lines">
            {record.days.map((one) => (
              <li key={one.first}>
                {dayLine(one)}
                {one.signed && ` · ${words.headCode(headCode(one.signed.hash), one.signed.seq)}`}
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

function dayLine(one: RecordCard["days"][number]): string {
  const words = t().record;
  const day = unbroken(one.day);
  const closed = one.closed != null;
  return one.signed ? words.dayLineSigned(day, closed, one.signed.name) : words.dayLine(day, closed);
}
