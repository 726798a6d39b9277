/** What was said on this phone and is in no log: readings can be sent as from paper, anything can be read and thrown away. */
import { sayLeft, throwAway } from "../../kept";
import { type Left, left } from "../../outbox";
import { HoldKey, Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { said } from "../../said";
import { timeOfDay } from "../../show";
import { language, me } from "../../state";
import { wordsOf } from "../../typed";
import type { TakeReading } from "../../wire";
import { left as leftWords } from "../../words.gen/left";
import { ask } from "../ground/question";

const words = () => leftWords[language.value];

export function LeftPanel({ onClose }: { onClose: () => void }) {
  return (
    <Panel title={words().note} onClose={onClose}>
      {left.value.length === 0 && <p role="status">{words().none}</p>}
      {left.value.map((item) => (
        <LeftCard key={item.key} item={item} />
      ))}
    </Panel>
  );
}

function LeftCard({ item }: { item: Left }) {
  const { command, asked } = item;
  const kinds: Record<string, string> = words().kinds;
  const reads = me.value?.roles.some((role) => role === "ground" || role === "supervisor") ?? false;
  const reading = command.kind === "take_reading" ? command : null;
  const paper = reads ? reading : null;
  return (
    <section class="card" aria-label={`${kinds[command.kind] ?? words().other} ${wordsOf(command)}`}>
      <p>
        <strong>{kinds[command.kind] ?? words().other}</strong> {wordsOf(command)}
      </p>
      <p>{words().by(timeOfDay(item.made_at), item.person || "?")}</p>
      <p class="trouble">{item.refused ? `${words().refused} ${said(item.refused)}` : words().noPhone}</p>
      {paper && <p class="quiet">{words().asPaperNote}</p>}
      {paper && !asked && (
        <Key kind="wide" onPress={() => sayLeft(item, fromPaper(item, paper))}>
          {words().asPaper}
        </Key>
      )}
      {asked && reading && (
        <>
          <p role="alert">{ask(asked.question, reading.text)}</p>
          <Key kind="wide" onPress={() => sayLeft(item, fromPaper(item, reading, asked.reading))}>
            {words().sureAsTyped}
          </Key>
        </>
      )}
      {!paper && <p class="quiet">{words().sayAgain}</p>}
      <HoldKey kind="wide" onPress={() => throwAway(item)}>
        {words().throwAway}
      </HoldKey>
    </section>
  );
}

/** The reading as its person would have booked it: under their name, with no call. */
function fromPaper(item: Left, reading: TakeReading, sure?: number): TakeReading {
  const { waited: _waited, sure: _sure, paper, ...rest } = reading;
  return {
    ...rest,
    paper: paper ?? (item.person || "?"),
    ...(sure === undefined ? {} : { sure }),
  };
}
