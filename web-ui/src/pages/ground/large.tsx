/** Words that must be read at arm's length: names that keep together, fractions that stand stacked, letters as large as their room. */
import type { ComponentChildren } from "preact";

/** A mark's, a machine's or a rod's name is never broken at its hyphen; `3 7/8` has its fraction beside the whole. */
export function Unbroken({ of: text }: { of: string }) {
  return (
    <>
      {text.split(/(\S+-\S+|\d\/\d)/).map((part, i) => {
        const [over, under] = part.split("/");
        if (i % 2 === 0) return part;
        if (under !== undefined && /^\d\/\d$/.test(part)) {
          return (
            <span class="stacked" key={i}>
              <sup>{over}</sup>
              <i>/</i>
              <sub>{under}</sub>
            </span>
          );
        }
        return (
          <span class="unbroken" key={i}>
            {part}
          </span>
        );
      })}
    </>
  );
}

interface LineProps {
  kind: string;
  letters: number;
  children: ComponentChildren;
}

/** One line of so many letters, as large as the room takes. */
export function Line({ kind, letters, children }: LineProps) {
  return (
    <p class={`fits ${kind}`} style={`--letters:${Math.max(8, letters)}`}>
      {children}
    </p>
  );
}

/** What takes the page: few words fill it, many are set smaller. */
export function Loud({ text }: { text: string }) {
  const longest = Math.max(...text.split(/\s+/).map((word) => word.length));
  return (
    <p class="state loud-words" style={`--longest:${longest};--share:${share(text.length)}`}>
      <span>
        <Unbroken of={text} />
      </span>
    </p>
  );
}

/** How high a letter may be, as a share of a room that is some three quarters as high as it is wide, for so many of them to fit. */
function share(letters: number): number {
  return Math.round(Math.sqrt(0.75 / (0.95 * letters)) * 1_000) / 1_000;
}
