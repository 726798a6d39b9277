/** The supervisor's pages come in a script of their own, the desk's look in a sheet of its own: a phone in the cut does not wait for what it never shows. */
import { late } from "../../late";
import { t } from "../../words";
import desk from "./desk.css?url";

/** Asked for as soon as a phone is known to be a supervisor's. */
export const supervisorScript = late(async () => {
  const [script] = await Promise.all([import("./supervisor"), lookOfTheDesk()]);
  return script;
});

/** The sheet behind all others; a link that breaks takes it away again, so that it is fetched anew. */
function lookOfTheDesk(): Promise<void> {
  return new Promise((done, broken) => {
    if (document.querySelector(`link[href="${desk}"]`)) return done();
    const sheet = document.createElement("link");
    sheet.rel = "stylesheet";
    sheet.href = desk;
    sheet.onload = () => done();
    sheet.onerror = () => {
      sheet.remove();
      broken(new Error(`${desk} does not come`));
    };
    document.head.append(sheet);
  });
}

export function SupervisorLate({ onGround }: { onGround?: () => void }) {
  const script = supervisorScript.script.value;
  if (!script) return <p class="empty">{t().loading}</p>;
  return <script.SupervisorPage {...(onGround ? { onGround } : {})} />;
}
