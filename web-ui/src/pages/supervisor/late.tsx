/** The supervisor's pages come in a script of their own: a phone in the cut does not wait for what it never shows. */
import { signal } from "@preact/signals";
import { t } from "../../words";
import type { SupervisorPage } from "./supervisor";

/** Between two tries while the link is weak, ms. */
const PAUSE = 1_000;

const page = signal<typeof SupervisorPage | null>(null);
let asked = false;

/** Fetches them, once, until they are here: asked for as soon as a phone is known to be a supervisor's. */
export function fetchSupervisor(): void {
  if (asked) return;
  asked = true;
  import("./supervisor").then(
    (got) => {
      page.value = got.SupervisorPage;
    },
    () => {
      asked = false;
      setTimeout(fetchSupervisor, PAUSE);
    },
  );
}

export function SupervisorLate({ onGround }: { onGround?: () => void }) {
  const Page = page.value;
  if (!Page) return <p class="empty">{t().loading}</p>;
  return <Page {...(onGround ? { onGround } : {})} />;
}
