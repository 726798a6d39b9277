/** Figures drawn large: a fraction stands stacked, with its bar, beside its whole; 3 7/8 is never 37/8. */

/** What stands in an amount: whole figures, a unit in words, a fraction. */
export type Figure = { whole: string } | { word: string } | { over: string; under: string };

/** The parts of an amount as the hub writes it: `3½`, `1.4`, `10 3/4`, `1 FT 1 3/4`. */
export function figuresOf(amount: string): Figure[] {
  return amount
    .replaceAll("½", " 1/2")
    .split(" ")
    .filter(Boolean)
    .map((part) => {
      const [over = "", under] = part.split("/");
      if (under !== undefined) return { over, under };
      return /\d/.test(part) ? { whole: part } : { word: part };
    });
}

/** For the eye alone: whoever shows it gives it a name for readers, too. */
export function Figures({ of: amount }: { of: string }) {
  const figures = figuresOf(amount);
  return (
    <>
      {figures.map((one, i) => {
        if ("whole" in one) return <span key={i}>{one.whole}</span>;
        if ("word" in one) {
          return (
            <span class="figure-word" key={i}>
              {one.word}
            </span>
          );
        }
        return (
          <span class="fraction" key={i}>
            <span>{one.over}</span>
            <i />
            <span>{one.under}</span>
          </span>
        );
      })}
    </>
  );
}

/** Two figures and the bar between them are as high as a whole figure. */
const SMALL = 0.44;
/** What stands free before a fraction or a word, ems. */
const GAP = 0.1;

/** How wide an amount runs, in ems of the widest heavy face that phones set it in: a number that is cut off is another number. */
export function runsEms(amount: string): number {
  return figuresOf(amount).reduce((sum, one) => {
    if ("whole" in one) return sum + run(one.whole) + (sum > 0 ? GAP : 0);
    if ("word" in one) return sum + one.word.length * 0.8 * 0.3 + GAP;
    return sum + Math.max(run(one.over), run(one.under)) * SMALL + GAP;
  }, 0);
}

/** Digits all alike, a point narrow. */
function run(text: string): number {
  return [...text].reduce((sum, c) => sum + (c === "." ? 0.38 : 0.7), 0);
}
