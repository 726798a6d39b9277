/** A face or a trench as a card: its class, its inspection, its pins, its daylight; what is owed stands first. */
import { feet, moment, signed } from "../show";
import { now } from "../state";
import type { DesignPiece, FaceCard } from "../wire";
import { t } from "../words_later";
import { alarmWhy } from "./alarm_why";

/** Run to one of rise, bare: 1.5. */
function run(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** 1 to 1 up to 306.00 ft, 1.5 to 1 above. */
export function pieceWords(pieces: readonly DesignPiece[]): string {
  const words = t().cuts;
  return pieces
    .map((piece, i) =>
      piece.top != null
        ? words.upTo(run(piece.run_per_rise), feet(piece.top))
        : i === 0
          ? words.slope(run(piece.run_per_rise))
          : words.above(run(piece.run_per_rise)),
    )
    .join(", ");
}

export function inspectionWords(card: FaceCard): { text: string; owed: boolean } | null {
  const words = t().cuts;
  const state = card.inspection;
  if (!state) return null;
  if (state.kind === "signed")
    return { text: words.signed(state.signed.by, moment(state.signed.at, now.value)), owed: false };
  const why = words.dueWhy[state.why];
  return state.kind === "due"
    ? { text: words.due(why), owed: true }
    : { text: words.overdue(why, moment(state.worked_at, now.value)), owed: true };
}

/** What anybody at the face has to know. */
export function FaceFacts({ card }: { card: FaceCard }) {
  const words = t().cuts;
  const inspection = inspectionWords(card);
  return (
    <div class="face-facts">
      {card.alarm && (
        <p class="trouble leave-line">
          <strong>{words.leave}</strong> {alarmWhy(card.alarm.why)} · {moment(card.alarm.since, now.value)} ·{" "}
          {words.leaveStrip(card.name, feet(card.strip, 0))}
          {card.must_leave.length > 0 && ` · ${words.mustLeave(card.must_leave.join(", "))}`}
        </p>
      )}
      {inspection && <p class={inspection.owed ? "trouble" : ""}>{inspection.text}</p>}
      <p>
        <strong>{card.picked ? words.classIs(words.classes[card.class]) : words.notClassed}</strong>
        {card.picked &&
          card.lowered_by.length > 0 &&
          ` · ${words.loweredFrom(
            words.classes[card.picked],
            card.lowered_by.map((why) => words.lowered[why]).join(", "),
          )}`}
        {" · "}
        {words.height(feet(card.height))}
      </p>
      <ul class="lines plain">
        {card.also.map((one) => (
          <li key={one.what}>
            {words.also[one.what]} <small>{one.section}</small>
          </li>
        ))}
        {card.pins.map((one) => (
          <li key={one.pins}>
            {one.now ? (
              <span class={one.now.state === "still" ? "" : "trouble"}>
                {/* Once people were let back, a tape from before asks for watching, no more. */}
                <strong>
                  {words.pinStates[one.now.state === "leave" && !card.alarm ? "watch" : one.now.state]}
                </strong>{" "}
                {words.pinsNow(one.pins, feet(one.now.apart), one.now.rate_ft_per_hour.toFixed(3))} ·{" "}
                {signed(one.now.opened)} · {moment(one.now.at, now.value)}
              </span>
            ) : (
              words.pinsNone(one.pins)
            )}
          </li>
        ))}
        {card.seen.slice(-4).map((one) => (
          <li key={`${one.at}${one.what.what}`}>
            {words.seenLine(
              one.what.what === "slough" ? words.cameDown : words.seenAt[one.what.what],
              one.by,
              moment(one.at, now.value),
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** Its daylight against every line and footing, before it is dug; how it stands where its crest was read. */
export function DaylightFacts({ card }: { card: FaceCard }) {
  const words = t().cuts;
  const found = card.daylight;
  return (
    <>
      {found && (
        <>
          <p>
            <strong>{words.daylight}</strong> {pieceWords(found.pieces)}
            {found.designed && ` · ${words.designed}`}
          </p>
          {found.engineer && <p class="trouble">{words.highEngineer}</p>}
          {found.missing > 0 && <p class="trouble">{words.missing(found.missing)}</p>}
          <ul class="lines plain">
            {found.lines.map((line) => (
              <li key={line.line}>
                {line.over.length > 0 ? (
                  <span class="trouble">
                    <strong>{words.lineOver(line.line, feet(Math.max(0, -line.least)))}</strong>{" "}
                    {line.over.map((part) => words.overAt(feet(part.from, 0), feet(part.to, 0))).join(", ")}
                  </span>
                ) : (
                  words.lineIn(line.line, feet(line.least))
                )}
              </li>
            ))}
            {found.structures.map((one) => (
              <li key={one.structure}>
                {words.structure(one.structure, feet(one.room))}
                {one.below != null && <strong class="trouble"> {words.influence(feet(one.below))}</strong>}
              </li>
            ))}
          </ul>
        </>
      )}
      {card.benches.length > 0 && (
        <p>
          {words.benches(
            card.benches.map((one) => feet(one.rise)).join(" + "),
            card.benches.map((one) => feet(one.tread)).join(", "),
          )}
        </p>
      )}
      {card.ladders != null && <p>{words.ladders(card.ladders.many, feet(card.ladders.travel, 0))}</p>}
      <ul class="lines plain">
        {card.crests.map((one) => (
          <li key={one.mark}>
            {words.crest(one.mark, run(one.run_per_rise), one.degrees.toFixed(0))}:{" "}
            {one.back > 0
              ? words.crestBack(feet(one.back), one.hanging_per_foot.toFixed(2))
              : words.crestFlat}
          </li>
        ))}
      </ul>
    </>
  );
}
