/** The one queue of this phone's photos, and how it reaches the hub. */
import { effect } from "@preact/signals";
import { reason, say } from "../hub";
import { newKey } from "../outbox";
import { linked, me, notice, type PhotoAbout, photosWaiting } from "../state";
import { t } from "../words_later";
import { type Brought, type KeptPhoto, PhotoQueue } from "./queue";
import type { Reduced } from "./reduce";

/** A photo takes longer than words do. */
const LIMIT = 120_000;

async function bring({ photo, bytes }: KeptPhoto): Promise<Brought> {
  const stop = new AbortController();
  const timer = setTimeout(() => stop.abort(), LIMIT);
  try {
    const headers = { "Content-Type": "image/jpeg" };
    const sent = { method: "PUT", headers, body: new Blob([bytes as Uint8Array<ArrayBuffer>]) };
    const response = await fetch(`/api/photos/${photo}`, { ...sent, signal: stop.signal });
    if (response.ok) return { kind: "kept" };
    const { status } = response;
    // Not in, too slow, too many, a full disk: none of these says anything about the photo.
    if (status === 401 || status === 408 || status === 429 || status >= 500) return { kind: "again" };
    return { kind: "refused", text: await reason(response) };
  } finally {
    clearTimeout(timer);
  }
}

const queue = new PhotoQueue({
  say: (promise) => say(promise),
  bring,
  person: () => me.value?.person ?? "",
  waiting: (many) => {
    photosWaiting.value = many;
  },
  refused: (text) => {
    notice.value = text;
  },
  dropped: (many) => {
    notice.value = t().dropped(many);
  },
});

void queue.load();
effect(() => {
  if (linked.value) queue.hurry();
});

/** Keeps a photo; gives the name by which others may speak of it. */
export function keep(reduced: Reduced, about: PhotoAbout, words: string): string {
  const photo = newKey();
  const { bytes, sha256, original } = reduced;
  const promise: KeptPhoto["promise"] = { kind: "promise_photo", photo, sha256, original, words, ...about };
  void queue.keep({ photo, bytes, promise });
  return photo;
}
