/** Keys: one that is pressed, one that is pressed and held, and STOP, which acts at the first touch. */
import type { ComponentChildren } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import { say } from "../hub";
import { t } from "../words";

interface KeyProps {
  children: ComponentChildren;
  onPress: () => void;
  kind?: string;
  label?: string;
  pressed?: boolean | undefined;
  /** It can't be pressed now; `why` says what is owed first. */
  disabled?: boolean | undefined;
  why?: string | null | undefined;
  /** It sends the form that it stands in. */
  submit?: boolean;
}

/** How long the longest word of a key is, for a key that is no wider than it: its figures and its own text come first. */
function longest(of: ComponentChildren): { "--longest": number } | undefined {
  const text = Array.isArray(of) ? of.find((one) => typeof one === "string") : of;
  if (typeof text !== "string") return undefined;
  return { "--longest": Math.max(4, ...text.split(" ").map((word) => word.length)) };
}

/** A finger may slide so far and its press still counts: 10 mm on a phone of 0.166 mm to the CSS pixel. */
const SLIDES = 60;

/**
 * A browser makes no press of a finger that has slid more than some 3 mm. The key that took the finger keeps it, and takes the
 * press when it is let go within 10 mm; the browser's own press is then called off, or it would land on whatever lies there next.
 */
function useFinger() {
  const from = useRef<{ id: number; x: number; y: number } | null>(null);
  const lose = () => {
    from.current = null;
  };
  const mine = (event: TouchEvent) =>
    [...event.changedTouches].find((one) => one.identifier === from.current?.id);
  return {
    onTouchStart: (event: TouchEvent) => {
      const [one] = event.changedTouches;
      if (one && !from.current) from.current = { id: one.identifier, x: one.clientX, y: one.clientY };
    },
    onTouchMove: (event: TouchEvent) => {
      const [here, start] = [mine(event), from.current];
      if (here && start && Math.hypot(here.clientX - start.x, here.clientY - start.y) > SLIDES) lose();
    },
    onTouchEnd: (event: TouchEvent) => {
      if (!mine(event)) return;
      lose();
      if (event.cancelable) event.preventDefault();
      const key = event.currentTarget;
      // A key that has gone meanwhile, as under a STOP, is not pressed any more.
      if (key instanceof HTMLElement && key.isConnected) key.click();
    },
    onTouchCancel: lose,
    onPointerCancel: lose,
  };
}

/** A key. `pressed` makes it one of a choice; `kind` adds classes. A dead key says why it is dead, on itself. */
export function Key({ children, onPress, kind = "", label, pressed, disabled, why, submit }: KeyProps) {
  const [tried, setTried] = useState(false);
  const finger = useFinger();
  // A key that sends its form is dead to a press, too: what it waits for stands on it at once.
  const general = kind.includes("send") && (tried || submit) ? t().kept.owed.something : null;
  const owed = disabled ? (why ?? general) : null;
  return (
    <button
      type={submit ? "submit" : "button"}
      class={`key ${kind}`}
      style={longest(children)}
      onClick={disabled ? () => setTried(true) : onPress}
      {...finger}
      aria-label={label}
      aria-pressed={pressed}
      aria-disabled={(!submit && disabled) || undefined}
      disabled={submit && disabled}
      title={owed ?? undefined}
    >
      {children}
      {/* The name of the key stays its own; what is owed is its description. */}
      {owed && (
        <small class="owed" aria-hidden="true">
          {owed}
        </small>
      )}
    </button>
  );
}

/** How long what must not slip is held, ms. */
const HELD = 900;
/** Said on the key for so long when it was let go too soon, ms. */
const SAID = 4_000;

/**
 * A key for what must not slip: it fills while held and acts when full, and says so when it was let go before. Enter or space
 * held does the same.
 */
export function HoldKey({ children, onPress, kind = "" }: KeyProps) {
  const [holding, setHolding] = useState(false);
  const [short, setShort] = useState(false);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const said = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const from = useRef({ x: 0, y: 0 });
  // The key keeps the finger that took it: a page that moves under it, as when a STOP comes, does not let go.
  const take = (event: PointerEvent) => {
    from.current = { x: event.clientX, y: event.clientY };
    (event.currentTarget as Element).setPointerCapture?.(event.pointerId);
    begin();
  };
  const slid = (event: PointerEvent) => {
    const { x, y } = from.current;
    if (Math.hypot(event.clientX - x, event.clientY - y) > SLIDES) letGo();
  };
  const begin = () => {
    if (timer.current) return;
    setHolding(true);
    setShort(false);
    timer.current = setTimeout(() => {
      end();
      onPress();
    }, HELD);
  };
  const end = () => {
    clearTimeout(timer.current);
    timer.current = undefined;
    setHolding(false);
  };
  const letGo = () => {
    if (!timer.current) return;
    end();
    setShort(true);
    clearTimeout(said.current);
    said.current = setTimeout(() => setShort(false), SAID);
  };
  useEffect(
    () => () => {
      end();
      clearTimeout(said.current);
    },
    [],
  );
  const key = (event: KeyboardEvent) => event.key === "Enter" || event.key === " ";
  return (
    <button
      type="button"
      class={`key hold ${holding ? "holding" : ""} ${kind}`}
      style={longest(children)}
      onPointerDown={take}
      onPointerMove={slid}
      onPointerUp={letGo}
      onPointerCancel={letGo}
      // What it did may have put another key under the finger: the browser's press would land there.
      onTouchEnd={(event) => event.cancelable && event.preventDefault()}
      onContextMenu={(event) => event.preventDefault()}
      onKeyDown={(event) => {
        if (key(event)) {
          event.preventDefault();
          begin();
        }
      }}
      onKeyUp={(event) => key(event) && letGo()}
      onBlur={end}
    >
      {children} <small aria-live="polite">{short ? t().heldShort : `(${t().hold})`}</small>
    </button>
  );
}

/** STOP: every machine, at the first touch, from any page. Pressed again it says it again. */
export function StopKey() {
  const last = useRef(Number.NEGATIVE_INFINITY);
  const press = () => {
    // A touch is followed by a click; one press is one stop.
    const now = performance.now();
    if (now - last.current < 700) return;
    last.current = now;
    void say({ kind: "stop_all", why: "" });
  };
  return (
    <button type="button" class="key stop" aria-label={t().stopAll} onPointerDown={press} onClick={press}>
      {t().stop}
    </button>
  );
}
