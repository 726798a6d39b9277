/** What becomes of words that waited on this phone or were left on it: SEND, DROP, from paper, thrown away. */
import { outbox, say } from "./hub";
import type { Left } from "./outbox";
import { timeOfDay } from "./show";
import { notice } from "./state";
import { wordsOf } from "./typed";
import type { Command } from "./wire";
import { t } from "./words";

/** What an earlier page left is in sight before any hub has answered; nothing of it is lost by a load without one. */
export async function keptWords(): Promise<void> {
  await outbox.load();
}

/** SEND: what has waited goes out on its person's word. */
export const sendHeld = (key: string) => outbox.release(key);

/** DROP: it does not go out. What had gone out all the same is taken back from the cab. */
export async function dropHeld(key: string): Promise<void> {
  const reply = await outbox.drop(key);
  if (reply.kind !== "answer" || reply.answer.outcome.kind !== "called") return;
  void say({ kind: "withdraw_call", call: reply.answer.outcome.call }, true);
  notice.value = t().kept.wentOut;
}

/** What was left on this phone, said by whoever holds it now. */
export const sayLeft = (item: Left, command: Command) => outbox.resay(item, command);

export const forgetStops = () => outbox.forgetStops();

/** What was left is thrown away, with a line in the log. */
export function throwAway(item: Left): void {
  outbox.forget(item.key);
  const words = [timeOfDay(item.made_at), item.person, wordsOf(item.command)].filter(Boolean).join(" ");
  void outbox.say({ kind: "drop_unsent", what: item.command.kind, words });
}
