/** The mark under the rod, in one key that never scrolls away: its name, what the rod must read, its dig-to. */
import type { ComponentChildren } from "preact";
import { rodText } from "../../grade";
import { Key } from "../../parts/keys";
import { feet } from "../../show";
import { t } from "../../words";
import { stays } from "./ask_in";
import { chosen, digTo, gradeRod, machine, mark, rod, step } from "./at";
import { Unbroken } from "./large";
import { leave } from "./open";
import { within } from "./way_in";

/** A name longer than this is set smaller. */
const LONG = 7;

interface MarkKeyProps {
  onMarks: () => void;
  /** Without the dig-to: it shares its row. */
  bare?: boolean;
}

/** Pressed, it leads to the other marks. */
export function MarkKey({ onMarks, bare = false }: MarkKeyProps) {
  const words = t();
  const here = mark.value;
  const to = digTo(here, chosen.value.side);
  const must = gradeRod();
  const id = here?.id ?? words.none;
  const reads = must !== null && rod.value ? rodText(rod.value, must) : "";
  return (
    <Key kind="mark here" onPress={onMarks}>
      <span class="mark-name">
        <strong class={id.length > LONG ? "long" : ""}>{id}</strong>
        {to !== null && !bare && (
          <small>
            {words.digTo} {feet(to)}
          </small>
        )}
      </span>{" "}
      {reads && (
        <span class="rod-must">
          <small>{words.rodMustRead}</small>{" "}
          <strong class={reads.length > LONG ? "long" : ""}>
            <Unbroken of={reads} />
          </strong>
        </span>
      )}
    </Key>
  );
}

/** The mark before and the next, on either side. */
export function MarkSteps({ children }: { children: ComponentChildren }) {
  const words = t();
  return (
    <>
      <Key kind="step" label={words.previous} onPress={() => leave(() => step(-1))}>
        ◂
      </Key>
      {children}
      <Key kind="step" label={words.next} onPress={() => leave(() => step(1))}>
        ▸
      </Key>
    </>
  );
}

/** Said before the reading goes out: the strip will stand with the call. Whoever is in reads that they are. */
export function KeepOutLine() {
  const card = machine.value;
  const here = mark.value;
  if (!card || !here || !within(card, here) || stays().length > 0) return null;
  return (
    <p class="keep-out">
      <Unbroken of={`${t().insideKeepOut(card.id)} ${t().cautionShort}`} />
    </p>
  );
}
