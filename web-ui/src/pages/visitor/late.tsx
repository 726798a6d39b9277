/** The visitors' page comes in a script of its own: a phone in the cut does not wait for what it never shows. */
import { signal } from "@preact/signals";
import { useEffect } from "preact/hooks";
import { t } from "../../words";
import type { VisitorPage } from "./visitor";

/** Between two tries while the link is weak, ms. */
const PAUSE = 1_000;

const page = signal<typeof VisitorPage | null>(null);

function fetchVisitor(): void {
  import("./visitor").then(
    (got) => {
      page.value = got.VisitorPage;
    },
    () => void setTimeout(fetchVisitor, PAUSE),
  );
}

export function VisitorLate() {
  useEffect(fetchVisitor, []);
  const Page = page.value;
  return Page ? <Page /> : <p class="empty">{t().loading}</p>;
}
