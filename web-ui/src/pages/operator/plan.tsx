/** The cab's plan, reached by one key from the section: the site from above, and the profiles of what this machine digs. */
import { Plan } from "../../parts/plan";
import { Profile } from "../../parts/profile";
import { ground, sheet } from "../../state";
import type { Operator } from "../../wire";
import { t } from "../../words";
import { StandLine } from "./stand";

export function CabPlan({ view }: { view: Operator }) {
  const drawn = sheet.value;
  if (!drawn) return <p class="empty">{t().loading}</p>;
  const works = drawn.machines.find((one) => one.id === view.machine)?.works_on ?? [];
  return (
    <div class="cab-plan">
      <StandLine view={view} />
      <Plan sheet={drawn} ground={ground.value} />
      {drawn.targets
        .filter((target) => works.includes(target.id))
        .map((target) => (
          <Profile key={target.id} target={target} sheet={drawn} ground={ground.value} />
        ))}
    </div>
  );
}
