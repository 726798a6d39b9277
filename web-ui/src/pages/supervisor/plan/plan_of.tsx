/** The plan beside a page's cards: on the desk with the card of what is pressed, on a phone the field pages' own. */
import { useState } from "preact/hooks";
import { Plan } from "../../../parts/plan";
import { ground, sheet } from "../../../state";
import type { Supervisor } from "../../../wire";
import { atDesk } from "../at_desk";
import { Legend } from "./signs";
import type { Thing } from "./things";
import { PlanWithCard } from "./with_card";

export function PlanOf({ view }: { view: Supervisor }) {
  const [picked, setPicked] = useState<Thing | null>(null);
  if (!sheet.value) return null;
  if (!atDesk.value) return <Plan sheet={sheet.value} ground={ground.value} />;
  return (
    <>
      <PlanWithCard view={view} picked={picked} onPick={setPicked} />
      <Legend />
    </>
  );
}
