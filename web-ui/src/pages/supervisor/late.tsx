/** The supervisor's pages come in a script of their own, the desk's look in a sheet of its own: a phone in the cut does not wait for what it never shows. */
import { late } from "../../late";
import { sheet } from "../../late_sheet";
import { t } from "../../words";
import desk from "./desk.css?url";
import review from "./review/desk.css?url";

/** Asked for as soon as a phone is known to be a supervisor's. */
export const supervisorScript = late(async () => {
  const [script] = await Promise.all([import("./supervisor"), sheet(desk), sheet(review)]);
  return script;
});

export function SupervisorLate({ onGround }: { onGround?: () => void }) {
  const script = supervisorScript.script.value;
  if (!script) return <p class="empty">{t().loading}</p>;
  return <script.SupervisorPage {...(onGround ? { onGround } : {})} />;
}
