/** A page that is loaded while no hub answers: STAY OUT, and who was in when this phone last knew. */
import { lastSeen } from "../../last_seen";
import { notSent } from "../../outbox";
import { StopKey } from "../../parts/keys";
import { timeOfDay } from "../../show";
import { t } from "../../words";

export function NoHubPage() {
  const words = t().kept;
  const last = lastSeen();
  const cab = last?.me.roles.includes("operator") ?? false;
  const mine = last?.inside.filter((one) => one.device === last.me.device) ?? [];
  const others = last?.inside.filter((one) => one.device !== last.me.device) ?? [];
  return (
    <div class="frame join no-hub">
      <main class="body" aria-live="assertive">
        <h1>{words.noHub}</h1>
        <p class="state">{cab ? words.watchGround : words.stayOut}</p>
        {notSent.value.length > 0 && <p class="warning">{t().notSentCount(notSent.value.length)}</p>}
        {mine.map((one) => (
          <p class="warning" key={one.machine}>
            {words.youWereIn(one.machine)}
          </p>
        ))}
        {last && (
          <section class="facts-box">
            <p>{words.lastKnown(timeOfDay(last.at))}</p>
            {others.map((one) => (
              <p key={`${one.machine} ${one.device}`}>
                <strong>{cab ? t().wayIn.wasIn(one.person) : words.wasIn(one.person, one.machine)}</strong>
              </p>
            ))}
            {last.inside.length === 0 && <p>{words.nobodyKnown}</p>}
            {last.stopped.map((machine) => (
              <p key={machine}>{words.wasStopped(machine)}</p>
            ))}
          </section>
        )}
        <p class="keep-out">{t().caution}</p>
        <p class="quiet">{words.asking}</p>
      </main>
      <nav class="row">
        <StopKey />
      </nav>
    </div>
  );
}
