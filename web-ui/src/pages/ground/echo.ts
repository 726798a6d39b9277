/** What a reading would say, in words, before it is sent. */
import { amountText, elevation, preview, readRod } from "../../grade";
import { length, signed } from "../../show";
import { ground, unit } from "../../state";
import { t } from "../../words";
import { chosen, digTo, heightHere, machine, mark, rod, setUp } from "./at";

/** `ground` says how it stands, `call` what the operator would be told; `problem` why it can't be sent. */
export interface Echo {
  ground: string;
  call: string;
  problem: string | null;
}

const NOTHING: Echo = { ground: "", call: "", problem: null };

/** The echo of a rod reading, or of tenths on a receiver with the ground high (`over` +1) or low (−1). */
export function echo(text: string, over: 1 | -1 | 0 | null): Echo {
  const words = t();
  if (text === "") return { ...NOTHING, problem: words.rodProblem.empty };
  const target = digTo(mark.value, chosen.value.side);
  if (over !== null) {
    if (over === 0) return { ...NOTHING, problem: words.receiverAsk };
    const tenths = Number(text);
    return target === null ? NOTHING : judged(Math.round(tenths * 304_800) * over);
  }
  if (!rod.value || !setUp.value) return { ...NOTHING, problem: words.noSetUp };
  const read = readRod(rod.value, text);
  if (!read.ok) return { ...NOTHING, problem: words.rodProblem[read.why] };
  const height = heightHere();
  if (target === null || height === null) return NOTHING;
  return judged(elevation(height, read.value) - target);
}

function judged(dev: number): Echo {
  const words = t();
  const here = mark.value;
  const shot = ground.value?.shots.find((one) => one.mark === here?.id && one.set_up === setUp.value?.id);
  if (!here?.tolerance || !shot) return NOTHING;
  const said = preview(dev, here.aim, here.tolerance, shot.guard);
  const much = amountText(said, unit.value, words);
  const call = [words.ways[said.way], much].filter(Boolean).join(" ");
  return {
    ground: groundLine(dev, said.verdict),
    call: shot.held ? words.cuts.held(words.spot[shot.held]) : words.told(machine.value?.id ?? "?", call),
    problem: null,
  };
}

/** How the ground stands, in the screen's unit. */
export function groundLine(dev: number, verdict: string): string {
  const words = t();
  if (verdict === "on") return words.groundOn(signed(dev));
  if (verdict.startsWith("too_close")) return words.groundClose(signed(dev));
  return words.groundIs(dev > 0 ? words.high : words.low, length(dev, unit.value));
}
