/** Tones that say which way without a look, and the voice on request. Nothing sounds before the first press. */
import { signal } from "@preact/signals";
import { languages } from "./languages";
import type { Language } from "./wire";

/** True once a press has let the phone make sound. */
export const audible = signal(false);

let context: AudioContext | null = null;

/** Call from within a press: browsers let no page sound before one. */
export async function allowSound(): Promise<void> {
  try {
    context ??= watched(new AudioContext());
    await context.resume();
    const session = (navigator as { audioSession?: { type: string } }).audioSession;
    if (session) session.type = "playback";
    audible.value = context.state === "running";
  } catch {
    audible.value = false;
  }
}

/** A call or another app may take the sound away again: then this page has none until it is tapped. */
function watched(fresh: AudioContext): AudioContext {
  fresh.onstatechange = () => {
    audible.value = fresh.state === "running";
  };
  return fresh;
}

/** One note: when it starts and how long it lasts, s; the pitch that it goes from and to, Hz. */
export interface Note {
  at: number;
  long: number;
  from: number;
  to: number;
}

/** As many falling or rising pulses as tenths, up to five; from six tenths on one long one. */
function pulses(tenths: number, from: number, to: number): Note[] {
  if (tenths > 5) return [{ at: 0, long: 1.1, from, to }];
  const count = Math.max(1, Math.round(tenths));
  return Array.from({ length: count }, (_, i) => ({ at: i * 0.24, long: 0.16, from, to }));
}

export type Tune = "down" | "up" | "grade" | "shave" | "stop" | "look";

/** The notes of a tune; `tenths` counts for down and up alone. */
export function notes(tune: Tune, tenths = 1): Note[] {
  switch (tune) {
    case "down":
      return pulses(tenths, 440, 260);
    case "up":
      return pulses(tenths, 620, 1_000);
    case "grade":
      return [0, 0.22].map((at) => ({ at, long: 0.12, from: 660, to: 660 }));
    case "shave":
      return [{ at: 0, long: 0.12, from: 300, to: 300 }];
    case "look":
      return [{ at: 0, long: 0.3, from: 520, to: 520 }];
    case "stop":
      return Array.from({ length: 6 }, (_, i) => {
        const pitch = i % 2 === 0 ? 880 : 580;
        return { at: i * 0.3, long: 0.28, from: pitch, to: pitch };
      });
  }
}

/** Plays a tune, at most as loud as the phone goes; the time that it takes, s. */
export function play(tune: Tune, tenths = 1, loudness = 0.5): number {
  const tuneNotes = notes(tune, tenths);
  const last = tuneNotes[tuneNotes.length - 1];
  if (context?.state !== "running" || !last) return 0;
  for (const note of tuneNotes) sound(context, note, loudness);
  return last.at + last.long;
}

function sound(audio: AudioContext, note: Note, loudness: number): void {
  const voice = audio.createOscillator();
  const loud = audio.createGain();
  const start = audio.currentTime + 0.02 + note.at;
  const end = start + note.long;
  voice.type = "square";
  voice.frequency.setValueAtTime(note.from, start);
  voice.frequency.linearRampToValueAtTime(note.to, end);
  loud.gain.setValueAtTime(0, start);
  loud.gain.linearRampToValueAtTime(loudness, start + 0.015);
  loud.gain.setValueAtTime(loudness, end - 0.03);
  loud.gain.linearRampToValueAtTime(0, end);
  voice.connect(loud).connect(audio.destination);
  voice.start(start);
  voice.stop(end);
}

/** Says a call aloud after its tone; silent when the phone has no voice for the language. */
export function speak(text: string, language: Language, afterSeconds: number): void {
  const voices = window.speechSynthesis;
  if (!voices) return;
  voices.cancel();
  setTimeout(() => {
    const said = new SpeechSynthesisUtterance(text);
    said.lang = languages[language].voice;
    voices.speak(said);
  }, afterSeconds * 1_000);
}
