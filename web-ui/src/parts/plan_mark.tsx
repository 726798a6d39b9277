/** A mark of the plan: a cross with its name and how it stands; pressed, or reached by keyboard, it is chosen. */
import { FOOT } from "../grade";
import type { SheetMark } from "../wire";

interface MarkProps {
  mark: SheetMark;
  size: number;
  state: string;
  named: boolean;
  chosen: boolean;
  /** Its name stands to the left, so that it is not cut off at the plan's right edge. */
  leftward: boolean;
  /** The keyboard's first stop among the marks. */
  reached: boolean;
  onChoose: ((mark: string) => void) | undefined;
}

export function MarkSign({ mark, size, state, named, chosen, leftward, reached, onChoose }: MarkProps) {
  const pressed = (event: KeyboardEvent) => {
    if (event.key !== "Enter" && event.key !== " ") return;
    event.preventDefault();
    onChoose?.(mark.id);
  };
  return (
    <g
      transform={`translate(${mark.place.x / FOOT} ${-mark.place.y / FOOT})`}
      class={`plan-mark ${chosen ? "chosen" : ""}`}
      {...(onChoose
        ? {
            role: "button",
            tabindex: reached ? 0 : -1,
            "aria-label": `${mark.id} ${state}`.trim(),
            "aria-pressed": chosen,
            onClick: () => onChoose(mark.id),
            onKeyDown: pressed,
          }
        : {})}
    >
      <circle class="plan-hit" r={size * 1.3} />
      <path d={`M${-size * 0.5} 0H${size * 0.5}M0 ${-size * 0.5}V${size * 0.5}`} />
      {chosen && <circle class="plan-chosen" r={size} />}
      {named && (
        <text
          x={size * (leftward ? -0.6 : 0.6)}
          y={-size * 0.3}
          text-anchor={leftward ? "end" : "start"}
          font-size={size}
        >
          {mark.id} {state}
        </text>
      )}
    </g>
  );
}

/** From the mark that has the focus to the one before or after it. */
export function walks(event: KeyboardEvent): void {
  const by = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
  const plan = event.currentTarget;
  if (!by || !(plan instanceof Element)) return;
  const all = [...plan.querySelectorAll<SVGGElement>(".plan-mark")];
  const at = all.indexOf(document.activeElement as SVGGElement);
  const next = all[(at + by + all.length) % all.length];
  event.preventDefault();
  next?.focus();
}
