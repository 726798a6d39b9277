/** What was said is kept until the hub has answered for its key, or a person has said what becomes of it. */
import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { beforeEach, describe, expect, it, vi } from "vitest";
import { fakeHub, JM, no, RT, read, reading } from "./outbox_given";

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
    const marks = () => phone.left.value.map((item) => [read(item.command).mark, item.made_at, item.person]);
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
    await vi.waitFor(() => expect(phone.left.value.map((item) => read(item.command).text)).toEqual(["4.70"]));
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
    expect(
      phone.left.value.map((item) => [
        item.command.kind === "lift_stop" ? item.command.why : "",
        item.refused?.english,
      ]),
    ).toEqual([["RT is out of the cut", "Too late."]]);
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
