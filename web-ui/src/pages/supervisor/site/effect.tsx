/** What a change would do: a picture of it on the ground, what differs, what it touches; then the reason, and in force. */
import { useState } from "preact/hooks";
import { Key } from "../../../parts/keys";
import { Plan } from "../../../parts/plan";
import { Profile } from "../../../parts/profile";
import { feet } from "../../../show";
import { ground, sheet } from "../../../state";
import type { Sheet, SiteTarget, WouldChange } from "../../../wire";
import { Differences } from "../differences";
import { t } from "../words";

interface EffectProps {
  would: WouldChange;
  onChange: (why: string) => Promise<void>;
}

export function Effect({ would, onChange }: EffectProps) {
  const words = t();
  const [why, setWhy] = useState("");
  const [sending, setSending] = useState(false);
  if (would.differences.length === 0) return <p>{words.nothingDiffers}</p>;
  const shown = sheet.value && withPut(sheet.value, would);
  const targets = would.put.flatMap((one) => (one.list === "target" ? [one.thing as SiteTarget] : []));
  const one = would.put[0];
  const name = one && "id" in one.thing ? (one.thing.id as string) : null;
  return (
    <div class="effect">
      {shown && would.put.length > 0 && (
        <Plan sheet={shown} ground={ground.value} chosen={name} fresh={name} />
      )}
      {shown &&
        targets.map((target) => (
          <Profile key={target.id} target={target} sheet={shown} ground={ground.value} />
        ))}
      {would.touches.most > 0 && <p>{words.touchesMost(feet(would.touches.most))}</p>}
      <Differences differences={would.differences} touches={would.touches} />
      <form
        onSubmit={(event) => {
          event.preventDefault();
          if (!why.trim() || sending) return;
          setSending(true);
          void onChange(why.trim()).finally(() => setSending(false));
        }}
      >
        <label class="field">
          <span>{words.why}</span>
          <input value={why} autocomplete="off" onInput={(event) => setWhy(event.currentTarget.value)} />
        </label>
        <Key kind="send" submit disabled={!why.trim() || sending} onPress={() => undefined}>
          {words.confirmChange}
        </Key>
      </form>
    </div>
  );
}

/** The sheet as it would be. */
export function withPut(now: Sheet, would: WouldChange): Sheet {
  const next = { ...now };
  for (const one of would.drawn) next.drawn = placed(next.drawn, one);
  for (const one of would.put) {
    switch (one.list) {
      case "target":
        next.targets = placed(next.targets, one.thing);
        break;
      case "line":
        next.lines = placed(next.lines, one.thing);
        break;
      case "benchmark":
        next.benchmarks = placed(next.benchmarks, one.thing);
        break;
      case "overhead":
        next.overheads = placed(next.overheads, one.thing);
        break;
      case "pile":
        next.piles = placed(next.piles, one.thing);
        break;
      case "structure":
        next.structures = placed(next.structures, one.thing);
        break;
      case "utility":
        next.utilities = placed(next.utilities, one.thing);
        break;
      case "ticket":
        next.tickets = placed(next.tickets, one.thing);
        break;
      case "face": {
        // Where it comes to daylight is worked out once it is in force.
        const { id, toe } = one.thing;
        next.faces = placed(next.faces, {
          id,
          toe: toe.map((corner) => corner.at),
          daylight: [],
          over: false,
        });
        break;
      }
      case "mark": {
        const before = next.marks.find((mark) => mark.id === one.thing.id);
        next.marks = placed(next.marks, {
          aim: 0,
          machine: null,
          ...before,
          ...one.thing,
          note: one.thing.note ?? "",
        });
        break;
      }
    }
  }
  return next;
}

function placed<T extends { id: string }>(list: readonly T[], one: T): T[] {
  const there = list.some((other) => other.id === one.id);
  return there ? list.map((other) => (other.id === one.id ? one : other)) : [...list, one];
}
