/** The hash of an entry, worked out beside one that the hub wrote. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { hashOf, keptIn } from "./proof";

const GOLDEN = join(import.meta.dirname, "../../../../../fixtures/golden");

/** Lines of a log that a hub of long ago wrote; the photos behind them are no part of the chain. */
function golden(): string[] {
  const logs = readdirSync(GOLDEN, { recursive: true, encoding: "utf8" }).filter((name) =>
    name.endsWith(".jsonl"),
  );
  const lines = readFileSync(join(GOLDEN, logs[0] ?? ""), "utf8")
    .trimEnd()
    .split("\n");
  return lines.filter((text) => !text.startsWith('{"photo":'));
}

/** An entry as the hub gives it out. */
function answer(written: string): string {
  const match = /^(\{.*),"prev":"(\w{64})","hash":"(\w{64})"\}\s*$/s.exec(written);
  return `{"entry":${match?.[1]}},"prev":"${match?.[2]}","hash":"${match?.[3]}"}`;
}

test("every line of a log gives the hash that the hub wrote, and follows the one before", () => {
  let before: string | null = null;
  const lines = golden();
  expect(lines.length).toBeGreaterThan(10);
  for (const written of lines) {
    const kept = keptIn(answer(written));
    if (!kept) throw new Error(`not taken apart: ${written}`);
    expect(hashOf(kept)).toBe(kept.hash);
    if (before !== null) expect(kept.prev).toBe(before);
    before = kept.hash;
  }
});

test("one letter changed gives another hash", () => {
  const kept = keptIn(answer(golden()[3] ?? ""));
  if (!kept) throw new Error("not taken apart");
  const text = kept.text.replace(/"person":"./, '"person":"#');
  expect(text).not.toBe(kept.text);
  expect(hashOf({ ...kept, text })).not.toBe(kept.hash);
});

test("what is no entry is none", () => {
  for (const text of ["", "{}", '{"english":"There is no entry 9."}']) expect(keptIn(text)).toBeNull();
});
