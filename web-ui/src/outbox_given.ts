/** For tests of the outbox: a hub that answers as told, two people, a reading. */
import type { Reply } from "./outbox";
import type { Asked, Command, TakeReading } from "./wire";

export const done: Reply = { kind: "answer", answer: { first: 1, last: 1, outcome: { kind: "done" } } };
export const called: Reply = {
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
export const no: Reply = {
  kind: "refused",
  refused: { kind: "stop", english: "Too late.", spanish: "Muy tarde." },
};
export const reading: TakeReading = {
  kind: "take_reading",
  mark: "P-1",
  set_up: "S1",
  rod: "A",
  text: "4.70",
  mode: "rod",
};

/** A command that is a reading. */
export function read(command: Command | undefined): TakeReading {
  if (command?.kind !== "take_reading") throw new Error(`${command?.kind} is no reading`);
  return command;
}

/** A hub that answers as told, and remembers what it was asked. */
export function fakeHub() {
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

export const RT = { device: "g1", person: "RT" };
export const JM = { device: "g2", person: "JM" };
