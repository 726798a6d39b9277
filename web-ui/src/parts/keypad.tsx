/** The keypad in the rod's own units: fixed point, feet-inches-eighths, or tenths on a receiver. */
import type { ComponentChildren } from "preact";
import type { Rod } from "../wire";
import { t } from "../words";
import { Key } from "./keys";

export type Pad = Rod["unit"] | "receiver";

const LONGEST = 5;

/** What stands in the window after another key; what does not fit is not taken. */
export function pressed(pad: Pad, typed: string, key: string): string {
  if (key === "⌫") return typed.slice(0, -1);
  if (pad === "feet_inches_eighths") return inches(typed, key);
  if (pad === "receiver") return tenths(typed, key);
  if (key === ".") return typed.includes(".") ? typed : `${typed || "0"}.`;
  if (!/^\d$/.test(key)) return typed;
  const places = pad === "metres" ? 3 : 2;
  const over = typed.split(".")[1];
  if (typed.replace(".", "").length >= LONGEST || (over && over.length >= places)) return typed;
  return typed + key;
}

function inches(typed: string, key: string): string {
  const [feet = "", rest] = typed.split("-");
  if (rest === undefined) {
    if (key === "ft") return feet ? `${typed}-` : typed;
    return /^\d$/.test(key) && feet.length < 2 ? typed + key : typed;
  }
  const [whole = "", part] = rest.split(" ");
  if (part === undefined) {
    if (key === "in") return whole ? `${typed} ` : typed;
    return /^\d$/.test(key) && Number(whole + key) < 12 && whole.length < 2 ? typed + key : typed;
  }
  return /^\d\/\d$/.test(key) && !part ? typed + key : typed;
}

function tenths(typed: string, key: string): string {
  if (typed.endsWith(".5")) return typed;
  if (key === "½") return `${typed || "0"}.5`;
  return /^\d$/.test(key) && typed.length < 2 ? typed + key : typed;
}

/** The reading as it goes to the hub: three keys 5·4·2 are 5.42; a point that was typed stands where it is. */
export function textOf(pad: Pad, typed: string): string {
  if (pad === "feet_inches_eighths") return typed.trim();
  if (pad === "receiver" || typed === "" || typed.includes(".")) return typed;
  const places = pad === "metres" ? 3 : 2;
  const padded = typed.padStart(places + 1, "0");
  const whole = padded.slice(0, -places).replace(/^0+(?=\d)/, "");
  return `${whole}.${padded.slice(-places)}`;
}

const DIGITS = ["1", "2", "3", "4", "5", "6", "7", "8", "9"];
const EIGHTHS = ["1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"];

function keysOf(pad: Pad, typed: string): string[] {
  if (pad === "receiver") return [...DIGITS, "½", "0", "⌫"];
  if (pad !== "feet_inches_eighths") return [...DIGITS, ".", "0", "⌫"];
  if (typed.includes(" ")) return [...EIGHTHS, "⌫"];
  return [...DIGITS, typed.includes("-") ? "in" : "ft", "0", "⌫"];
}

interface KeypadProps {
  pad: Pad;
  typed: string;
  label: string;
  onTyped: (typed: string) => void;
  onSend: () => void;
  /** Stands beside the window. */
  children?: ComponentChildren;
  /** Stands between the window and the keys. */
  between?: ComponentChildren;
}

export function Keypad({ pad, typed, label, onTyped, onSend, children, between }: KeypadProps) {
  const press = (key: string) => onTyped(pressed(pad, typed, key));
  const face: Record<string, string> = { ft: t().feetKey, in: t().inchKey };
  const onKey = (event: KeyboardEvent) => {
    const key = { Backspace: "⌫", ",": "." }[event.key] ?? event.key;
    if (key === "Enter") onSend();
    else if (/^[\d.⌫]$/.test(key)) press(key);
    else if (key === "-" || key === "'") press("ft");
    else if (key === " " || key === '"') press("in");
    else return;
    event.preventDefault();
  };
  return (
    <div class="pad-room">
      <div class="window-row">
        {children}
        <input
          class={`window ${pad === "feet_inches_eighths" ? "long" : ""}`}
          readOnly
          inputMode="none"
          aria-label={label}
          placeholder={label}
          value={textOf(pad, typed)}
          onKeyDown={onKey}
        />
      </div>
      {between}
      <div class="pad">
        {keysOf(pad, typed).map((key) => (
          <Key
            key={key}
            kind="digit"
            onPress={() => press(key)}
            {...(key === "⌫" ? { label: t().erase } : {})}
          >
            {face[key] ?? key}
          </Key>
        ))}
      </div>
    </div>
  );
}
