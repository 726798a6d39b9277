/** The visitors' page comes late: a phone in the cut does not wait for what it never shows. */
import { useEffect } from "preact/hooks";
import { seldom } from "../../late";
import { t } from "../../words";

export function VisitorLate() {
  useEffect(seldom.ask, []);
  const script = seldom.script.value;
  return script ? <script.VisitorPage /> : <p class="empty">{t().loading}</p>;
}
