/** The picture stays byte for byte, what it tells goes. Markers as in ITU-T T.81, annex B; Exif 2.3, 4.5.4. */
import { describe, expect, it } from "vitest";
import { plain } from "./plain";

const part = (marker: number, content: number[]) => [
  0xff,
  marker,
  (content.length + 2) >> 8,
  (content.length + 2) & 0xff,
  ...content,
];
const START = [0xff, 0xd8];
const HEAD = part(0xe0, [0x4a, 0x46, 0x49, 0x46, 0]);
const EXIF = part(0xe1, [0x45, 0x78, 0x69, 0x66, 0, 0, 0x4d, 0x4d]);
const TABLE = part(0xdb, [0, 1, 2, 3]);
/** A scan whose data hold what looks like an Exif part: it is none. */
const SCAN = [...part(0xda, [1, 1, 0]), 0x12, 0xff, 0, 0xe1, 0x34, 0xff, 0xd9];

describe("a JPEG file", () => {
  it("loses what it tells beside its picture", () => {
    const comment = part(0xfe, [0x68, 0x69]);
    const profile = part(0xe2, [0x49]);
    const file = [...START, ...HEAD, ...EXIF, ...profile, ...TABLE, ...comment, ...SCAN];
    expect([...plain(Uint8Array.from(file))]).toEqual([...START, ...HEAD, ...TABLE, ...SCAN]);
  });
  it("stays as it is when it tells nothing, and when it is cut or no JPEG", () => {
    for (const file of [
      [...START, ...HEAD, ...TABLE, ...SCAN],
      [...START, ...HEAD].slice(0, 9),
      [1, 2, 3],
      [],
    ]) {
      expect([...plain(Uint8Array.from(file))]).toEqual(file);
    }
  });
});
