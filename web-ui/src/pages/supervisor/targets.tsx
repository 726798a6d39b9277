/** TARGETS: what each asks for, where to aim, and a revision with its reason. */
import { useState } from "preact/hooks";
import { Key } from "../../parts/keys";
import { LatePanel } from "../../parts/late_panel";
import { Profile } from "../../parts/profile";
import { feet, signed } from "../../show";
import { ground, sheet } from "../../state";
import type { SiteTarget, Supervisor } from "../../wire";
import { AimPanel } from "./aim";
import { PlanOf } from "./plan/plan_of";
import { t } from "./words";

interface TargetsProps {
  view: Supervisor;
  onRevise: (target: string) => void;
}

export function TargetsPage({ view, onRevise }: TargetsProps) {
  const words = t();
  const [aims, setAims] = useState(false);
  const [control, setControl] = useState(false);
  return (
    <div class="columns beside-plan">
      <section aria-label={words.aim}>
        <h2>{words.aim}</h2>
        {view.aims.length === 0 && <p>{words.noAims}</p>}
        <ul class="lines">
          {view.aims.map((one) => (
            <li key={one.on}>
              <span>
                <strong>{one.on}</strong> {signed(one.aim)} ft
              </span>
            </li>
          ))}
        </ul>
        <div class="row">
          <Key onPress={() => setAims(true)}>{words.aimSet}</Key>
          <Key onPress={() => setControl(true)}>{words.control}</Key>
        </div>
      </section>
      {sheet.value && (
        <section class="wide" aria-label={words.plan}>
          <PlanOf view={view} />
        </section>
      )}
      {(sheet.value?.targets ?? []).map((target) => (
        <section class="card" key={target.id} aria-label={target.name}>
          <TargetFacts target={target} />
          {sheet.value && <Profile target={target} sheet={sheet.value} ground={ground.value} />}
          <Key label={`${words.revise} ${target.id}`} onPress={() => onRevise(target.id)}>
            {words.revise}
          </Key>
        </section>
      ))}
      {control && (
        <LatePanel title={words.control} onClose={() => setControl(false)}>
          {(late) => <late.ControlPanel onClose={() => setControl(false)} />}
        </LatePanel>
      )}
      {aims && <AimPanel onClose={() => setAims(false)} />}
    </div>
  );
}

function TargetFacts({ target }: { target: SiteTarget }) {
  const words = t();
  const shape = target.grade.shape;
  return (
    <>
      <h2>
        {target.id} <small>{target.name}</small> {words.revision(target.revision)}
      </h2>
      <p>
        {target.grade.stack.surface}{" "}
        {shape.kind === "run"
          ? shape.steps.map((step) => `${feet(step.from)}: ${feet(step.elevation)}`).join(" · ")
          : "elevation" in shape
            ? feet(shape.elevation)
            : words.shapes[shape.kind]}
      </p>
      {target.grade.stack.layers.length > 0 && (
        <p>
          {words.layers}:{" "}
          {target.grade.stack.layers
            .map((layer) => `${layer.name} ${feet(layer.thickness, 3)} ft`)
            .join(", ")}
        </p>
      )}
      <p>
        +{feet(target.tolerance.high)} / −{feet(target.tolerance.low)} ft
      </p>
    </>
  );
}
