/** This phone witnesses the log: it keeps the newest end of it that it saw, and gives it back when it comes again. */
import * as state from "./state";
import type { ToHub } from "./wire";

/** The newest end of the log that this phone has seen, and under which name it keeps it. */
let seen = { log: "", seq: 0 };

/** What it remembers of a log is given back before anything new is learned. */
export function witness(log: string, say: (saw: Extract<ToHub, { kind: "saw" }>) => void): void {
  const [seq, hash] = (state.remembered(`rodcall.head.${log}`) ?? "").split(" ");
  seen = { log, seq: Number(seq) || 0 };
  if (seen.seq > 0 && hash) say({ kind: "saw", seq: seen.seq, hash });
}

export function learn(seq: number, hash: string): void {
  if (!seen.log || !hash || seq <= seen.seq) return;
  seen.seq = seq;
  state.remember(`rodcall.head.${seen.log}`, `${seq} ${hash}`);
}
