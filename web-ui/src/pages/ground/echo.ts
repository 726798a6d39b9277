/** What a reading would say, in words, before it is sent. */
import { amountText, deviation, elevation, guardOf, joined, preview, readRod } from "../../grade";
import { length, signed } from "../../show";
import { ground, me, now, unit } from "../../state";
import { t } from "../../words";
import { chosen, digTo, heightHere, machine, mark, rod, setUp } from "./at";

/** `ground` says how it stands, `call` what the operator would be told; `problem` why it can't be sent. */
export interface Echo {
  ground: string;
  call: string;
  problem: string | null;
}

const NOTHING: Echo = { ground: "", call: "", problem: null };

/**
 * The echo of a rod reading, or of tenths on a receiver with the ground high (`over` +1) or low (−1); `restates` is the reading
 * that it corrects. It is the call that the hub will make: earlier shots of the same ground count as they do there.
 */
export function echo(text: string, over: 1 | -1 | 0 | null, restates: number | null = null): Echo {
  const words = t();
  if (text === "") return { ...NOTHING, problem: words.rodProblem.empty };
  const target = digTo(mark.value, chosen.value.side);
  if (over !== null) {
    if (over === 0) return { ...NOTHING, problem: words.receiverAsk };
    const tenths = Number(text);
    return target === null ? NOTHING : judged(Math.round(tenths * 304_800) * over, false, null);
  }
  if (!rod.value || !setUp.value) return { ...NOTHING, problem: words.noSetUp };
  const read = readRod(rod.value, text);
  if (!read.ok) return { ...NOTHING, problem: words.rodProblem[read.why] };
  const height = heightHere();
  if (target === null || height === null) return NOTHING;
  return judged(elevation(height, read.value) - target, read.coarse, { restates });
}

/** `joins` is there for a rod: a receiver's tenths are averaged with nothing. */
function judged(up: number, coarse: boolean, joins: { restates: number | null } | null): Echo {
  const words = t();
  const here = mark.value;
  const shot = ground.value?.shots.find((one) => one.mark === here?.id && one.set_up === setUp.value?.id);
  if (!here?.tolerance || !shot) return NOTHING;
  const dev = deviation(up, shot.square);
  const { side, care, paper } = chosen.value;
  const at = paper?.at ?? now.value;
  const earlier = joins ? joined(shot, { dev, at, side, ...joins }) : [];
  const devs = [...earlier, dev];
  const read = { care, coarse, ownDoubt: ownDoubt(paper?.by ?? me.value?.person) };
  const guard = guardOf(shot, read, devs.length);
  const said = preview(devs, here.aim, here.tolerance, guard, ground.value?.trims);
  const stands = said.dev;
  if (said.way === "ruling") {
    return { ground: groundLine(stands, said.verdict), call: words.ways.ruling, problem: null };
  }
  const much = amountText(said, unit.value, words);
  const call = [words.ways[said.way], much].filter(Boolean).join(" ");
  return {
    ground: groundLine(stands, said.verdict),
    call: shot.held ? words.cuts.held(words.spot[shot.held]) : words.told(machine.value?.id ?? "?", call),
    problem: null,
  };
}

/** What this person's own blind pairs show with the rod in hand. */
function ownDoubt(person: string | undefined): number | null {
  const own = ground.value?.own_doubts?.find((one) => one.person === person && one.rod === rod.value?.id);
  return own?.doubt ?? null;
}

/** How the ground stands, in the screen's unit. */
export function groundLine(dev: number, verdict: string): string {
  const words = t();
  if (verdict === "on") return words.groundOn(signed(dev));
  if (verdict.startsWith("too_close")) return words.groundClose(signed(dev));
  return words.groundIs(dev > 0 ? words.high : words.low, length(dev, unit.value));
}
