/** READ's own keys over the echo: rod, EDGE, MORE. In their place, while it is so: I AM OUT, or to come in after all. */
import { Key } from "../../parts/keys";
import { ago, timeOfDay } from "../../show";
import { now } from "../../state";
import { t } from "../../words";
import { AskAfterAll, OutKey, stays, where } from "./ask_in";
import { chosen, keptLines, mark, rod } from "./at";
import { MarkSteps } from "./mark_strip";
import { mayAsk } from "./way_in";

interface ReadKeysProps {
  onWith: () => void;
  onEdge: () => void;
  onMore: () => void;
}

export function ReadKeys({ onWith, onEdge, onMore }: ReadKeysProps) {
  const words = t();
  const { paper, receiver } = chosen.value;
  const inside = stays();
  const outside = paper ? [] : mayAsk(mark.value);
  const own = (
    <>
      {keptLines().length > 0 && !paper && (
        <Key kind="chip" onPress={onEdge}>
          {words.edge}
        </Key>
      )}
      <Key kind={`chip ${paper ? "trouble" : ""}`} onPress={onMore}>
        {paper ? words.fromPaper(timeOfDay(paper.at), paper.by) : words.more}
      </Key>
    </>
  );
  if (inside.length > 0) {
    return (
      <>
        {inside.map((one, i) => (
          <div class="facts in" role="status" key={one.visit.visit}>
            <strong>{words.wayIn.youAreIn(where(one), ago(now.value - one.visit.since))}</strong>
            {i === 0 && own}
            <OutKey one={one} />
          </div>
        ))}
      </>
    );
  }
  if (outside.length > 0) {
    return (
      <div class="facts outside">
        <AskAfterAll mark={mark.value} />
        {own}
      </div>
    );
  }
  return (
    <div class="facts">
      <MarkSteps>
        <Key kind="chip" onPress={onWith}>
          {words.rod} {rod.value?.id ?? words.none}
          {receiver ? ` · ${words.receiver}` : ""}
        </Key>
        {own}
      </MarkSteps>
    </div>
  );
}
