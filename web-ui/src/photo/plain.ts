/**
 * What a JPEG file tells beside its picture is cut out: a browser may put an Exif block of its own into what it has drawn
 * (from memory: WebKit does), and the hub keeps no file that has one. Parts as in ITU-T T.81, annex B.
 */

const SCAN = 0xda;
const COMMENT = 0xfe;

/** Parts of programs, and comments; the plain head (APP0) and the colour transform (APP14) belong to the picture. */
function tells(marker: number): boolean {
  return (marker >= 0xe1 && marker <= 0xef && marker !== 0xee) || marker === COMMENT;
}

/** The same picture without them. What is no JPEG comes back as it is: the hub says why it does not take it. */
export function plain(file: Uint8Array): Uint8Array {
  const kept: Uint8Array[] = [file.subarray(0, 2)];
  let at = 2;
  while (file[at] === 0xff) {
    const marker = file[at + 1] ?? 0;
    const end = at + 2 + (file[at + 2] ?? 0) * 256 + (file[at + 3] ?? 0);
    if (marker === SCAN) break;
    if (!tells(marker)) kept.push(file.subarray(at, end));
    at = end;
  }
  kept.push(file.subarray(at));
  const whole = new Uint8Array(kept.reduce((length, part) => length + part.length, 0));
  let to = 0;
  for (const part of kept) {
    whole.set(part, to);
    to += part.length;
  }
  return whole;
}
