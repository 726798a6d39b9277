/** Water that stands, as it was said, and the key that says that it was pumped out. */
import { say } from "../hub";
import { moment } from "../show";
import { now } from "../state";
import type { WaterNow } from "../wire";
import { t } from "../words_later";
import { Key } from "./keys";

function place(at: WaterNow["at"]): string {
  if (at.kind === "face") return at.zone;
  return at.kind === "mark" ? at.mark : at.machine;
}

/** Each names the water that this page shows: what is said there since is not ended with it. */
export function Waters({ waters }: { waters: readonly WaterNow[] | undefined }) {
  const words = t().cuts;
  return (
    <>
      {waters?.map(({ at, water, since, by }) => (
        <div class="row" key={`${at.kind} ${place(at)}`}>
          <span class="quiet">
            <strong>{place(at)}</strong> {words.seenLine(words.seenAt.water, by, moment(since, now.value))}
          </span>
          <Key
            kind="small"
            label={`${words.pumpedOut} ${place(at)}`}
            onPress={() => void say({ kind: "say_pumped", at, water })}
          >
            {words.pumpedOut}
          </Key>
        </div>
      ))}
    </>
  );
}
