/** A length as a text that the hub reads as itself: feet with four decimals where that is exact, else millimetres. */
import { FOOT, MILLIMETRE } from "../../../grade";

export function exactly(length: number): string {
  const counts = (length * 10_000) / FOOT;
  if (Number.isInteger(counts)) return `${counts / 10_000} ft`;
  return `${(length / MILLIMETRE).toFixed(4)} mm`;
}
