/** What a reading would say, in words, before it is sent; and what becomes of one that no call can follow. */
import {
  amountText,
  deviation,
  elevation,
  guardOf,
  joined,
  type Preview,
  preview,
  readRod,
  type Way,
} from "../../grade";
import { said } from "../../said";
import { feet, length, signed } from "../../show";
import { ground, me, now, unit } from "../../state";
import type { SheetMark, Shot } from "../../wire";
import { t } from "../../words";
import { chosen, digTo, heightHere, machine, mark, nearStep, rod, setUp } from "./at";

/** What stands in two rows under the figure. */
export interface Echo {
  /** How the ground stands: HIGH 0.30 ft; of a reading without a call its elevation. */
  ground: string;
  /** What the cab would be told: DOWN 3. */
  call: string;
  way: Way | null;
  /** Why no call can follow: it is kept, and this is said. */
  kept: string | null;
  /** Why it can't be sent. */
  problem: string | null;
}

const NOTHING: Echo = { ground: "", call: "", way: null, kept: null, problem: null };

/** Why a reading here is only kept, in the order in which the hub looks; null when a call may follow. */
export function keptWhy(): string | null {
  const words = t();
  const here = mark.value;
  if (!here || !setUp.value) return null;
  if (chosen.value.paper) return words.keptPaper;
  if (setUp.value.state.kind !== "proven") return words.keptSpot(words.spot.set_up_in_doubt);
  if (!here.dig_to) return words.keptSpot(noGrade(here) || words.spot.no_target);
  if (!machine.value) return words.keptSpot(words.spot.no_machine);
  const held = shotHere()?.held;
  return held ? words.keptSpot(words.spot[held]) : null;
}

/** Why a mark that names a target has no grade, in this screen's language. */
const noGrade = (of: SheetMark) => of.why_no_grade && said(of.why_no_grade);

const shotHere = (): Shot | undefined =>
  ground.value?.shots.find((one) => one.mark === mark.value?.id && one.set_up === setUp.value?.id);

/**
 * The echo of a rod reading, or of tenths on a receiver with the ground high (`over` +1) or low (−1); `restates` is the reading
 * that it corrects. It is the call that the hub will make: earlier shots of the same ground count as they do there.
 */
export function echo(text: string, over: 1 | -1 | 0 | null, restates: number | null = null): Echo {
  const words = t();
  const kept = keptWhy();
  if (text === "") return { ...NOTHING, kept, problem: words.rodProblem.empty };
  const target = digTo(mark.value, chosen.value.side);
  if (over !== null) {
    if (over === 0) return { ...NOTHING, kept, problem: words.receiverAsk };
    const up = Math.round(Number(text) * 304_800) * over;
    return target === null || kept ? { ...NOTHING, kept } : judged(up, false, null);
  }
  if (!rod.value || !setUp.value) return { ...NOTHING, problem: words.noSetUp };
  const read = readRod(rod.value, text);
  if (!read.ok) return { ...NOTHING, kept, problem: words.rodProblem[read.why] };
  const height = heightHere();
  if (kept && !chosen.value.paper) {
    return { ...NOTHING, kept, ground: height === null ? "" : `${feet(elevation(height, read.value))} ft` };
  }
  // On either side of a step another call would follow.
  if (target === null || height === null)
    return { ...NOTHING, kept, call: nearStep(mark.value) ? "" : words.hubTells };
  return judged(elevation(height, read.value) - target, read.coarse, { restates });
}

/** `joins` is there for a rod: a receiver's tenths are averaged with nothing. */
function judged(up: number, coarse: boolean, joins: { restates: number | null } | null): Echo {
  const words = t();
  const here = mark.value;
  const shot = shotHere();
  const kept = keptWhy();
  if (!here?.tolerance || !shot) return { ...NOTHING, kept, call: kept ? "" : words.hubTells };
  const dev = deviation(up, shot.square);
  const { side, care, paper } = chosen.value;
  const at = paper?.at ?? now.value;
  const earlier = joins ? joined(shot, { dev, at, side, ...joins }) : [];
  const devs = [...earlier, dev];
  const read = { care, coarse, ownDoubt: ownDoubt(paper?.by ?? me.value?.person) };
  const guard = guardOf(shot, read, devs.length);
  const said = preview(devs, here.aim, here.tolerance, guard, ground.value?.trims);
  return { ground: standing(said), call: paper ? "" : callOf(said), way: said.way, kept, problem: null };
}

/** In as few letters as a glance takes: HIGH 0.30 ft, ON GRADE −0.02, TOO CLOSE +0.08. */
function standing({ dev, verdict }: Preview): string {
  const words = t();
  if (verdict === "on") return words.onGrade(signed(dev));
  if (verdict.startsWith("too_close")) return words.tooClose(signed(dev));
  return `${dev > 0 ? words.high : words.low} ${length(dev, unit.value)}`;
}

function callOf(said: Preview): string {
  const words = t();
  return [words.ways[said.way], amountText(said, unit.value, words)].filter(Boolean).join(" ");
}

/** What this person's own blind pairs show with the rod in hand. */
function ownDoubt(person: string | undefined): number | null {
  const own = ground.value?.own_doubts?.find((one) => one.person === person && one.rod === rod.value?.id);
  return own?.doubt ?? null;
}

/** How the ground stands, in the screen's unit, as a sentence. */
export function groundLine(dev: number, verdict: string): string {
  const words = t();
  if (verdict === "on") return words.groundOn(signed(dev));
  if (verdict.startsWith("too_close")) return words.groundClose(signed(dev));
  return words.groundIs(dev > 0 ? words.high : words.low, length(dev, unit.value));
}
