/** The mark under the rod: its dig-to, its last reading, what the rod must read, and the laser behind it. */

import { setUpName } from "../../given_names";
import { rodText } from "../../grade";
import { Key } from "../../parts/keys";
import { lastWords } from "../../parts/last";
import { ago, feet, timeOfDay } from "../../show";
import { ground, now } from "../../state";
import { t } from "../../words";
import { chosen, digTo, gradeRod, machine, mark, rod, setUp, step } from "./at";
import { keptLines } from "./edge";
import { leave } from "./open";
import { within } from "./way_in";

interface StripProps {
  onMarks: () => void;
  onLaser: () => void;
  onWith: () => void;
  onEdge: () => void;
  onMore: () => void;
}

export function MarkStrip({ onMarks, onLaser, onWith, onEdge, onMore }: StripProps) {
  const words = t();
  const here = mark.value;
  const { paper } = chosen.value;
  const to = digTo(here, chosen.value.side);
  const last = ground.value?.marks.find((one) => one.id === here?.id);
  return (
    <>
      <KeepOutLine />
      <div class="mark-strip">
        <Key kind="step" label={words.previous} onPress={() => leave(() => step(-1))}>
          ◂
        </Key>
        <Key kind="mark" onPress={onMarks}>
          <strong>{here?.id ?? words.none}</strong>
          <small>
            {to === null ? "" : `${words.digTo} ${feet(to)} · `}
            {lastWords(last)}
          </small>
        </Key>
        <Key kind="step" label={words.next} onPress={() => leave(() => step(1))}>
          ▸
        </Key>
      </div>
      <div class="facts">
        <button type="button" class={`key chip ${setUpKind()}`} onClick={onLaser}>
          {setUpWords()}
        </button>
        <button type="button" class="key chip" onClick={onWith}>
          {words.rod} {rod.value?.id ?? words.none}
          {chosen.value.receiver ? ` · ${words.receiver}` : ""}
        </button>
        {keptLines().length > 0 && !paper && (
          <button type="button" class="key chip" onClick={onEdge}>
            {words.edge}
          </button>
        )}
        <button type="button" class={`key chip ${paper ? "trouble" : ""}`} onClick={onMore}>
          {paper ? words.fromPaper(timeOfDay(paper.at), paper.by) : words.more}
        </button>
      </div>
    </>
  );
}

/** What the rod must read at grade, bracket and all. */
export function RodMust() {
  const must = gradeRod();
  if (must === null || !rod.value) return null;
  return (
    <p class="rod-must">
      <small>{t().rodMustRead}</small> <strong>{rodText(rod.value, must)}</strong>
    </p>
  );
}

function setUpKind(): string {
  const state = setUp.value?.state.kind;
  return state === "proven" ? "" : "trouble";
}

function setUpWords(): string {
  const words = t();
  const card = setUp.value;
  if (!card) return words.noSetUp;
  const name = setUpName(card.id);
  if (card.state.kind === "unproven") return words.setUpUnproven(name);
  if (card.state.kind === "in_doubt") return words.setUpDoubt(name);
  if (!card.last_check) return words.setUpNoCheck(name);
  return words.setUpChecked(name, ago(now.value - card.last_check.at));
}

/** Said before the reading goes out: the strip will stand with the call. */
function KeepOutLine() {
  const card = machine.value;
  const here = mark.value;
  if (!card || !here || !within(card, here)) return null;
  return (
    <p class="keep-out">
      {t().insideKeepOut(card.id)} {t().cautionShort}
    </p>
  );
}
