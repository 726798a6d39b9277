/** A number of feet as a supervisor types it: point or comma, up to four places. */
import { FOOT } from "../grade";

/** Whole tenth-micrometres; null when it is no number. */
export function feetTyped(text: string): number | null {
  const match = /^([-−+]?)(\d{1,6})?(?:[.,](\d{1,4}))?$/.exec(text.trim());
  if (!match || (match[2] === undefined && match[3] === undefined)) return null;
  const counts = Number(match[2] ?? 0) * 10_000 + Number((match[3] ?? "").padEnd(4, "0"));
  const size = Math.round((counts * FOOT) / 10_000);
  return match[1] === "-" || match[1] === "−" ? -size : size;
}
