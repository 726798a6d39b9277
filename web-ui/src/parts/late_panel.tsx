/** A panel whose script comes late: until it is here it says so, and can be closed. */
import type { ComponentChildren } from "preact";
import { seldom } from "../late";
import { t } from "../words";
import { Panel } from "./panel";

interface LatePanelProps {
  title: string;
  onClose: () => void;
  /** The panel out of the script. */
  children: (script: NonNullable<typeof seldom.script.value>) => ComponentChildren;
}

export function LatePanel({ title, onClose, children }: LatePanelProps) {
  const script = seldom.script.value;
  if (script) return <>{children(script)}</>;
  return (
    <Panel title={title} onClose={onClose}>
      <p>{t().loading}</p>
    </Panel>
  );
}
