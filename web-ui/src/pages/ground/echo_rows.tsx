/** The echo, in two rows of the whole width: how the ground stands, and what the cab would be told. */
import { lastWords } from "../../parts/last";
import { ground, linked } from "../../state";
import { t } from "../../words";
import { machine, mark } from "./at";
import type { Echo } from "./echo";
import { Line, Unbroken } from "./large";

export function EchoRows({ said, typed }: { said: Echo; typed: boolean }) {
  if (!typed) return <Before said={said} />;
  return (
    <div class="echo" role="status">
      {said.problem ? (
        <p class="echo-why">{said.problem}</p>
      ) : (
        <>
          {said.ground && (
            <Line kind="echo-ground" letters={said.ground.length}>
              <Unbroken of={said.ground} />
            </Line>
          )}
          {said.kept ? <p class="echo-why trouble">{said.kept}</p> : <CallRow call={said.call} />}
        </>
      )}
    </div>
  );
}

/** Before a key is pressed: how it stood when it was last read, or that nothing but a spot can come of it. */
function Before({ said }: { said: Echo }) {
  const last = ground.value?.marks.find((one) => one.id === mark.value?.id);
  return (
    <div class="echo" role="status">
      {said.kept ? (
        <>
          {/* Where the elevation will stand. */}
          <p class="fits echo-ground" style="--letters:8">
            {"\u00a0"}
          </p>
          <p class="echo-why trouble">{said.kept}</p>
        </>
      ) : (
        <p class="echo-why">{lastWords(last)}</p>
      )}
    </div>
  );
}

/** What the small letters before the call take of its own. */
const SMALL = 0.6;

function CallRow({ call }: { call: string }) {
  const words = t();
  if (!call) return null;
  const to = linked.value ? `→ ${words.told(machine.value?.id ?? "?", "")}` : words.byHand.noLink;
  return (
    <Line kind="echo-call" letters={call.length + Math.ceil(to.length * SMALL)}>
      <small>
        <Unbroken of={to} />
      </small>{" "}
      <strong>
        <Unbroken of={call} />
      </strong>
    </Line>
  );
}
