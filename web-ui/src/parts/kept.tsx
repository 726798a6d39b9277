/** What was said on this phone and not taken: a STOP that nobody has, a reading that waits for SEND or DROP, what was left. */
import { useEffect, useState } from "preact/hooks";
import { dropHeld, forgetStops, sendHeld } from "../kept";
import { held, left, stopNotTaken } from "../outbox";
import { ago } from "../show";
import { play } from "../sound";
import { linked, now, stopsStanding } from "../state";
import { wordsOf } from "../typed";
import type { Command } from "../wire";
import { t } from "../words";
import { Key } from "./keys";
import { LatePanel } from "./late_panel";

/** Over every page and panel while a STOP of this phone is not taken: whoever pressed it believes that machines stand still. */
export function StopNotTaken() {
  const not = stopNotTaken.value;
  const standing = stopsStanding.value;
  const tells = not !== null && !(not === "waits" && standing);
  useEffect(() => {
    if (!tells) return;
    play("stop", 1, 1);
    navigator.vibrate?.([400, 200, 400, 200, 400]);
  }, [tells]);
  if (!tells) return null;
  const words = t().kept;
  return (
    <div class="stop-not-taken" role="alert">
      <strong>{not === "nobody" ? words.stopNobody : words.stopWaits}</strong>
      {not === "nobody" && (
        <>
          <p>{words.stopNobodyWhy}</p>
          <Key kind="small" onPress={forgetStops}>
            {words.stopSeen}
          </Key>
        </>
      )}
    </div>
  );
}

/** Words that would become a call and could not go at once: their person may have used hands meanwhile. */
export function HeldWords() {
  const words = t();
  if (!linked.value) return null;
  return (
    <>
      {held.value.map((item) => (
        <div class="held-words" role="alert" key={item.key}>
          <p>{words.kept.ask(heldLine(item.command), ago(now.value - item.made_at))}</p>
          <div class="pair">
            <Key onPress={() => sendHeld(item.key)}>{words.send}</Key>
            <Key onPress={() => void dropHeld(item.key)}>{words.kept.drop}</Key>
          </div>
        </div>
      ))}
    </>
  );
}

function heldLine(command: Command): string {
  const words = t();
  if (command.kind === "quick_call") return `${command.machine} ${words.quick[command.word]}`;
  if (command.kind === "read_edge") return `${command.line ?? ""} ${command.text}`;
  if (command.kind !== "take_reading") return wordsOf(command);
  const way =
    command.mode === "receiver_high" ? words.high : command.mode === "receiver_low" ? words.low : "";
  return [command.mark, way, command.text].filter(Boolean).join(" ");
}

/** What an earlier person of this phone said, or the hub refused after it had waited: kept until somebody says what becomes of it. */
export function LeftWords() {
  const [open, setOpen] = useState(false);
  const many = left.value.length;
  if (many === 0) return null;
  return (
    <>
      <Key kind="wide left-words" onPress={() => setOpen(true)}>
        {t().kept.left(many)}
      </Key>
      {open && (
        <LatePanel title={t().kept.left(many)} onClose={() => setOpen(false)}>
          {(late) => <late.LeftPanel onClose={() => setOpen(false)} />}
        </LatePanel>
      )}
    </>
  );
}
