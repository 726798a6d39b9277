/** Money and amounts as they are read: the site's own sign, whole cents, tenths of a yard. */

/** An amount of money with the site's sign. */
export function money(value: number, sign: string | undefined): string {
  return `${sign ?? ""}${value.toFixed(2)}`;
}

/** Hours and minutes: 4:07 h. */
export function hoursOf(ms: number): string {
  const minutes = Math.round(ms / 60_000);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")} h`;
}

/** A plain number as typed, point or comma; null when it is none, undefined when nothing is typed. */
export function numberTyped(text: string): number | null | undefined {
  const plain = text.trim().replace(",", ".");
  if (plain === "") return undefined;
  return /^\d{1,7}(\.\d{1,4})?$/.test(plain) ? Number(plain) : null;
}
