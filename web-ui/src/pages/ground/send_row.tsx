/** The lowest row of READ: what is pressed most, and over STOP nothing that can be pressed: how the laser stands. */
import type { ComponentChildren } from "preact";
import { setUpName } from "../../given_names";
import { ago } from "../../show";
import { now } from "../../state";
import { t } from "../../words";
import { setUp } from "./at";
import { Unbroken } from "./large";

export function SendRow({ children }: { children: ComponentChildren }) {
  return (
    <div class="send-row">
      {children}
      <LaserState />
    </div>
  );
}

/** How the laser stands; `owed` alone: nothing while it is proven. */
export function LaserState({ owed = false }: { owed?: boolean }) {
  const proven = setUp.value?.state.kind === "proven";
  if (owed && proven) return null;
  return (
    <p class={`laser-state ${proven ? "" : "trouble"}`}>
      <Unbroken of={setUpWords()} />
    </p>
  );
}

function setUpWords(): string {
  const words = t();
  const card = setUp.value;
  if (!card) return words.noSetUp;
  if (card.state.kind === "unproven") return words.setUpUnproven(setUpName(card.id));
  if (card.state.kind === "in_doubt") return words.setUpDoubt(setUpName(card.id));
  if (!card.last_check) return words.setUpNoCheck(setUpName(card.id));
  return words.setUpChecked(setUpName(card.id), ago(now.value - card.last_check.at));
}
