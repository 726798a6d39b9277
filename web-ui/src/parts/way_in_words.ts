/** The way into a keep-out in whole sentences: with a mark or without, with a witness or without. */
import { t } from "../words";

/** Who asks to come in, and at which mark where one was named. */
export function asks(who: string, mark: string | null | undefined): string {
  const words = t().wayIn;
  return mark ? words.asksAt(who, mark) : words.asks(who);
}

/** Who says that this phone's person is out: somebody else, or another phone in that person's name. */
export function toldOutWords(witness: string | null | undefined, machine: string): string {
  const words = t().wayIn;
  return witness ? words.toldOut(witness, machine) : words.toldOutInYourName(machine);
}
