/** What could not be sent is shown by hand: which mark, which way, how much, and with which of the signals that were agreed. */
import type { Way } from "../../grade";
import { notSent } from "../../outbox";
import { standing } from "../../parts/urgent";
import { ground } from "../../state";
import type { HandSignal, TakeReading } from "../../wire";
import { t } from "../../words";
import { machine, mark } from "./at";
import { type Echo, echo, keptWhy } from "./echo";
import { Line, Unbroken } from "./large";

/** The signals of each way to go, the way itself first; what the supervisor rules on has none. */
const SIGNALS: Record<Way, readonly HandSignal[]> = {
  down: ["lower", "so_much"],
  shave: ["lower", "so_much"],
  up: ["raise", "so_much"],
  grade: ["grade"],
  wait: ["stop"],
  ruling: [],
};

/** What the small letters before the call take of its own. */
const SMALL = 0.6;
/** So many large letters go on the smallest phone's line. */
const ONE_LINE = 10;

/** What each reading of this phone would have told the cab, as it stood when SEND was pressed. */
const echoes = new WeakMap<object, Echo>();

/** Remembers what the page said of this reading. What stands elsewhere than on the mark under the rod has no echo. */
export function remembersEcho(command: TakeReading): void {
  if (command.place || command.surface || command.rocked?.length) return;
  const over = command.mode === "receiver_high" ? 1 : command.mode === "receiver_low" ? -1 : null;
  echoes.set(command, echo(command.text, over, command.restates ?? null));
}

/** In the place of the state of a reading that was not sent: the mark and what to show stand largest. */
export function ByHand({ command }: { command: TakeReading }) {
  const words = t().byHand;
  const said = echoes.get(command);
  const at = command.mark ?? "";
  // What has come meanwhile counts: nobody shows a number under a stop, or to ground that is held.
  const kept = said?.kept ?? (mark.value?.id === at ? keptWhy() : null);
  const stopped = standing() ?? machine.value?.stop;
  const shows = said?.call && said.way && said.way !== "ruling" && !kept ? said.way : null;
  return (
    <div class="by-hand" role="alert">
      <HandLine
        at={shows ? words.show(at) : `${at} ${command.text}`}
        call={shows ? said?.call : words.nothing}
      />
      {stopped ? (
        <p class="trouble">{words.stopped}</p>
      ) : (
        shows && <p class="signals">{signalWords(shows)}</p>
      )}
      {kept && <p>{kept}</p>}
      <p class="sent-line">{t().states.not_sent}</p>
    </div>
  );
}

function HandLine({ at, call = "" }: { at: string; call: string | undefined }) {
  return (
    <Line kind="hand-line" letters={call.length + Math.ceil(at.length * SMALL)}>
      <small>
        <Unbroken of={at} />
      </small>{" "}
      <span class={call.length > ONE_LINE ? "" : "unbroken"}>
        <Unbroken of={call} />
      </span>
    </Line>
  );
}

function signalWords(way: Way): string {
  const words = t();
  const agreed = ground.value?.start.checks.find((one) => one.check === "hand_signals")?.said;
  const [which, ...more] = SIGNALS[way].map((one) => (agreed?.signals.includes(one) ? one : null));
  // How much, without which way, is worse than nothing.
  if (!agreed || !which) return words.byHand.notAgreed;
  const of = [which, ...more].filter((one) => one != null);
  const named = of.map((one) => words.crew.start.signals[one]).join(" + ");
  return agreed.value ? words.byHand.agreed(named, agreed.value) : words.byHand.signal(named);
}

/** Over the keypad: what of earlier marks was not sent either, newest first. Two lines at most, or the keypad would go. */
export function NotSentBefore() {
  const words = t().byHand;
  const lines = notSent.value.flatMap(({ command }) => {
    const said = echoes.get(command);
    if (command.kind !== "take_reading" || !said?.call) return [];
    return [`${words.show(command.mark ?? "")} ${said.call}`];
  });
  return (
    <>
      {lines
        .slice(-2)
        .reverse()
        .map((line) => (
          <p class="keep-out" key={line}>
            <Unbroken of={line} /> · {t().states.not_sent}
          </p>
        ))}
    </>
  );
}
