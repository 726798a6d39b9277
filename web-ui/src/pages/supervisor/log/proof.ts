/** Whether an entry's text gives its own hash, worked out on this page: SHA-256 over all that stands before `,"hash":`, and `}`. */
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";

/** What stands before the first entry. */
export const GENESIS = "0".repeat(64);

export interface Kept {
  /** The entry's text, byte for byte as the hub gave it. */
  text: string;
  prev: string;
  hash: string;
}

const ANSWER = /^\{"entry":(\{.*\}),"prev":"([0-9a-f]{64})","hash":"([0-9a-f]{64})"\}$/s;

/** Takes the hub's answer apart without writing its JSON anew: written anew it might be other bytes. Null when it is no entry. */
export function keptIn(answer: string): Kept | null {
  const match = ANSWER.exec(answer.trim());
  return match ? { text: match[1] ?? "", prev: match[2] ?? "", hash: match[3] ?? "" } : null;
}

/** The hash that the text gives. */
export function hashOf({ text, prev }: Pick<Kept, "text" | "prev">): string {
  return bytesToHex(sha256(utf8ToBytes(`${text.slice(0, -1)},"prev":"${prev}"}`)));
}
