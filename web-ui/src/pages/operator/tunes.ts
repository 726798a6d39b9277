/** Which tone goes with what has just come on the cab's screen. */
import { useEffect } from "preact/hooks";
import { FOOT } from "../../grade";
import { half, textOf } from "../../parts/call";
import { notes, play, speak, type Tune } from "../../sound";
import { language, spoken } from "../../state";
import type { CabScreen, CallView, WayInCard } from "../../wire";
import type { Halted } from "./screen";

/** STOP sounds again after this long, and this often, ms. */
const AGAIN = 4_000;
const TIMES = 8;

/** The tune of a call and how many tenths it tells. */
export function tuneOf(call: CallView): { tune: Tune; tenths: number } {
  if (call.message.kind !== "measured") return { tune: "look", tenths: 1 };
  const told = call.message.correction;
  const tenths = Math.abs(call.message.amount) / (FOOT / 10);
  if (typeof told === "object" && "shave" in told) return { tune: "shave", tenths: 1 };
  const which = half(call.message);
  return { tune: which === "none" ? "look" : which, tenths };
}

/** What of the way in has to be heard: each ask, each time that it is asked again, each entry without an answer. */
export function loudest(card: WayInCard | undefined): string {
  const owed = (card?.people ?? []).filter((one) => one.stage === "asked" || one.stage === "unconfirmed");
  return owed.map((one) => `${one.visit}/${one.stage}/${one.not_answered}`).join(" ");
}

export function useTunes(screen: CabScreen | Halted | null, wayIn?: WayInCard): void {
  const call = screen?.kind === "call" ? screen.call : null;
  useEffect(() => {
    if (!call) return;
    const { tune, tenths } = tuneOf(call);
    const covers = call.reminder?.loud && !call.reminder.beside;
    const took = covers ? play("stop") + play("look") : play(tune, tenths);
    const rest = notes(tune, tenths).length > 0 ? took + 0.15 : 0;
    const text = textOf(call);
    if (spoken.value && text) speak(text.spoken, language.value, rest);
    navigator.vibrate?.(200);
  }, [call?.id]);
  const asks = screen?.kind === "way_in" ? loudest(wayIn) : "";
  useEffect(() => {
    if (!asks) return undefined;
    const loud = asks.includes("/true") || asks.includes("/unconfirmed/");
    let left = TIMES;
    const sound = () => {
      play("stop", 1, loud ? 1 : 0.5);
      navigator.vibrate?.(loud ? [600, 150, 600] : [400, 200, 400]);
    };
    sound();
    const timer = setInterval(() => {
      if (left-- > 0) sound();
    }, AGAIN);
    return () => clearInterval(timer);
  }, [asks]);
  // A further press on a stop that stands sounds again.
  const stopped =
    screen?.kind === "stop"
      ? `${screen.since} ${screen.press}`
      : screen?.kind === "leave_face"
        ? `${screen.since}`
        : "";
  useEffect(() => {
    if (!stopped) return undefined;
    let left = TIMES;
    play("stop");
    navigator.vibrate?.([400, 200, 400]);
    const timer = setInterval(() => {
      if (left-- > 0) play("stop");
    }, AGAIN);
    return () => clearInterval(timer);
  }, [stopped]);
}
