/** A page whose script comes late: until it is here it says so. */
import type { ComponentChildren } from "preact";
import { useEffect } from "preact/hooks";
import { seldom } from "../late";
import { t } from "../words";

interface LatePageProps {
  /** The page out of the script. */
  children: (script: NonNullable<typeof seldom.script.value>) => ComponentChildren;
}

export function LatePage({ children }: LatePageProps) {
  useEffect(seldom.ask, []);
  const script = seldom.script.value;
  return script ? <>{children(script)}</> : <p class="empty">{t().loading}</p>;
}
