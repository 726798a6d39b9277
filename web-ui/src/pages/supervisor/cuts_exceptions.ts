/** What of faces and buried lines needs somebody, in words. */
import { alarmWhy } from "../../parts/alarm_why";
import { feet, signed } from "../../show";
import type { ExceptionKind } from "../../wire";
import { t } from "./words";

type OfCuts = Extract<
  ExceptionKind,
  {
    kind:
      | "face_left"
      | "inspection_due"
      | "daylight_over"
      | "crossing_too_near"
      | "pile_at_crest"
      | "paint_gone"
      | "line_struck"
      | "ticket_waits";
  }
>;

export function cutsWords(what: OfCuts): string {
  const cuts = t().cuts;
  const words = cuts.exception;
  switch (what.kind) {
    case "face_left":
      return words.face_left(what.zone, alarmWhy(what.why));
    case "inspection_due": {
      const why = cuts.dueWhy[what.why];
      return what.overdue ? words.inspection_overdue(what.zone, why) : words.inspection_due(what.zone, why);
    }
    case "daylight_over":
      return what.least < 0
        ? words.daylight_over(what.zone, what.line, feet(-what.least))
        : words.daylight_touch(what.zone, what.line);
    case "crossing_too_near": {
      const { zone, utility, clear, need } = what.crossing;
      return words.crossing(zone, utility, clear == null ? "?" : signed(clear), feet(need));
    }
    case "pile_at_crest":
      return words.pile_at_crest(what.pile, what.zone, feet(what.back), feet(what.needs, 0));
    case "paint_gone":
      return words.paint_gone(what.utility);
    case "line_struck":
      return `${t().struck.title} ${what.struck.lines.join(" / ") || t().struck.notDrawn}: ${t().struck.asks[what.struck.what]}`;
    case "ticket_waits": {
      const { id, to, days_left, checked, silent } = what.ticket;
      const days = days_left ?? -1;
      const holds = days < 0 ? cuts.ticketLapsed(id, to) : cuts.ticketHolds(id, to, days);
      const looked = checked ? "" : ` · ${cuts.ticketNotChecked}`;
      const quiet =
        silent.length > 0 ? ` · ${cuts.ticketSilent(silent.map((one) => cuts.kinds[one]).join(", "))}` : "";
      return `${holds}${looked}${quiet}`;
    }
  }
}
