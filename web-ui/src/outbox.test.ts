/** What was said is kept until the hub has answered for its key, or a person has said what becomes of it. */
import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { beforeEach, describe, expect, it, vi } from "vitest";
import type { Reply } from "./outbox";
import type { Asked, Command } from "./wire";

const done: Reply = { kind: "answer", answer: { first: 1, last: 1, outcome: { kind: "done" } } };
const called: Reply = {
  kind: "answer",
  answer: {
    first: 7,
    last: 8,
    outcome: {
      kind: "called",
      call: 8,
      machine: "EX-1",
      english: "DOWN 3",
      spanish: "BAJE 3",
      verdict: "high",
    },
  },
};
const no: Reply = { kind: "refused", refused: { kind: "stop", english: "Too late.", spanish: "Muy tarde." } };
const reading: Command = {
  kind: "take_reading",
  mark: "P-1",
  set_up: "S1",
  rod: "A",
  text: "4.70",
  mode: "rod",
};

/** A hub that answers as told, and remembers what it was asked. */
function fakeHub() {
  const heard: Asked[] = [];
  const hub = {
    up: true,
    answer: done,
    heard,
    kinds: () => heard.map((asked) => asked.command.kind),
    send: async (asked: Asked): Promise<Reply> => {
      heard.push(asked);
      if (!hub.up) throw new TypeError("no network");
      return hub.answer;
    },
  };
  return hub;
}

const RT = { device: "g1", person: "RT" };
const JM = { device: "g2", person: "JM" };

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

describe("the outbox", () => {
  it("sends at once and forgets what was answered", async () => {
    const hub = fakeHub();
    expect((await boxOf(hub).say({ kind: "check_me" })).kind).toBe("answer");
    expect(phone.waiting.value).toEqual([]);
    expect(hub.heard[0]?.made_at).toBe(1_000);
  });

  it("says NOT SENT, keeps the key and the time, and sends again by itself", async () => {
    const hub = fakeHub();
    hub.up = false;
    let time = 5_000;
    const box = boxOf(hub, RT, () => time);
    const said = box.say({ kind: "check_me" });
    await vi.waitFor(() => expect(phone.notSent.value.length).toBe(1));
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
    const before = boxOf(down);
    void before.say({ kind: "add_note", words: "gate locked" });
    void before.say({ kind: "withdraw_call", call: 7 });
    await vi.waitFor(() => expect(phone.notSent.value.length).toBeGreaterThan(0));
    phone.waiting.value = [];
    const up = fakeHub();
    const after = boxOf(up);
    await vi.waitFor(async () => {
      await after.load();
      expect(up.kinds()).toEqual(["add_note", "withdraw_call"]);
    });
  });

  it("makes keys that do not repeat", () => {
    const keys = new Set(Array.from({ length: 500 }, phone.newKey));
    expect(keys.size).toBe(500);
    expect([...keys].every((key) => key.length >= 8 && key.length <= 64)).toBe(true);
  });
});

