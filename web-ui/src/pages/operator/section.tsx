/**
 * The section: a cut through the ground. A thick line is the target; soil that stands high is one body above it,
 * missing soil an open hollow below it; word and number stand in the half that the bucket must move to.
 */
import { FOOT } from "../../grade";
import { half, saidInFeet, textOf } from "../../parts/call";
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
  return (
    <div class={`section ${byEye ? "eye" : edge ? "none strip-of-line" : which}`}>
      {edge && <Beyond />}
      {which === "down" && <Body share={thickness(dev)} />}
      {which === "up" && <Hollow share={thickness(dev)} />}
      {which === "grade" && <Flush />}
      {!byEye && !edge && <i class="target-line" />}
      <Told text={text} boxed={boxed} byEye={byEye} wait={which === "none" && !byEye && !edge} />
    </div>
  );
}

/** The line seen from above: a double rule, and beyond it the ground that is not ours. */
function Beyond() {
  return <div class="beyond" aria-hidden="true" />;
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
  return (
    <div class="told" role="status" data-number aria-label={`${text.line}. ${text.warning} ${text.exact}`}>
      <div class="word-row" style={{ "--ems": text.warning ? ems(text.warning) / 2 : wide }}>
        <span class="word">{text.word}</span>
        {beside > 0 && <span class="unit-word">{text.unit_word}</span>}
      </div>
      {text.warning && (
        <div class="word-row warn" style={{ "--ems": ems(text.warning) / 2 }}>
          {text.warning}
        </div>
      )}
      {text.amount && (
        <div class="number-room">
          <span class={`number ${boxed ? "boxed" : ""}`} style={{ "--ems": numberEms(text.amount, boxed) }}>
            <Figures of={text.amount} />
          </span>
        </div>
      )}
      {byEye && <p class="by-eye">{t().byEye}</p>}
      {wait && <p class="by-eye">{t().shootAgain}</p>}
      <p class="exact">{text.exact}</p>
    </div>
  );
}

/** A half or an eighth stands smaller beside its whole number, as on a drawing. */
function Figures({ of: amount }: { of: string }) {
  const half = amount.endsWith("½") ? amount.slice(0, -1) : null;
  if (half !== null) {
    return (
      <>
        {half}
        <span class={half ? "part" : ""}>½</span>
      </>
    );
  }
  const [whole, part] = fraction(amount);
  return (
    <>
      {whole}
      {part && <span class="part">{part}</span>}
    </>
  );
}

/** What stands before a fraction of an inch, and the fraction: 1 FT 1 and 3/4. */
function fraction(amount: string): [whole: string, part: string] {
  const at = amount.lastIndexOf(" ");
  return at > 0 && amount.includes("/", at) ? [amount.slice(0, at), amount.slice(at + 1)] : [amount, ""];
}

function longestWord(text: string): string {
  return text.split(" ").reduce((a, b) => (b.length > a.length ? b : a), "");
}

/** How wide a text runs, in ems of a heavy face. */
export function ems(text: string): number {
  return Math.max(2.4, [...text].length * 0.74);
}

/**
 * How wide a number runs in the widest face that phones set it in: a number that is cut off is another number.
 * A fraction beside a whole stands half as large; the boxed face is narrower.
 */
export function numberEms(amount: string, boxed: boolean): number {
  const [whole, part] = fraction(amount);
  const half = whole.length > 1 && whole.endsWith("½");
  const digits = half ? whole.slice(0, -1) : whole;
  const beside = half ? run("½") : run(part);
  return run(digits) * (boxed ? 0.86 : 1) + beside / 2 + (boxed ? 0.4 : 0.05);
}

/** Digits all alike, a point and a stroke narrow. */
function run(text: string): number {
  const wide: Record<string, number> = { ".": 0.38, "/": 0.38, "½": 1.05 };
  return [...text].reduce((sum, c) => sum + (wide[c] ?? 0.7), 0);
}
