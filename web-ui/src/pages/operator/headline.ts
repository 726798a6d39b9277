/** What stands on the cab's screen, in one line for whoever hears it. */
import { textOf } from "../../parts/call";
import type { CabScreen } from "../../wire";
import { t } from "../../words";
import type { Halted } from "./screen";

export function headline(screen: CabScreen | Halted | null): string {
  const words = t();
  switch (screen?.kind) {
    case undefined:
      return words.linkLost;
    case "stop":
    case "way_in":
      return words.stop;
    case "leave_face":
      return `${words.cuts.leave}. ${screen.name}`;
    case "pause":
      return words.pause;
    case "new_target":
      return `${words.newTarget}. ${screen.name}`;
    case "old":
      return words.ended[screen.why];
    case "halted":
      return words.haltedTitle;
    case "off_site":
    case "no_call":
      return words.noCall;
    case "call": {
      const { call } = screen;
      const text = textOf(call);
      const dig = call.labels.includes("hand_dig") ? words.cuts.handDig : "";
      const look = call.reminder
        ? `${words.look}: ${words.inKeepOut(call.reminder.who, call.reminder.mark)}`
        : "";
      return [call.mark, dig, text?.line, text?.warning, look].filter(Boolean).join(". ");
    }
  }
}
