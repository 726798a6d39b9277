/** The network between one phone and the hub: cut, frozen, whole again. */
import { createServer, connect, type Server, type Socket } from "node:net";
import type { AddressInfo } from "node:net";

export class Link {
  private cutOff = false;
  private frozen = false;
  /** What is asked for on such a path breaks its line in the middle. */
  refuses: RegExp | null = null;
  /** How often it has. */
  refused = 0;
  /** Each end with the end that hears it. */
  private readonly lines = new Map<Socket, Socket>();

  private constructor(
    private readonly server: Server,
    /** Where the phone's browser reaches the hub: a plain http name, as on the truck's Wi-Fi. */
    readonly base: string,
  ) {}

  /** `name` is a name that the browser takes for 127.0.0.1, or an address of this machine. */
  static async to(port: () => number, name = "truck.test"): Promise<Link> {
    const server = createServer();
    const address = /^[\d.]+$/.test(name) ? name : "127.0.0.1";
    await new Promise<void>((resolve) => server.listen(0, address, resolve));
    const link = new Link(server, `http://${name}:${(server.address() as AddressInfo).port}`);
    server.on("connection", (phone) => link.carry(phone, port()));
    return link;
  }

  private carry(phone: Socket, port: number): void {
    if (this.cutOff) {
      phone.destroy();
      return;
    }
    const hub = connect(port, "127.0.0.1");
    phone.on("data", (asked) => {
      if (!this.refuses?.test(asked.toString("latin1"))) return;
      this.refused++;
      phone.destroy();
    });
    if (this.frozen) phone.pause();
    for (const [from, to] of [
      [phone, hub],
      [hub, phone],
    ] as const) {
      this.lines.set(from, to);
      if (!this.frozen) from.pipe(to);
      // Either end may be gone at any moment: that is what this is for.
      from.on("error", () => to.destroy());
      from.on("close", () => {
        this.lines.delete(from);
        to.destroy();
      });
    }
  }

  /** Ends every line and lets no new one through. */
  cut(): void {
    this.cutOff = true;
    for (const line of this.lines.keys()) line.destroy();
  }

  /** Nothing passes and nothing ends: both sides believe in their lines. What is sent comes when it is whole again. */
  freeze(): void {
    this.frozen = true;
    for (const [from, to] of this.lines) from.unpipe(to).pause();
  }

  /** Whole again. */
  mend(): void {
    this.cutOff = false;
    this.frozen = false;
    for (const [from, to] of this.lines) from.pipe(to);
  }

  close(): void {
    this.cut();
    this.server.close();
  }
}
