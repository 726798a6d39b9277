/** What only a supervisor decides, each with its reason for the log: lift a stop, rule, take a changed site file. */
import type { ComponentChildren } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { own, say } from "../../hub";
import { Choice } from "../../parts/choice";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { said } from "../../said";
import { notice } from "../../state";
import type { Command, Ruling, Supervisor } from "../../wire";
import { Differences } from "./differences";
import { t } from "./words";

interface WhyProps {
  title: string;
  ask: string;
  act: string;
  /** What is said with the reason; nothing while something else is missing. */
  command: (why: string) => Command | null;
  /** The hub has refused it and has said why. */
  onRefused?: () => void;
  onClose: () => void;
  children?: ComponentChildren;
}

/** A decision with its reason; refused, it stands there still with what was typed. */
export function WhyPanel({ title, ask, act, command, onRefused, onClose, children }: WhyProps) {
  const [why, setWhy] = useState("");
  const [sending, setSending] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const open = useRef(true);
  useEffect(
    () => () => {
      open.current = false;
    },
    [],
  );
  const said = why.trim() && !sending ? command(why.trim()) : null;
  const send = async (words: Command) => {
    setSending(true);
    const reply = await say(words, true);
    const text = reply.kind === "refused" ? own(reply.refused) : null;
    if (!open.current) {
      notice.value = text ?? notice.value;
      return;
    }
    setSending(false);
    setRefused(text);
    if (text === null) onClose();
    else onRefused?.();
  };
  return (
    <Panel title={title} onClose={onClose} closeWord={sending ? t().close : t().cancel}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          if (said) void send(said);
        }}
      >
        {children}
        <label class="field">
          <span>{ask}</span>
          <input value={why} onInput={(event) => setWhy(event.currentTarget.value)} />
        </label>
        {refused && (
          <p class="trouble" role="alert">
            {refused}
          </p>
        )}
        <Key
          kind="send"
          submit
          disabled={!said}
          why={sending ? t().kept.owed.wait : t().kept.owed.words}
          onPress={() => undefined}
        >
          {act}
        </Key>
      </form>
    </Panel>
  );
}

interface LiftProps {
  machine: string;
  /** Every machine that stands still. */
  stopped: string[];
  /** The newest press of STOP that the page shows. */
  press: number;
  onClose: () => void;
}

/** This machine, unless every one is chosen. */
export function LiftPanel({ machine, stopped, press, onClose }: LiftProps) {
  const words = t();
  // Who presses STOP while the words are typed is not lifted with them.
  const [seen] = useState(press);
  const [all, setAll] = useState(false);
  const which = all ? {} : { machine };
  return (
    <WhyPanel
      title={`${words.lift}: ${machine}`}
      ask={words.liftWhy}
      act={words.lift}
      command={(why) => ({ kind: "lift_stop", ...which, press: seen, why })}
      onClose={onClose}
    >
      {stopped.length > 1 && (
        <Choice
          title={words.lift}
          options={[
            { id: "one", name: words.liftOne(machine) },
            { id: "all", name: words.liftAll(stopped.join(", ")) },
          ]}
          chosen={all ? "all" : "one"}
          onChoose={(id: "one" | "all") => setAll(id === "all")}
        />
      )}
    </WhyPanel>
  );
}

const RULINGS: readonly Ruling[] = ["leave", "patch", "trim"];

export function RulePanel({ mark, onClose }: { mark: string; onClose: () => void }) {
  const words = t();
  const [ruling, setRuling] = useState<Ruling | null>(null);
  return (
    <WhyPanel
      title={`${words.rule}: ${mark}`}
      ask={words.why}
      act={words.rule}
      command={(why) => (ruling ? { kind: "rule", mark, ruling, why } : null)}
      onClose={onClose}
    >
      <Choice
        title={words.rule}
        options={RULINGS.map((id) => ({ id, name: words.rulings[id] }))}
        chosen={ruling}
        onChoose={setRuling}
      />
    </WhyPanel>
  );
}

interface DifferenceProps {
  change: NonNullable<Supervisor["site_change"]>;
  onClose: () => void;
}

/** What differs, thing by thing; nothing is in force before it is confirmed here. */
export function DifferencePanel({ change, onClose }: DifferenceProps) {
  const words = t();
  return (
    <Panel title={words.exception.site_changed} onClose={onClose} closeWord={words.cancel}>
      <p>{words.siteChange}</p>
      {change.odd.length > 0 && (
        <>
          <h3>{words.oddInPlan}</h3>
          <ul>
            {change.odd.map((one) => (
              <li key={one.path + one.english}>{said(one)}</li>
            ))}
          </ul>
        </>
      )}
      <Differences differences={change.differences} touches={change.touches} undoes={change.undoes} />
      <Key
        kind="send"
        onPress={() => {
          void say({ kind: "confirm_site", digest: change.digest });
          onClose();
        }}
      >
        {words.confirmChange}
      </Key>
    </Panel>
  );
}
