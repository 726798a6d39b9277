/** Who is needed next, and when each bottom is at grade: the same list for ground and supervisor. */
import { timeOfDay } from "../show";
import type { ArrivalCard, VisitCard } from "../wire";
import { t } from "../words_later";

interface NextProps {
  visits: VisitCard[];
  arrivals: ArrivalCard[];
}

export function NextVisits({ visits, arrivals }: NextProps) {
  const words = t().account;
  return (
    <>
      {visits.length === 0 ? (
        <p>{words.nobodyNext}</p>
      ) : (
        <ol class="lines next-visits">
          {visits.map((one) => (
            <li key={one.machine}>
              <strong>
                {one.waits_since != null
                  ? words.waits(one.machine, timeOfDay(one.waits_since))
                  : words.lookBy(one.machine, one.mark ?? "", timeOfDay(one.look ?? 0))}
              </strong>
            </li>
          ))}
        </ol>
      )}
      {arrivals.map((one) => (
        <p key={one.machine}>
          <strong>{one.machine}</strong>{" "}
          {one.held
            ? words.arrivesHeld(one.mark, String(Math.round((one.at - one.from) / 60_000)))
            : words.arrives(
                one.mark,
                timeOfDay(one.at),
                timeOfDay(one.soonest),
                one.latest == null ? words.later : timeOfDay(one.latest),
              )}
          {one.borrowed && <small> {words.borrowed}</small>}
        </p>
      ))}
    </>
  );
}
