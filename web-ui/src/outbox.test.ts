/** What was said is kept until the hub has answered for its key. */
import "fake-indexeddb/auto";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { newKey, notSent, Outbox, type Reply, waiting } from "./outbox";
import type { Asked } from "./wire";

const done: Reply = { kind: "answer", answer: { first: 1, last: 1, outcome: { kind: "done" } } };

/** A hub that answers as told, and remembers what it was asked. */
function fakeHub() {
  const heard: Asked[] = [];
  const hub = {
    up: true,
    heard,
    send: async (asked: Asked): Promise<Reply> => {
      heard.push(asked);
      if (!hub.up) throw new TypeError("no network");
      return done;
    },
  };
  return hub;
}

beforeEach(() => {
  waiting.value = [];
});

describe("the outbox", () => {
  it("sends at once and forgets what was answered", async () => {
    const hub = fakeHub();
    const box = new Outbox(
      hub.send,
      () => "g1",
      () => 1_000,
    );
    expect((await box.say({ kind: "check_me" })).kind).toBe("answer");
    expect(waiting.value).toEqual([]);
    expect(hub.heard[0]?.made_at).toBe(1_000);
  });

  it("says NOT SENT, keeps the key and the time, and sends again by itself", async () => {
    const hub = fakeHub();
    hub.up = false;
    let time = 5_000;
    const box = new Outbox(
      hub.send,
      () => "g1",
      () => time,
    );
    const said = box.say({ kind: "check_me" });
    await vi.waitFor(() => expect(notSent.value.length).toBe(1));
    time = 90_000;
    hub.up = true;
    box.hurry();
    expect((await said).kind).toBe("answer");
    expect(new Set(hub.heard.map((asked) => asked.key)).size).toBe(1);
    expect(new Set(hub.heard.map((asked) => asked.made_at))).toEqual(new Set([5_000]));
  });

  it("outlives a reload, in the order in which things were said", async () => {
    const down = fakeHub();
    down.up = false;
    const before = new Outbox(
      down.send,
      () => "g1",
      () => 1,
    );
    void before.say({ kind: "quick_call", word: "more" });
    void before.say({ kind: "withdraw_call", call: 7 });
    await vi.waitFor(() => expect(notSent.value.length).toBeGreaterThan(0));
    waiting.value = [];
    const up = fakeHub();
    const after = new Outbox(
      up.send,
      () => "g1",
      () => 2,
    );
    await vi.waitFor(async () => {
      await after.load();
      expect(up.heard.map((asked) => asked.command.kind)).toEqual(["quick_call", "withdraw_call"]);
    });
  });

  it("never sends one device's words in another's name", async () => {
    const down = fakeHub();
    down.up = false;
    const first = new Outbox(
      down.send,
      () => "old",
      () => 1,
    );
    void first.say({ kind: "check_me" });
    await vi.waitFor(() => expect(notSent.value.length).toBe(1));
    waiting.value = [];
    const up = fakeHub();
    const second = new Outbox(
      up.send,
      () => "new",
      () => 2,
    );
    expect(await second.load()).toBeGreaterThan(0);
    expect(up.heard).toEqual([]);
  });

  it("lets a stop pass everything that waits", async () => {
    const heard: string[] = [];
    const box = new Outbox(
      async (asked) => {
        heard.push(asked.command.kind);
        if (asked.command.kind !== "stop_all") return { kind: "again" };
        return done;
      },
      () => "g1",
      () => 1,
    );
    void box.say({ kind: "check_me" });
    await vi.waitFor(() => expect(notSent.value.length).toBe(1));
    expect((await box.say({ kind: "stop_all", why: "" })).kind).toBe("answer");
    expect(heard).toContain("stop_all");
    expect(waiting.value.map((item) => item.command.kind)).toEqual(["check_me"]);
  });

  it("makes keys that do not repeat", () => {
    const keys = new Set(Array.from({ length: 500 }, newKey));
    expect(keys.size).toBe(500);
    expect([...keys].every((key) => key.length >= 8 && key.length <= 64)).toBe(true);
  });
});
