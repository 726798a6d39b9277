/**
 * The section: a cut through the ground. A thick line is the target; soil that stands high is one body above it,
 * missing soil an open hollow below it; word and number stand in the half that the bucket must move to.
 */
import { FOOT } from "../../grade";
import { half, saidInFeet, textOf } from "../../parts/call";
import { Figures, runsEms } from "../../parts/figures";
import { unit } from "../../state";
import type { CallText, CallView } from "../../wire";
import { t } from "../../words";

/** The ragged edge of dug soil: across in hundredths, and how far each tooth stands out, 0 to 1. */
const TEETH: readonly (readonly [number, number])[] = [
  [0, 0.55],
  [7, 0.95],
  [13, 0.6],
  [22, 1],
  [31, 0.7],
  [38, 0.9],
  [47, 0.5],
  [55, 0.85],
  [64, 0.65],
  [73, 1],
  [81, 0.6],
  [90, 0.9],
  [100, 0.7],
];

/** To scale up to a foot, never so thin that it can't be seen; a share of the room. */
export function thickness(dev: number): number {
  return 0.35 + 0.65 * Math.min(1, Math.abs(dev) / FOOT);
}

export function Section({ call }: { call: CallView }) {
  const which = half(call.message);
  const text = textOf(call);
  if (!text) return null;
  const byEye = call.message.kind === "by_eye";
  const edge = call.message.kind === "edge";
  const dev = call.message.kind === "measured" ? call.message.dev : 0;
  const boxed = unit.value === "tenths" && saidInFeet(call.message);
  const told = <Told text={text} boxed={boxed} byEye={byEye} wait={which === "none" && !byEye && !edge} />;
  if (edge) return <div class="section strip-of-line">{told}</div>;
  // From the sky down: what is drawn first stands higher. The ground's last edge is solid, also with the phone upside down.
  return (
    <div class={`section ${byEye ? "eye" : which}`}>
      {which === "down" && <Body share={thickness(dev)} />}
      {(which === "up" || which === "grade") && told}
      {!byEye && <i class="target-line" />}
      {which === "up" && <Hollow share={thickness(dev)} />}
      {which === "grade" && <Flush />}
      {(which === "down" || which === "none") && told}
      {which !== "none" && <i class="deep" />}
    </div>
  );
}

/** Soil above the line: one hatched body with a ragged top. */
function Body({ share }: { share: number }) {
  const top = TEETH.map(([x, y]) => [x, 100 - y * share * 100] as const);
  const edge = top.map(([x, y]) => `${x}% ${y}%`).join(", ");
  return (
    <div class="soil" aria-hidden="true">
      <div class="hatch" style={{ clipPath: `polygon(${edge}, 100% 100%, 0 100%)` }} />
      <Edge points={top.map(([x, y]) => `${x},${y}`).join(" ")} />
    </div>
  );
}

/** At grade: the ground lies flush on the line, along its whole length. */
function Flush() {
  return (
    <div class="soil" aria-hidden="true">
      <div class="hatch" />
    </div>
  );
}

/** Soil missing below the line: an open hollow with walls and a ragged floor, the ground hatched round it. */
function Hollow({ share }: { share: number }) {
  const floor = TEETH.map(([x, y]) => [14 + x * 0.72, share * (72 + y * 14)] as const);
  const edge = floor.map(([x, y]) => `${x}% ${y}%`).join(", ");
  return (
    <div class="soil" aria-hidden="true">
      <div
        class="hatch"
        style={{ clipPath: `polygon(0 0, 14% 0, ${edge}, 86% 0, 100% 0, 100% 100%, 0 100%)` }}
      />
      <Edge points={`0,0 14,0 ${floor.map(([x, y]) => `${x},${y}`).join(" ")} 86,0 100,0`} />
    </div>
  );
}

function Edge({ points }: { points: string }) {
  return (
    <svg class="edge" viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
      <polyline points={points} vector-effect="non-scaling-stroke" />
    </svg>
  );
}

interface ToldProps {
  text: CallText;
  boxed: boolean;
  byEye: boolean;
  wait: boolean;
}

function Told({ text, boxed, byEye, wait }: ToldProps) {
  const beside = text.unit_word && !byEye ? 2.6 : 0;
  const wide = byEye ? ems(longestWord(text.word)) : ems(text.word) + beside;
  const name = [`${text.line}.`, text.warning, text.exact].filter(Boolean).join(" ");
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing with words in it, told as one.
    <div
      class={`told ${text.amount ? "" : "words-alone"}`}
      role="group"
      data-number
      aria-label={name}
      style={{ "--ems": text.amount ? numberEms(text.amount, boxed) : 1 }}
    >
      <div class="word-room">
        <div class="word-row" style={{ "--ems": wide }}>
          <span class="word">{text.word}</span>
          {beside > 0 && <span class="unit-word">{text.unit_word}</span>}
        </div>
      </div>
      {text.amount && (
        <div class={`number-room ${boxed ? "for-box" : ""}`}>
          <span class={`number ${boxed ? "boxed" : ""}`}>
            <Figures of={text.amount} />
          </span>
        </div>
      )}
      {text.warning && <p class="warn">{text.warning}</p>}
      {byEye && <p class="by-eye">{t().byEye}</p>}
      {wait && <p class="by-eye">{t().shootAgain}</p>}
      <p class="exact">
        <span>{text.exact}</span>
      </p>
    </div>
  );
}

function longestWord(text: string): string {
  return text.split(" ").reduce((a, b) => (b.length > a.length ? b : a), "");
}

/** How wide a text runs, in ems of a heavy face. */
export function ems(text: string): number {
  return Math.max(2.4, [...text].length * 0.74);
}

/** How wide a number runs, in ems; the boxed face is narrower, its box stands round it. */
export function numberEms(amount: string, boxed: boolean): number {
  return runsEms(amount) * (boxed ? 0.86 : 1) + (boxed ? 0.4 : 0.05);
}
