/** LOG, once what it waits for is here. */
import { useEffect } from "preact/hooks";
import { libraries } from "./log/late";
import { Log } from "./log/log";
import { t } from "./words";

export function LogPage() {
  useEffect(libraries.ask, []);
  return libraries.script.value ? <Log /> : <p class="empty">{t().loading}</p>;
}
