/** The cards of all else on the desk's plan: lines, buried and overhead ones, faces, tickets, piles, footings, benchmarks, targets. */
import { TicketFacts, UtilityFacts } from "../../../parts/buried_facts";
import { DaylightFacts, FaceFacts } from "../../../parts/face_facts";
import { Key } from "../../../parts/keys";
import { lastShort } from "../../../parts/last";
import { Profile } from "../../../parts/profile";
import { feet, signed } from "../../../show";
import { ground, sheet } from "../../../state";
import type { Sheet } from "../../../wire";
import { t } from "../words";
import type { CardProps } from "./card";
import { PhotosOf } from "./card_mark";
import { Sign } from "./signs";
import { standingOf } from "./things";

export function OtherOnCard(card: CardProps) {
  const site = sheet.value;
  const { of, view } = card;
  if (!site) return null;
  const { cuts } = view;
  switch (of.kind) {
    case "buried": {
      const one = cuts.utilities.find((each) => each.utility.id === of.id);
      return one ? <UtilityFacts card={one} crossings={cuts.crossings} /> : <Gone />;
    }
    case "face": {
      const one = cuts.faces.find((each) => each.id === of.id);
      if (!one) return <Gone />;
      return (
        <>
          <FaceFacts card={one} />
          <DaylightFacts card={one} />
          <PhotosOf view={view} of={of} />
        </>
      );
    }
    case "ticket": {
      const one = cuts.tickets.find((each) => each.id === of.id);
      return one ? <TicketFacts card={one} /> : <Gone />;
    }
    case "target":
      return <OfTarget {...card} />;
    default: {
      const said = facts(site, of.kind, of.id);
      return said ? (
        <ul class="thing-facts">
          {said.filter(Boolean).map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ul>
      ) : (
        <Gone />
      );
    }
  }
}

/** It was on the site when it was pressed, and is no more. */
function Gone() {
  return <p class="warning">{t().none}</p>;
}

/** What a thing is, in a few lines; nothing when the site has it no more. */
function facts(site: Sheet, kind: string, id: string): string[] | null {
  const words = t().desk;
  switch (kind) {
    case "line": {
      const one = site.lines.find((each) => each.id === id);
      return (
        (one && [
          words.lineKinds[one.kind],
          one.no_cross ? words.noCross : "",
          words.keepSide[one.keep],
          words.doubt(feet(one.doubt)),
          one.note ?? "",
        ]) ||
        null
      );
    }
    case "overhead": {
      const one = site.overheads.find((each) => each.id === id);
      const kv = one?.kilovolts ?? one?.kilovolts_at_most;
      const volts =
        kv == null
          ? words.voltageUnknown
          : one?.kilovolts != null
            ? words.voltage(String(kv))
            : words.voltageAtMost(String(kv));
      return one
        ? [words.lowest(feet(one.height, 1)), volts, one.call ? t().cuts.callOwner(one.call) : ""]
        : null;
    }
    case "pile": {
      const one = site.piles.find((each) => each.id === id);
      return one ? [words.across(feet(one.across, 1)), one.note ?? ""] : null;
    }
    case "structure": {
      const one = site.structures.find((each) => each.id === id);
      return one ? [words.bottom(feet(one.bottom))] : null;
    }
    case "benchmark": {
      const one = site.benchmarks.find((each) => each.id === id);
      return one
        ? [words.elevation(feet(one.elevation, 3)), words.doubt(feet(one.doubt, 3)), one.note ?? ""]
        : null;
    }
    default:
      return null;
  }
}

/** A target: what it asks for along its line, and each of its marks, to be pressed. */
function OfTarget({ of, view, onPick }: CardProps) {
  const words = t();
  const site = sheet.value;
  const target = site?.targets.find((one) => one.id === of.id);
  if (!site || !target) return <Gone />;
  const marks = site.marks.filter((one) => one.target === target.id);
  return (
    <>
      <p>
        {target.name} {words.revision(target.revision)}
      </p>
      <p class="quiet">{words.desk.allowed(feet(target.tolerance.high), feet(target.tolerance.low))}</p>
      <Profile target={target} sheet={site} ground={ground.value} table={false} />
      <h3>
        {words.desk.marksOf} <small>{marks.length}</small>
      </h3>
      <ul class="lines">
        {marks.map((mark) => {
          const card = view.marks.find((one) => one.id === mark.id);
          return (
            <li key={mark.id}>
              <Key kind="plain" onPress={() => onPick({ kind: "mark", id: mark.id })}>
                <svg viewBox="-11 -11 22 22" aria-hidden="true">
                  <Sign of={standingOf(card)} />
                </svg>
                {mark.id} {lastShort(card)}
              </Key>
              <span>{card?.dev == null ? "" : signed(card.dev)}</span>
            </li>
          );
        })}
      </ul>
    </>
  );
}
