/**
 * The socket to the hub: one at a time, dropped and made anew whenever it may be dead. A phone that slept
 * holds sockets that say they are open and are not, so nothing but a heartbeat counts as alive.
 */
import type { FromHub, ToHub } from "./wire";

const FIRST_PAUSE = 500;
const LONGEST_PAUSE = 4_000;
const CONNECT_LIMIT = 5_000;
/** Without a heartbeat for this long the link is lost. */
export const SILENCE = 4_000;
const TICK = 500;
/** A ticker that was held up this long has slept: its socket is not to be trusted. */
const SLEPT = 3_000;

export interface LinkEvents {
  said(message: FromHub): void;
  lost(): void;
  /** A socket was not let in: there is no hub, or it does not know this phone any more. */
  notLetIn(): void;
}

export class Link {
  private socket: WebSocket | null = null;
  private pause = FIRST_PAUSE;
  private retry: ReturnType<typeof setTimeout> | undefined;
  private heardAt = 0;
  private openedAt = 0;
  private tickedAt = 0;
  private over = false;

  constructor(
    private readonly url: string,
    private readonly events: LinkEvents,
    private readonly here: () => number = () => performance.now(),
  ) {}

  start(): void {
    this.tickedAt = this.here();
    setInterval(() => this.tick(), TICK);
    const awake = () => {
      if (document.visibilityState === "visible") this.renew();
    };
    for (const name of ["pageshow", "online", "focus"]) window.addEventListener(name, awake);
    document.addEventListener("resume", awake);
    document.addEventListener("visibilitychange", () => {
      this.say({ kind: "visible", visible: document.visibilityState === "visible" });
      awake();
    });
    window.addEventListener("pagehide", () => this.drop());
    this.open();
  }

  say(message: ToHub): void {
    if (this.socket?.readyState === WebSocket.OPEN) this.socket.send(JSON.stringify(message));
  }

  /** The hub has sent this page away: no more tries. */
  end(): void {
    this.over = true;
    clearTimeout(this.retry);
    this.drop();
  }

  /** Drops a socket that has been silent and makes a new one; one that beats is left alone. */
  renew(): void {
    if (this.over || this.here() - Math.max(this.heardAt, this.openedAt) < 1_500) return;
    this.drop();
    this.open();
  }

  private open(): void {
    clearTimeout(this.retry);
    const socket = new WebSocket(this.url);
    this.socket = socket;
    this.openedAt = this.here();
    socket.onopen = () => {
      this.say({ kind: "visible", visible: document.visibilityState === "visible" });
      this.say({ kind: "clock", t0: this.here() });
    };
    socket.onmessage = (event) => {
      if (socket !== this.socket) return;
      const message = parse(event.data);
      if (!message) return;
      this.heardAt = this.here();
      this.pause = FIRST_PAUSE;
      this.events.said(message);
    };
    socket.onclose = () => {
      if (socket !== this.socket) return;
      if (this.heardAt < this.openedAt) this.events.notLetIn();
      this.again();
    };
  }

  private again(): void {
    this.drop();
    if (this.over) return;
    clearTimeout(this.retry);
    this.retry = setTimeout(() => this.open(), this.pause * (0.75 + Math.random() / 2));
    this.pause = Math.min(this.pause * 2, LONGEST_PAUSE);
  }

  private drop(): void {
    const socket = this.socket;
    this.socket = null;
    if (!socket) return;
    socket.onopen = null;
    socket.onmessage = null;
    socket.onclose = null;
    socket.close();
  }

  private tick(): void {
    const now = this.here();
    const slept = now - this.tickedAt > SLEPT;
    this.tickedAt = now;
    const silent = now - Math.max(this.heardAt, this.openedAt);
    if (now - this.heardAt > SILENCE) this.events.lost();
    if (this.over || !this.socket) return;
    const connecting = this.heardAt < this.openedAt;
    if (slept || silent > (connecting ? CONNECT_LIMIT : SILENCE)) this.again();
  }
}

function parse(data: unknown): FromHub | null {
  try {
    return JSON.parse(String(data)) as FromHub;
  } catch {
    return null;
  }
}
