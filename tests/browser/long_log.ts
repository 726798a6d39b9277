/** A log of many entries without the hours that they take to be said: lines as the hub writes them, each sealed behind the one before. */
import { createHash } from "node:crypto";
import { appendFileSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** What an entry of the log says: who, and its body. */
export interface Told {
  person: string;
  body: { kind: string } & Record<string, unknown>;
}

const HASH_MEMBER = ',"hash":"';

/** Writes a log on, behind its last entry, one entry a second. The hub that keeps it must be down: it takes them in when it starts. */
export function writesOn(data: string, many: number, told: (index: number) => Told): void {
  const logs = join(data, "log");
  const file = join(logs, readdirSync(logs).sort().at(-1) ?? "");
  const last = readFileSync(file, "utf8").trimEnd().split("\n").at(-1) ?? "";
  const { seq, at, hash } = JSON.parse(last);
  let prev: string = hash;
  // They lie before the last entry, so that none is made ahead of the clock.
  const lines = Array.from({ length: many }, (_, index) => {
    const { person, body } = told(index);
    const by = { device: `d-${person.toLowerCase()}`, person, roles: ["ground"] };
    const entry = { seq: seq + 1 + index, at, made_at: at, by, key: `long-${index}`, body };
    const sealed = `${JSON.stringify(entry).slice(0, -1)},"prev":"${prev}"}`;
    prev = createHash("sha256").update(sealed).digest("hex");
    return `${sealed.slice(0, -1)}${HASH_MEMBER}${prev}"}\n`;
  });
  appendFileSync(file, lines.join(""));
}
