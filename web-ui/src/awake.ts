/**
 * Keeps the cab's screen on: by a wake lock where the phone allows one, else by a muted inline video of one
 * painted canvas. Neither is a promise; the cab card says to switch the phone's own lock off.
 */
import { signal } from "@preact/signals";

/** How the screen is kept on; "phone" means that only the phone's own setting can. */
export const keptBy = signal<"nothing" | "lock" | "video" | "phone">("nothing");

let lock: WakeLockSentinel | null = null;
let video: HTMLVideoElement | null = null;

/** Call from within a press. The video is put into `place`, where it stays in view. */
export async function keepAwake(place: HTMLElement): Promise<void> {
  if (await byLock()) return;
  keptBy.value = (await byVideo(place)) ? "video" : "phone";
}

async function byLock(): Promise<boolean> {
  if (!navigator.wakeLock) return false;
  try {
    lock = await navigator.wakeLock.request("screen");
    keptBy.value = "lock";
    return true;
  } catch {
    return false;
  }
}

async function byVideo(place: HTMLElement): Promise<boolean> {
  if (video) return resume(video);
  const canvas = document.createElement("canvas");
  canvas.width = 24;
  canvas.height = 24;
  const pen = canvas.getContext("2d");
  if (!pen || typeof canvas.captureStream !== "function") return false;
  let on = false;
  // A stream of one still picture gives no frames, and no frames let the screen sleep; the two differ by a hair,
  // so that nothing blinks beside the number.
  setInterval(() => {
    on = !on;
    pen.fillStyle = getComputedStyle(document.body).backgroundColor;
    pen.fillRect(0, 0, 24, 24);
    pen.fillStyle = on ? "rgb(128 128 128 / 4%)" : "rgb(128 128 128 / 8%)";
    pen.fillRect(0, 0, 24, 24);
  }, 500);
  video = document.createElement("video");
  video.muted = true;
  video.playsInline = true;
  video.tabIndex = -1;
  video.setAttribute("aria-hidden", "true");
  video.srcObject = canvas.captureStream(2);
  place.append(video);
  return resume(video);
}

async function resume(playing: HTMLVideoElement): Promise<boolean> {
  try {
    await playing.play();
    return true;
  } catch {
    return false;
  }
}

document.addEventListener("visibilitychange", () => {
  if (document.visibilityState !== "visible") return;
  if (lock) void byLock();
  else if (video) void resume(video);
});