describe("a phone that the hub does not know any more", () => {
  it("loses nothing: three offline readings are left with their time and their person, over a reload", async () => {
    const hub = fakeHub();
    hub.answer = { kind: "unknown_phone" };
    let told = 0;
    const box = boxOf(
      hub,
      RT,
      () => 9_000,
      () => told++,
    );
    await Promise.all(["P-1", "P-2", "P-3"].map((mark) => box.say({ ...reading, mark })));
    expect(phone.waiting.value).toEqual([]);
    expect(told).toBeGreaterThan(0);
    const marks = () => phone.left.value.map((item) => [item.command.mark, item.made_at, item.person]);
    const all = ["P-1", "P-2", "P-3"].map((mark) => [mark, 9_000, "RT"]);
    expect(marks()).toEqual(all);
    phone.left.value = [];
    await boxOf(fakeHub(), JM).load();
    expect(marks()).toEqual(all);
  });

  it("never sends one device's words in another's name, and never drops them", async () => {
    const down = fakeHub();
    down.up = false;
    void boxOf(down).say(reading);
    await vi.waitFor(() => expect(phone.notSent.value.length).toBe(1));
    phone.waiting.value = [];
    const up = fakeHub();
    await boxOf(up, JM).load();
    await vi.waitFor(() => expect(phone.left.value.map((item) => item.command.text)).toEqual(["4.70"]));
    expect(up.heard).toEqual([]);
  });

  it("leaves what waits in memory when another person comes in on the same page", async () => {
    const hub = fakeHub();
    hub.up = false;
    let owner = RT;
    const box = new phone.Outbox(
      hub.send,
      () => owner,
      () => 1,
    );
    const said = box.say({ kind: "add_note", words: "wet" });
    await vi.waitFor(() => expect(phone.notSent.value.length).toBe(1));
    owner = JM;
    hub.up = true;
    const before = hub.heard.length;
    box.hurry();
    expect((await said).kind).toBe("unknown_phone");
    expect(phone.left.value.map((item) => item.person)).toEqual(["RT"]);
    expect(hub.heard.length).toBe(before);
  });

  it("lets the next person send a reading as from paper, once, under its own time and reader", async () => {
    const gone = fakeHub();
    gone.answer = { kind: "unknown_phone" };
    await boxOf(gone, RT, () => 9_000).say(reading);
    const item = phone.left.value[0];
    if (!item) throw new Error("nothing is left");
    const hub = fakeHub();
    hub.up = false;
    const box = boxOf(hub, JM, () => 60_000);
    box.resay(item, { ...reading, paper: "RT" });
    await vi.waitFor(() => expect(phone.notSent.value.length).toBe(1));
    expect(phone.held.value).toEqual([]);
    hub.up = true;
    box.hurry();
    await vi.waitFor(() => expect(phone.waiting.value).toEqual([]));
    expect(phone.left.value).toEqual([]);
    expect(hub.heard.at(-1)).toEqual({ key: item.key, made_at: 9_000, command: { ...reading, paper: "RT" } });
    await box.load();
    expect([...phone.left.value, ...phone.waiting.value]).toEqual([]);
  });

  it("leaves it again, with the reason, when the hub refuses it or asks about it", async () => {
    const gone = fakeHub();
    gone.answer = { kind: "unknown_phone" };
    await boxOf(gone).say(reading);
    const hub = fakeHub();
    const box = boxOf(hub, JM);
    hub.answer = no;
    const again = () => phone.left.value[0] ?? Promise.reject(new Error("nothing is left"));
    box.resay(await again(), { ...reading, paper: "RT" });
    await vi.waitFor(() => expect(phone.left.value[0]?.refused?.english).toBe("Too late."));
    hub.answer = {
      kind: "answer",
      answer: {
        first: 3,
        last: 3,
        outcome: { kind: "asked", reading: 3, question: { kind: "far_from_grade", dev: 1 }, dev: 1 },
      },
    };
    const first = (await again()).key;
    box.resay(await again(), { ...reading, paper: "RT" });
    await vi.waitFor(() => expect(phone.left.value[0]?.asked?.reading).toBe(3));
    expect(phone.left.value[0]?.key).not.toBe(first);
  });

  it("keeps what was refused after it had waited, with what was typed", async () => {
    const hub = fakeHub();
    hub.up = false;
    const box = boxOf(hub);
    const said = box.say({ kind: "lift_stop", why: "RT is out of the cut" });
    await vi.waitFor(() => expect(phone.notSent.value.length).toBe(1));
    hub.up = true;
    hub.answer = no;
    box.hurry();
    expect((await said).kind).toBe("refused");
    expect(phone.left.value.map((item) => [item.command.why, item.refused?.english])).toEqual([
      ["RT is out of the cut", "Too late."],
    ]);
  });
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
  async function waits(command = reading) {
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
      [key, { kind: "drop_unsent", what: "take_reading", words: "P-1 S1 A 4.70 rod" }],
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
    expect(phone.held.value.map((item) => item.command.text)).toEqual(["4.70"]);
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
    expect(hub.heard[0]?.command.waited).toBe(undefined);
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

describe("a phone whose database never opens", () => {
  it("sends all the same, says NOT SENT when nothing answers, and says that it keeps nothing", async () => {
    const real = indexedDB.open;
    indexedDB.open = () => ({ addEventListener: () => undefined }) as unknown as IDBOpenDBRequest;
    vi.useFakeTimers();
    try {
      const hub = fakeHub();
      hub.up = false;
      const box = boxOf(hub);
      const said = box.say({ kind: "go_in", machine: "EX-1", visit: "v" });
      await vi.advanceTimersByTimeAsync(2_100);
      expect(phone.onlyInMemory.value).toBe(true);
      expect(phone.notSent.value.length).toBe(1);
      hub.up = true;
      box.hurry();
      expect((await said).kind).toBe("answer");
    } finally {
      vi.useRealTimers();
      indexedDB.open = real;
      phone.onlyInMemory.value = false;
    }
  });
});
