/** STOP waits for nothing; a call that waited is asked about before it goes. */
import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { beforeEach, describe, expect, it, vi } from "vitest";
import type { Reply } from "./outbox";
import { called, done, fakeHub, RT, read, reading } from "./outbox_given";
import type { Command } from "./wire";

function boxOf(
  hub: ReturnType<typeof fakeHub>,
  owner = RT,
  time: () => number = () => 1_000,
  unknown?: () => void,
) {
  return new phone.Outbox(hub.send, () => owner, time, unknown);
}

/** Each test has a phone of its own: a page and a database that nothing else writes to. */
let phone: typeof import("./outbox");
beforeEach(async () => {
  globalThis.indexedDB = new IDBFactory();
  vi.resetModules();
  phone = await import("./outbox");
});

describe("STOP", () => {
  it("passes everything that waits", async () => {
    const heard: string[] = [];
    const box = new phone.Outbox(
      async (asked) => {
        heard.push(asked.command.kind);
        return asked.command.kind === "stop_all" ? done : { kind: "again" };
      },
      () => RT,
      () => 1,
    );
    void box.say({ kind: "check_me" });
    await vi.waitFor(() => expect(phone.notSent.value.length).toBe(1));
    expect((await box.say({ kind: "stop_all", why: "" })).kind).toBe("answer");
    expect(heard).toContain("stop_all");
    expect(phone.waiting.value.map((item) => item.command.kind)).toEqual(["check_me"]);
    phone.waiting.value = [];
  });

  it("is sent again past a request that hangs, and is said to be not taken meanwhile", async () => {
    let up = false;
    let stops = 0;
    const box = new phone.Outbox(
      async (asked) => {
        // The line to the hub is frozen: an older request never comes to an end.
        if (asked.command.kind !== "stop_all") return new Promise<Reply>(() => undefined);
        stops++;
        return up ? done : { kind: "again" };
      },
      () => RT,
      () => 1,
    );
    void box.say({ kind: "add_note", words: "first" });
    const said = box.say({ kind: "stop_all", why: "" });
    await vi.waitFor(() => expect(phone.stopNotTaken.value).toBe("waits"));
    up = true;
    expect((await said).kind).toBe("answer");
    expect(stops).toBeGreaterThan(1);
    expect(phone.stopNotTaken.value).toBe(null);
    phone.waiting.value = [];
  });

  it("on a frozen line is said to be not taken before any request has given up", async () => {
    vi.useFakeTimers();
    try {
      const box = new phone.Outbox(
        () => new Promise<Reply>(() => undefined),
        () => RT,
        () => 1,
      );
      void box.say({ kind: "stop_all", why: "" });
      expect(phone.stopNotTaken.value).toBe(null);
      await vi.advanceTimersByTimeAsync(2_000);
      expect(phone.stopNotTaken.value).toBe("waits");
    } finally {
      vi.useRealTimers();
      phone.waiting.value = [];
    }
  });

  it("says that nobody heard when the hub does not know the phone", async () => {
    const hub = fakeHub();
    hub.answer = { kind: "unknown_phone" };
    await boxOf(hub).say({ kind: "stop_all", why: "" });
    expect(phone.stopNotTaken.value).toBe("nobody");
  });
});

describe("a call that could not go at once", () => {
  /** A reading that waits, and the hub that comes back. */
  async function waits(command: Command = reading) {
    const hub = fakeHub();
    hub.up = false;
    const now = { ms: 10_000 };
    const box = boxOf(hub, RT, () => now.ms);
    const said = box.say(command);
    await vi.waitFor(() => expect(phone.held.value.length).toBe(1));
    hub.up = true;
    hub.heard.length = 0;
    box.hurry();
    await box.flush();
    expect(hub.heard).toEqual([]);
    const key = phone.held.value[0]?.key ?? "";
    return { hub, box, said, key, now };
  }

  it("asks SEND or DROP, and what is sent says that it was asked", async () => {
    const { hub, box, said, key } = await waits();
    hub.answer = called;
    box.release(key);
    expect(await said).toEqual(called);
    expect(hub.heard).toEqual([{ key, made_at: 10_000, command: { ...reading, waited: true } }]);
  });

  it("that is dropped goes out as a line for the log, under its own key", async () => {
    const { hub, box, said, key } = await waits();
    expect(await box.drop(key)).toEqual(done);
    expect(await said).toEqual({ kind: "dropped" });
    expect(hub.heard.map((asked) => [asked.key, asked.command])).toEqual([
      [key, { kind: "drop_unsent", what: "take_reading", words: "P-1 SETUP-1 A 4.70 rod" }],
    ]);
  });

  it("that had gone out all the same gives its call back to whoever drops it", async () => {
    const { hub, box, key } = await waits();
    hub.answer = called;
    expect(await box.drop(key)).toEqual(called);
  });

  it("asks after a reload, too", async () => {
    const { hub } = await waits();
    phone.waiting.value = [];
    const after = boxOf(hub);
    await after.load();
    expect(phone.held.value.map((item) => read(item.command).text)).toEqual(["4.70"]);
    expect(hub.heard).toEqual([]);
  });

  it("goes by itself once it is too old for a call: the hub keeps it as late", async () => {
    const { hub, box, said, now } = await waits();
    now.ms += 119_000;
    box.tick();
    expect(hub.heard).toEqual([]);
    now.ms += 2_000;
    box.tick();
    expect((await said).kind).toBe("answer");
    expect(read(hub.heard[0]?.command).waited).toBe(undefined);
  });

  it("by eye is held alike; an edge over its line stops the machine and is not", async () => {
    await waits({ kind: "quick_call", machine: "EX-1", word: "more" });
    phone.waiting.value = [];
    const hub = fakeHub();
    hub.up = false;
    const box = boxOf(hub);
    const over = box.say({ kind: "read_edge", machine: "EX-1", text: "0.2", over: true });
    await vi.waitFor(() => expect(phone.notSent.value.length).toBe(1));
    hub.up = true;
    box.hurry();
    expect((await over).kind).toBe("answer");
  });

  it("does not keep other words waiting behind it", async () => {
    const { hub, box } = await waits();
    expect((await box.say({ kind: "add_note", words: "dry" })).kind).toBe("answer");
    expect(hub.kinds()).toEqual(["add_note"]);
    expect(phone.held.value.length).toBe(1);
  });
});
