/** A target revision: elevations and tolerance as numbers, the reason for the log. Operators must see it. */
import { useState } from "preact/hooks";
import { feet } from "../../show";
import type { Command, SiteTarget } from "../../wire";
import { t } from "../../words";
import { feetTyped } from "./feet_typed";
import { WhyPanel } from "./panels";

interface Field {
  id: string;
  title: string;
  value: number;
}

/** The numbers of a target that can be revised here; its shape and place come from the site file. */
function fields(target: SiteTarget): Field[] {
  const words = t();
  const shape = target.grade.shape;
  const title = words.elevationOf(target.grade.stack.surface);
  const heights =
    shape.kind === "run"
      ? shape.steps.map((step, i) => ({
          id: `step ${i}`,
          title: words.stepFrom(feet(step.from)),
          value: step.elevation,
        }))
      : "elevation" in shape
        ? [{ id: "elevation", title, value: shape.elevation }]
        : [];
  return [
    ...heights,
    { id: "high", title: words.toleranceHigh, value: target.tolerance.high },
    { id: "low", title: words.toleranceLow, value: target.tolerance.low },
  ];
}

/** The revision as it is sent; null while a number is none. */
export function revision(
  target: SiteTarget,
  typed: Record<string, number | null>,
  why: string,
): Command | null {
  if (Object.values(typed).some((value) => value === null)) return null;
  const shape = target.grade.shape;
  const revised =
    shape.kind === "run"
      ? {
          ...shape,
          steps: shape.steps.map((step, i) => ({ ...step, elevation: typed[`step ${i}`] ?? step.elevation })),
        }
      : "elevation" in shape
        ? { ...shape, elevation: typed.elevation ?? shape.elevation }
        : shape;
  return {
    kind: "revise_target",
    target: target.id,
    grade: { ...target.grade, shape: revised },
    tolerance: { high: typed.high ?? target.tolerance.high, low: typed.low ?? target.tolerance.low },
    why,
  };
}

export function RevisePanel({ target, onClose }: { target: SiteTarget; onClose: () => void }) {
  const words = t();
  const all = fields(target);
  const [texts, setTexts] = useState<Record<string, string>>(() =>
    Object.fromEntries(all.map((field) => [field.id, feet(field.value, 3)])),
  );
  // What was not touched keeps its exact value, whatever its text was rounded to.
  const typed = Object.fromEntries(
    all.map((field) => {
      const text = texts[field.id] ?? "";
      return [field.id, text === feet(field.value, 3) ? field.value : feetTyped(text)];
    }),
  );
  const bad = Object.values(typed).some((value) => value === null);
  return (
    <WhyPanel
      title={`${words.revise}: ${target.name}`}
      ask={words.why}
      act={words.revise}
      command={(why) => revision(target, typed, why)}
      onClose={onClose}
    >
      {all.map((field) => (
        <label class="field" key={field.id}>
          <span>{field.title}</span>
          <input
            inputMode="decimal"
            value={texts[field.id]}
            aria-invalid={typed[field.id] === null}
            onInput={(event) => setTexts({ ...texts, [field.id]: event.currentTarget.value })}
          />
        </label>
      ))}
      {bad && <p class="trouble">{words.badNumber}</p>}
    </WhyPanel>
  );
}
