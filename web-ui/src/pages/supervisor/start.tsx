/** The start of the day on the supervisor's page: the checks, and READY with all of them or a named reason. */
import { useState } from "preact/hooks";
import { say } from "../../hub";
import { Field } from "../../parts/field";
import { Key } from "../../parts/keys";
import { Panel } from "../../parts/panel";
import { StartChecks, startLine } from "../../parts/start_checks";
import type { StartCard, StartCheck } from "../../wire";
import { t } from "./words";

export function Start({ start }: { start: StartCard }) {
  const words = t().startDay;
  const [asks, setAsks] = useState(false);
  const [shown, setShown] = useState(false);
  return (
    <>
      <p>
        <strong>{startLine(start)}</strong>
      </p>
      {(!start.ready || shown) && <StartChecks start={start} />}
      <Key kind="wide" onPress={() => (start.ready ? setShown(!shown) : setAsks(true))}>
        {!start.ready ? words.ready : shown ? t().close : t().showDifference}
      </Key>
      {asks && <ReadyPanel start={start} onClose={() => setAsks(false)} />}
    </>
  );
}

/** What has no value needs a reason for the log. */
function ReadyPanel({ start, onClose }: { start: StartCard; onClose: () => void }) {
  const words = t();
  const [whys, setWhys] = useState<Partial<Record<StartCheck, string>>>({});
  const left = start.checks.filter((one) => !one.said).map((one) => one.check);
  const reason = (check: StartCheck) => whys[check]?.trim() ?? "";
  const declare = () => {
    void say({ kind: "ready_day", overrides: left.map((check) => ({ check, why: reason(check) })) });
    onClose();
  };
  return (
    <Panel title={words.startDay.ready} onClose={onClose} closeWord={words.cancel}>
      {left.length > 0 && <p>{words.startDay.whyWithout}</p>}
      {left.map((check) => (
        <Field
          key={check}
          name={words.crew.start.checks[check]}
          value={whys[check] ?? ""}
          onValue={(why) => setWhys({ ...whys, [check]: why })}
          text
        />
      ))}
      <Key kind="send" disabled={left.some((check) => !reason(check))} onPress={declare}>
        {words.startDay.ready}
      </Key>
    </Panel>
  );
}
