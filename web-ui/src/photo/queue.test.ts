/** Photos on a phone: promised once, brought once, through every way in which the link and the page can fail. */
import "fake-indexeddb/auto";
import { IDBFactory } from "fake-indexeddb";
import { beforeEach, describe, expect, it, vi } from "vitest";
import type { Settled } from "../outbox";
import { type Brought, type Hub, type KeptPhoto, PhotoQueue } from "./queue";

const TAKEN: Settled = { kind: "answer", answer: { first: 1, last: 1, outcome: { kind: "done" } } } as never;
const REFUSED: Settled = { kind: "refused", refused: { kind: "unknown", english: "no", spanish: "no" } };
const photo = (name: string): Pick<KeptPhoto, "photo" | "bytes" | "promise"> => ({
  photo: name,
  bytes: Uint8Array.from([0xff, 0xd8, 1]),
  promise: { kind: "promise_photo", photo: name, sha256: "00", original: "00" },
});

/** A hub that answers what it is told to, and what came to it. */
function hub(person = "RT") {
  const came: string[] = [];
  const state = { brought: { kind: "kept" } as Brought, reply: TAKEN, waits: -1, refused: "", dropped: 0 };
  const told: Hub = {
    say: async (promise) => {
      came.push(`promise ${promise.photo}`);
      return state.reply;
    },
    bring: async (one) => {
      came.push(`bring ${one.photo} ${one.bytes.length}`);
      return state.brought;
    },
    person: () => person,
    waiting: (many) => {
      state.waits = many;
    },
    refused: (text) => {
      state.refused = text;
    },
    dropped: (many) => {
      state.dropped = many;
    },
  };
  return { came, state, told };
}

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

describe("a phone's photos", () => {
  it("are promised, then brought, oldest first", async () => {
    const { came, state, told } = hub();
    const queue = new PhotoQueue(told);
    await queue.keep(photo("a"));
    await queue.keep(photo("b"));
    await vi.waitFor(() => expect(state.waits).toBe(0));
    expect(came.filter((one) => one.startsWith("promise"))).toEqual(["promise a", "promise b"]);
    expect(came.filter((one) => one.startsWith("bring"))).toEqual(["bring a 3", "bring b 3"]);
  });

  it("are all promised at once, though none can be brought", async () => {
    const { came, state, told } = hub();
    state.brought = { kind: "again" };
    const queue = new PhotoQueue(told);
    await queue.keep(photo("a"));
    await queue.keep(photo("b"));
    await vi.waitFor(() => expect(came).toContain("promise b"));
    expect(state.waits).toBe(2);
  });

  it("wait while the hub can't take them, and are not promised twice", async () => {
    const { came, state, told } = hub();
    state.brought = { kind: "again" };
    const queue = new PhotoQueue(told);
    await queue.keep(photo("a"));
    await vi.waitFor(() => expect(came).toEqual(["promise a", "bring a 3"]));
    expect(state.waits).toBe(1);
    state.brought = { kind: "kept" };
    await vi.waitFor(() => {
      queue.hurry();
      expect(state.waits).toBe(0);
    });
    expect(came).toEqual(["promise a", "bring a 3", "bring a 3"]);
  });

  it("outlive the page, whoever holds the phone then, once they are promised", async () => {
    const first = hub();
    first.state.brought = { kind: "again" };
    const queue = new PhotoQueue(first.told);
    await queue.keep(photo("a"));
    await vi.waitFor(() => expect(first.came).toHaveLength(2));
    const next = hub("JM");
    await new PhotoQueue(next.told).load();
    await vi.waitFor(() => expect(next.state.waits).toBe(0));
    expect(next.came).toEqual(["bring a 3"]);
    const last = hub("JM");
    await new PhotoQueue(last.told).load();
    expect(last.came).toEqual([]);
  });

  it("are not promised in another's name", async () => {
    const first = hub();
    first.state.reply = { kind: "unknown_phone" };
    await new PhotoQueue(first.told).keep(photo("a"));
    await vi.waitFor(() => expect(first.came).toEqual(["promise a"]));
    const same = hub();
    same.state.reply = { kind: "unknown_phone" };
    await new PhotoQueue(same.told).load();
    await vi.waitFor(() => expect(same.came).toEqual(["promise a"]));
    const other = hub("JM");
    await new PhotoQueue(other.told).load();
    expect(other.came).toEqual([]);
    expect(other.state.dropped).toBe(1);
  });

  it("that the hub refuses go, with its reason, and hold nothing up", async () => {
    const { came, state, told } = hub();
    state.brought = { kind: "refused", text: "The picture is not whole." };
    const queue = new PhotoQueue(told);
    await queue.keep(photo("a"));
    await vi.waitFor(() => expect(state.refused).toBe("The picture is not whole."));
    state.reply = REFUSED;
    await queue.keep(photo("b"));
    await vi.waitFor(() => expect(state.waits).toBe(0));
    expect(came).toEqual(["promise a", "bring a 3", "promise b"]);
  });
});
