/** A laser set-up: whether it may be used, and why not. */
import { setUpName } from "../given_names";
import { ago, feet, length, moment, signed } from "../show";
import { now, unit } from "../state";
import type { SetUpCard } from "../wire";
import { t } from "../words_later";

export function SetUpFacts({ card }: { card: SetUpCard }) {
  const words = t();
  const check = card.last_check;
  return (
    <>
      <h2>
        {setUpName(card.id)} <small>{card.laser}</small>
      </h2>
      <p class={card.state.kind === "proven" ? "" : "trouble"}>{proofWords(card)}</p>
      {card.state.kind === "in_doubt" && (
        <p>
          {words.doubtDo} {card.state.agreed.length > 0 && words.agreed(card.state.agreed.join(", "))}
        </p>
      )}
      {card.due && (
        <p class="trouble" role="status">
          {words.due[card.due.why]} · {moment(card.due.since, now.value)}
        </p>
      )}
      <p>
        {words.hi} {feet(card.height)} · {card.benchmark}
        {card.slope && ` · ${words.sloped(percent(card.slope.rise_east), percent(card.slope.rise_north))}`}
        {check && ` · ${check.benchmark} ${signed(check.residual)}, ${words.ago(ago(now.value - check.at))}`}
        {" · "}
        {words.sinceCheck(card.readings_since_check)}
      </p>
    </>
  );
}

/** A rise of feet per foot, as a laser shows it. */
function percent(rise: number): string {
  return `${rise < 0 ? "−" : "+"}${Math.abs(rise * 100).toFixed(2)} %`;
}

function slopeWords(agreed: readonly string[]): string {
  const { proofs } = t();
  return agreed.length > 0 ? proofs.unproven_slope_so_far(agreed.join(", ")) : proofs.unproven_slope;
}

function proofWords(card: SetUpCard): string {
  const words = t();
  const state = card.state;
  if (state.kind === "unproven") return card.slope ? slopeWords(card.good_on ?? []) : words.proofs.unproven;
  if (state.kind === "proven") return words.proofs[state.proof.kind];
  if (state.why.kind === "bumped") return words.doubtBumped(state.why.by);
  if (state.why.kind === "benchmark_changed")
    return words.doubtBenchmark(state.why.benchmark, length(state.why.by, unit.value));
  return words.doubtCheck(state.why.benchmark, length(state.why.residual, unit.value));
}
