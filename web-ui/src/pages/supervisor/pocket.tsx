/** The pocket sheet, printed: what the rod must read at every mark, for when everything electric dies. */
import { useEffect, useState } from "preact/hooks";
import { setUpName } from "../../given_names";
import { FOOT } from "../../grade";
import { pocketSheet } from "../../hub";
import { Key } from "../../parts/keys";
import { feet, timeOfDay } from "../../show";
import type { PocketRow, PocketSheets } from "../../wire";
import { t } from "./words";

/** How far the ground may be off for the table of tenths, either way. */
const TENTHS = [1, 2, 3, 4, 5, 6, 7, 8, 9];

export function PocketPage({ onClose }: { onClose: () => void }) {
  const words = t();
  const [got, setGot] = useState<PocketSheets | null>(null);
  const [trouble, setTrouble] = useState("");
  useEffect(() => {
    void pocketSheet().then((answer) => {
      setTrouble(answer.ok ? "" : answer.text);
      if (answer.ok) setGot(answer.value);
    });
  }, []);
  return (
    <div class="pocket">
      <div class="row no-print">
        <Key onPress={() => window.print()}>{words.print}</Key>
        <Key onPress={onClose}>{words.close}</Key>
      </div>
      {trouble && <p class="warning">{trouble}</p>}
      {got?.sheets.length === 0 && <p>{words.noSheets}</p>}
      {got?.sheets.map((sheet) => (
        <section key={sheet.set_up}>
          <h2>
            {got.site} · {got.day} · {setUpName(sheet.set_up)}
          </h2>
          <p class="pocket-height">
            HI {feet(sheet.height)} · {sheet.benchmark} · {timeOfDay(got.at)} · {words.entry} {got.seq}
          </p>
          {sheet.state.kind !== "proven" && <p class="warning">{words.sheetUnproven}</p>}
          <p>{words.sheetVoid}</p>
          <table>
            <thead>
              <tr>
                <th>{words.mark}</th>
                <th>{words.digTo}</th>
                <th>{words.rodMustRead}</th>
                <th>{words.allowed}</th>
                <th />
                {words.sheetBooked.map((name) => (
                  <th key={name} class="booked">
                    {name}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {sheet.rows.map((row) => (
                <Row key={`${row.mark} ${row.side ?? ""}`} row={row} />
              ))}
            </tbody>
          </table>
          <p>{words.sheetTenths(TENTHS.map((n) => `0.${n} = ${n}`).join(" · "))}</p>
          <p>{words.sheetAfterwards}</p>
          <p>{words.caution}</p>
        </section>
      ))}
    </div>
  );
}

function Row({ row }: { row: PocketRow }) {
  const words = t();
  return (
    <tr>
      <th scope="row">
        {row.mark} {row.side ? words[row.side] : ""}
      </th>
      <td>{feet(row.dig_to)}</td>
      <td>
        <strong>{row.shot === "on_the_rod" ? feet(row.grade_rod) : words.shots[row.shot]}</strong>
      </td>
      <td>
        +{(row.tolerance.high / FOOT).toFixed(2)} −{(row.tolerance.low / FOOT).toFixed(2)}
      </td>
      <td>
        {row.target} {words.revision(row.revision)}
      </td>
      {words.sheetBooked.map((name) => (
        <td key={name} class="booked" />
      ))}
    </tr>
  );
}
