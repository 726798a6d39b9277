/** WHERE I STAND: at which mark, or that the machine has moved and nobody has said where to. */
import { say } from "../../hub";
import { Choice } from "../../parts/choice";
import { HoldKey } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { ago } from "../../show";
import { now, sheet } from "../../state";
import type { StandCard } from "../../wire";
import { t } from "../../words_later";

interface StandPanelProps {
  machine: string;
  card: StandCard;
  onClose: () => void;
}

export function StandPanel({ machine, card, onClose }: StandPanelProps) {
  const words = t();
  const marks = sheet.value?.marks ?? [];
  const own = marks.filter((mark) => mark.machine === machine);
  const others = marks.filter((mark) => mark.machine !== machine);
  return (
    <Panel title={words.crew.standTitle} onClose={onClose} closeWord={words.cancel}>
      <p>
        {card.since == null
          ? words.placeUnknown
          : words.placeSaid(card.near ?? "", ago(now.value - card.since))}
      </p>
      <p>{words.crew.standWhy}</p>
      <Choice
        title={words.crew.standPick}
        options={[...own, ...others].map(({ id }) => ({ id, name: id }))}
        onChoose={(mark: string) => {
          void say({ kind: "stand_here", at: { kind: "mark", mark } });
          onClose();
        }}
      />
      <HoldKey
        kind="wide"
        onPress={() => {
          void say({ kind: "say_moved", machine });
          onClose();
        }}
      >
        {words.crew.standMoved}
      </HoldKey>
    </Panel>
  );
}
