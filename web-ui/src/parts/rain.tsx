/** Rain, for the whole site: that it rains and since when, and the keys that say so. A key never changes what it says. */
import { say } from "../hub";
import { moment } from "../show";
import { now } from "../state";
import type { RainNow } from "../wire";
import { t } from "../words_later";
import { Key } from "./keys";

export const sayRain = () => void say({ kind: "say_rain" });

/** Names the word that it rains which this page shows: somebody may have said since that it rains again. */
const sayStopped = (rain: RainNow) => void say({ kind: "say_rain_stopped", rain: rain.word });

export function RainLine({ rain }: { rain: RainNow }) {
  if (rain.since == null) return null;
  return <p class="quiet">{t().cuts.rains(moment(rain.since, now.value))}</p>;
}

interface StoppedProps {
  rain: RainNow | undefined;
  kind: "tile" | "small";
  onSaid?: () => void;
}

/** Stands only while it rains. */
export function RainStoppedKey({ rain, kind, onSaid }: StoppedProps) {
  if (rain?.since == null) return null;
  const press = () => {
    sayStopped(rain);
    onSaid?.();
  };
  return (
    <Key kind={kind} onPress={press}>
      {t().cuts.rainStopped}
    </Key>
  );
}

/** On the supervisor's board. */
export function Rain({ rain }: { rain: RainNow }) {
  return (
    <>
      <RainLine rain={rain} />
      <div class="row">
        <Key kind="small" onPress={sayRain}>
          {t().cuts.seenAt.rain}
        </Key>
        <RainStoppedKey rain={rain} kind="small" />
      </div>
    </>
  );
}
