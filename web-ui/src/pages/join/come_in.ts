/** Coming in by a code: in, or why not, and whether somebody of that name is here already. */
import { ask, own } from "../../hub";
import type { Language, Me, Role, ScreenUnit } from "../../wire";
import { t } from "../../words";

export interface JoinForm {
  code: string;
  person: string;
  roles: Role[];
  language: Language;
  unit: ScreenUnit;
  /** I am the person of that name who is here already. */
  same_person?: boolean;
}

/** Somebody of the name that was typed. */
export interface Namesake {
  person: string;
  since: number;
  /** The machine in whose keep-out they may be. */
  inside: string | null;
  /** A name that nobody has. */
  another: string;
}

export type CameIn = { ok: true; me: Me } | { ok: false; text: string; namesake: Namesake | null };

export async function comeIn(form: JoinForm): Promise<CameIn> {
  const no = (text: string, namesake: Namesake | null = null): CameIn => ({ ok: false, text, namesake });
  try {
    const response = await ask("/api/join", form);
    if (response.ok) return { ok: true, me: (await response.json()) as Me };
    const text = await response.text();
    try {
      const { refusal, ...why } = JSON.parse(text);
      const said = own(why);
      return refusal?.kind === "same_name" ? no(said, { inside: null, ...refusal }) : no(said);
    } catch {
      // Plain text stands for itself.
      return no(text);
    }
  } catch {
    return no(t().noHub);
  }
}
