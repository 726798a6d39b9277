/** A photo made small enough to send: drawn anew, the right way up, so that nothing of the file is left but the picture. */
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex } from "@noble/hashes/utils.js";
import { plain } from "./plain";

/** Dots of the longer side. */
const SIDE = 1600;
/** Bytes that a weak link still carries; grass and gravel need a coarser picture for it. */
const ENOUGH = 700_000;
const QUALITIES = [0.82, 0.7, 0.55, 0.4];

export interface Reduced {
  bytes: Uint8Array;
  /** SHA-256 of these bytes, in hex: their name for good. */
  sha256: string;
  /** SHA-256 of the file that it was made from. */
  original: string;
  canvas: HTMLCanvasElement;
}

/** Fails when the phone can't read the picture. */
export async function reduce(file: Blob): Promise<Reduced> {
  const original = bytesToHex(sha256(new Uint8Array(await file.arrayBuffer())));
  const canvas = await drawn(file);
  let bytes: Uint8Array = new Uint8Array();
  for (const quality of QUALITIES) {
    bytes = plain(await encoded(canvas, quality));
    if (bytes.length <= ENOUGH) break;
  }
  return { bytes, sha256: bytesToHex(sha256(bytes)), original, canvas };
}

/** An image element turns the picture as its file says; that holds in every browser that these pages are made for. */
async function drawn(file: Blob): Promise<HTMLCanvasElement> {
  const image = new Image();
  const address = URL.createObjectURL(file);
  try {
    image.src = address;
    await image.decode();
    const scale = Math.min(1, SIDE / Math.max(image.naturalWidth, image.naturalHeight));
    const canvas = document.createElement("canvas");
    canvas.width = Math.max(1, Math.round(image.naturalWidth * scale));
    canvas.height = Math.max(1, Math.round(image.naturalHeight * scale));
    const brush = canvas.getContext("2d");
    if (!brush) throw new Error("no canvas");
    brush.imageSmoothingQuality = "high";
    // What is see-through would come out black.
    brush.fillStyle = "#fff";
    brush.fillRect(0, 0, canvas.width, canvas.height);
    brush.drawImage(image, 0, 0, canvas.width, canvas.height);
    return canvas;
  } finally {
    URL.revokeObjectURL(address);
  }
}

async function encoded(canvas: HTMLCanvasElement, quality: number): Promise<Uint8Array> {
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/jpeg", quality));
  if (blob?.type !== "image/jpeg") throw new Error("no JPEG");
  return new Uint8Array(await blob.arrayBuffer());
}
