/** The card of what was pressed on the desk's plan, beside it: what it is, what it asks for, how it stands, what was said of it. */
import { useEffect, useRef } from "preact/hooks";
import { Key } from "../../../parts/keys";
import type { Supervisor } from "../../../wire";
import { t } from "../words";
import { MachineOnCard } from "./card_machine";
import { MarkOnCard } from "./card_mark";
import { OtherOnCard } from "./card_others";
import type { Thing } from "./things";

export interface CardProps {
  of: Thing;
  view: Supervisor;
  /** Another thing that the card names is pressed. */
  onPick: (thing: Thing) => void;
}

export function Card({ of, view, onPick, onClose }: CardProps & { onClose: () => void }) {
  const words = t();
  const whole = useRef<HTMLElement>(null);
  // Another thing's card begins at its head.
  useEffect(() => whole.current?.scrollTo?.(0, 0), [of.kind, of.id]);
  const inside = { of, view, onPick };
  return (
    <aside
      class="thing-card"
      aria-label={`${words.desk.kinds[of.kind]} ${of.id}`}
      ref={whole}
      onKeyDown={(event) => {
        if (event.key === "Escape") onClose();
      }}
    >
      <header>
        <h2>
          {of.id} <small>{words.desk.kinds[of.kind]}</small>
        </h2>
        <Key label={`${words.close} ${of.id}`} onPress={onClose}>
          {words.close}
        </Key>
      </header>
      {of.kind === "mark" ? (
        <MarkOnCard {...inside} />
      ) : of.kind === "machine" ? (
        <MachineOnCard {...inside} />
      ) : (
        <OtherOnCard {...inside} />
      )}
    </aside>
  );
}
