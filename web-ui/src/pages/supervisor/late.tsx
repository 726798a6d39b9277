/** The supervisor's pages come in a script of their own: a phone in the cut does not wait for what it never shows. */
import { late } from "../../late";
import lateLook from "../../late.css?url";
import { sheet } from "../../late_sheet";
import officeLook from "../../office.css?url";
import { t } from "../../words";

/** Asked for as soon as a phone is known to be a supervisor's. */
export const supervisorScript = late(async () => {
  const looks = [sheet(officeLook), sheet(lateLook, officeLook)];
  const [script] = await Promise.all([import("./supervisor"), ...looks]);
  return script;
});

export function SupervisorLate({ onGround }: { onGround?: () => void }) {
  const script = supervisorScript.script.value;
  if (!script) return <p class="empty">{t().loading}</p>;
  return <script.SupervisorPage {...(onGround ? { onGround } : {})} />;
}
