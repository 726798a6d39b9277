/** An entry in words with its proof: the hash worked out on this page, and whether the entry before has the hash that this one follows. */
import { useEffect, useState } from "preact/hooks";
import { log } from "../../../hub";
import { Key } from "../../../parts/keys";
import { said } from "../../../said";
import type { LogEntry, LogLine } from "../../../wire";
import { t } from "../words";
import { entryText } from "./ask";
import { copied } from "./copy";
import { inFull } from "./csv";
import { kindWord } from "./order";
import { GENESIS, hashOf, type Kept, keptIn } from "./proof";
import { logWords } from "./words";

interface EntryProps {
  seq: number;
  /** Its line, when it is among those that have come; else it is asked for. */
  known: LogLine | undefined;
  onReplay: (() => void) | undefined;
}

type Found = { kept: Kept; before: Kept | null } | { trouble: string } | null;

export function Entry({ seq, known, onReplay }: EntryProps) {
  const words = logWords();
  const found = useEntry(seq);
  const line = useLine(seq, known);
  const [told, setTold] = useState("");
  useEffect(() => setTold(""), [seq]);
  if (!found) return <p>{t().loading}</p>;
  if ("trouble" in found) return <p class="warning">{found.trouble}</p>;
  const { kept } = found;
  const { entry } = JSON.parse(`{"entry":${kept.text}}`) as Pick<LogEntry, "entry">;
  const facts = factsOf(entry, line);
  const copy = async () => {
    const text = [
      words.entry(seq),
      line ? said(line) : "",
      ...facts.map(([name, value]) => `${name}: ${value}`),
    ];
    const proof = [`${words.hash}: ${kept.hash}`, `${words.prev}: ${kept.prev}`, kept.text];
    setTold(
      (await copied([...text, ...proof].filter(Boolean).join("\n"))) ? words.copiedEntry : words.notCopied,
    );
  };
  return (
    <div class="log-entry">
      {line && <p class="told-line">{said(line)}</p>}
      <dl>
        {facts.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <div class="row">
        <Key onPress={() => void copy()}>{words.copy}</Key>
        {onReplay && <Key onPress={onReplay}>{words.replay}</Key>}
      </div>
      {told && <p role="status">{told}</p>}
      <Proof seq={seq} kept={kept} before={found.before} />
      <details>
        <summary>{words.kept}</summary>
        <pre>{JSON.stringify(entry, null, 2)}</pre>
      </details>
    </div>
  );
}

function factsOf(entry: LogEntry["entry"], line: LogLine | undefined): [string, string][] {
  const { columns, taken, phone } = logWords();
  const facts: [string, string | null | undefined][] = [
    [columns.made, inFull(entry.made_at)],
    [taken, inFull(entry.at)],
    [columns.by, entry.by.person],
    [phone, entry.by.device],
    [columns.kind, kindWord(entry.body.kind)],
    [columns.machine, line?.machine],
    [columns.mark, line?.mark],
    [columns.verdict, line?.verdict && logWords().verdicts[line.verdict]],
  ];
  return facts.filter((fact): fact is [string, string] => !!fact[1]);
}

function Proof({ seq, kept, before }: { seq: number; kept: Kept; before: Kept | null }) {
  const words = logWords();
  const own = hashOf(kept) === kept.hash;
  const first = seq === 1 && kept.prev === GENESIS;
  const linked = before?.hash === kept.prev;
  return (
    <section>
      <h3>{words.proof}</h3>
      <p>
        {words.hash} <code>{kept.hash}</code>
      </p>
      <p class={own ? "" : "warning"}>{own ? words.proves : words.provesNot}</p>
      <p>
        {words.prev} <code>{kept.prev}</code>
      </p>
      {first ? (
        <p>{words.first}</p>
      ) : before ? (
        <p class={linked ? "" : "warning"}>{linked ? words.linked(seq - 1) : words.linkedNot(seq - 1)}</p>
      ) : (
        <p class="warning">{words.before(seq - 1)}</p>
      )}
    </section>
  );
}

/** The line of an entry that a filter holds back, or that has not come yet. */
function useLine(seq: number, known: LogLine | undefined): LogLine | undefined {
  const [asked, setAsked] = useState<LogLine>();
  useEffect(() => {
    if (known) return;
    void log({ after: seq - 1, limit: 1 }).then((got) => setAsked(got.ok ? got.value.lines[0] : undefined));
  }, [seq, !known]);
  return known ?? (asked?.seq === seq ? asked : undefined);
}

/** The entry and the one before it; an answer that comes after another entry was opened is let go. */
function useEntry(seq: number): Found {
  const [found, setFound] = useState<Found>(null);
  useEffect(() => {
    let over = false;
    setFound(null);
    const look = async () => {
      const [own, before] = await Promise.all([entryText(seq), seq > 1 ? entryText(seq - 1) : null]);
      if (over) return;
      const kept = own.ok ? keptIn(own.value) : null;
      if (!kept) return setFound({ trouble: own.ok ? own.value : own.text });
      setFound({ kept, before: before?.ok ? keptIn(before.value) : null });
    };
    void look();
    return () => {
      over = true;
    };
  }, [seq]);
  return found;
}
