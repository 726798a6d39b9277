/** The plan with the card of what was pressed beside it; the card goes by its key and by Escape, and the focus goes back. */
import { useRef } from "preact/hooks";
import { sheet } from "../../../state";
import type { Supervisor } from "../../../wire";
import { t } from "../words";
import { Card } from "./card";
import { SitePlan } from "./site_plan";
import type { Thing } from "./things";

interface PlanWithCardProps {
  view: Supervisor;
  picked: Thing | null;
  onPick: (thing: Thing | null) => void;
}

export function PlanWithCard({ view, picked, onPick }: PlanWithCardProps) {
  const whole = useRef<HTMLDivElement>(null);
  const site = sheet.value;
  if (!site) return <p class="empty">{t().loading}</p>;
  const close = () => {
    whole.current?.querySelector<SVGGElement>(".plan-thing[aria-pressed=true]")?.focus();
    onPick(null);
  };
  return (
    <div class={`plan-with-card ${picked ? "open" : ""}`} ref={whole}>
      <SitePlan
        sheet={site}
        machines={view.machines}
        marks={view.marks}
        picked={picked}
        onPick={onPick}
        noLegend
      />
      {picked && <Card of={picked} view={view} onPick={onPick} onClose={close} />}
    </div>
  );
}
