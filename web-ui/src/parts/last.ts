/** A mark's last reading in words: what counts now, or what it was and why it counts no more. The hub judges which. */
import { setUpName } from "../given_names";
import { said } from "../said";
import { feet, signed, timeOfDay } from "../show";
import type { MarkCard } from "../wire";
import { t } from "../words";

/** The difference that counts, else the elevation of a spot. */
export function lastFigure(card: MarkCard): string {
  const dev = card.dev ?? card.was;
  return dev == null ? feet(card.elevation) : signed(dev);
}

/** "last +0.30 at 10:16"; "was +0.07 before the change: shoot again". */
export function lastWords(card: MarkCard | undefined): string {
  const words = t();
  if (!card) return words.noReading;
  const when = card.day ? `${card.day} ${timeOfDay(card.at)}` : timeOfDay(card.at);
  return gone(card) || words.lastReading(lastFigure(card), when);
}

/** Why a last reading counts no more, with what it was; empty while it counts. */
export function gone(card: MarkCard): string {
  const words = t();
  const was = lastFigure(card);
  switch (card.counts.kind) {
    case "before_change":
      return words.wasBefore(was);
    case "laser_in_doubt":
      return words.wasDoubted(was, setUpName(card.counts.set_up));
    case "void":
      return words.wasVoid(was, said(card.counts));
    case "counts":
      return "";
  }
}

/** In a word, where a plan has no room for more: the verdict that counts, else AGAIN. */
export function lastShort(card: MarkCard | undefined): string {
  if (!card) return "";
  if (card.counts.kind !== "counts") return t().shootAgainShort;
  return card.verdict ? t().verdictShort[card.verdict] : "";
}
