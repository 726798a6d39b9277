/** The real hub in a folder of its own: started, spoken to, killed, started again. */
import { type ChildProcess, spawn } from "node:child_process";
import { appendFileSync, cpSync, existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { type Told, writesOn } from "./long_log.ts";

const HERE = import.meta.dirname;
/** The binary under test; `cargo test` names it. */
export const BINARY = process.env.RODCALL_BINARY ?? join(HERE, "../../target/debug/rodcall");

/** A command of the wire, as the hub takes it. */
export type Command = { kind: string } & Record<string, unknown>;

/** The word that the terminal says when the hub can be reached: its address, and the laptop's own link. */
const READY = /^rodcall ready http:\/\/127\.0\.0\.1:(\d+) own=(\S+)/m;

export class Hub {
  port = 0;
  private child: ChildProcess | null = null;
  private said = "";
  private cookie = "";
  private keys = 0;
  private readonly folder = mkdtempSync(join(tmpdir(), "rodcall-browser-"));

  /** A hub on the yard's site file, with more of it when a test brings it. */
  static async onTheYard(more = ""): Promise<Hub> {
    if (!existsSync(BINARY)) {
      throw new Error(`${BINARY} is not there: run \`cargo test -p rodcall --test browser\`, which builds it.`);
    }
    const hub = new Hub();
    cpSync(join(HERE, "yard.toml"), join(hub.folder, "site.toml"));
    appendFileSync(join(hub.folder, "site.toml"), more);
    const own = await hub.start();
    const answer = await fetch(own, { redirect: "manual" });
    hub.cookie = answer.headers.getSetCookie().map((one) => one.split(";")[0]).join("; ");
    return hub;
  }

  /** Starts it, on the port that it had before; gives the laptop's own link. */
  async start(): Promise<string> {
    this.said = "";
    const site = join(this.folder, "site.toml");
    const child = spawn(
      BINARY,
      ["serve", "--site", site, "--data", join(this.folder, "data"), "--listen", `127.0.0.1:${this.port}`],
      { stdio: ["ignore", "pipe", "pipe"] },
    );
    this.child = child;
    const ready = await new Promise<RegExpExecArray>((resolve, reject) => {
      const hear = (bytes: Buffer) => {
        this.said += bytes.toString();
        const found = READY.exec(this.said);
        if (found) resolve(found);
      };
      child.stdout?.on("data", hear);
      child.stderr?.on("data", hear);
      child.on("error", reject);
      child.on("exit", (code) => reject(new Error(`The hub ended with ${code}:\n${this.said}`)));
    });
    this.port = Number(ready[1]);
    return ready[2] ?? "";
  }

  /** Its log goes on by so many entries, which it takes in when it starts; it is down meanwhile. */
  async longer(many: number, told: (index: number) => Told): Promise<void> {
    await this.kill();
    writesOn(join(this.folder, "data"), many, told);
    await this.start();
  }

  /** The hub dies without a last word. */
  async kill(): Promise<void> {
    const child = this.child;
    this.child = null;
    if (!child || child.exitCode !== null) return;
    const over = new Promise((resolve) => child.once("exit", resolve));
    child.kill("SIGKILL");
    await over;
  }

  async close(): Promise<void> {
    await this.kill();
    rmSync(this.folder, { recursive: true, force: true });
  }

  /** Reads as the laptop's own browser does. */
  // biome-ignore lint/suspicious/noExplicitAny: the wire is checked where it is made.
  async get(path: string): Promise<any> {
    const answer = await fetch(`http://127.0.0.1:${this.port}${path}`, { headers: { cookie: this.cookie } });
    if (!answer.ok) throw new Error(`${path}: ${answer.status} ${await answer.text()}`);
    return answer.json();
  }

  /** Says something as the laptop's own browser does: a supervisor. Gives the numbers of its entries. */
  async say(command: Command): Promise<{ first: number; last: number }> {
    const answer = await fetch(`http://127.0.0.1:${this.port}/api/say`, {
      method: "POST",
      headers: { cookie: this.cookie, "content-type": "application/json" },
      body: JSON.stringify({ key: `laptop-key-${this.keys++}`, made_at: Date.now(), command }),
    });
    if (!answer.ok) throw new Error(`${command.kind}: ${answer.status} ${await answer.text()}`);
    return answer.json();
  }

  /** Lets somebody in without a page, as a phone of the crew would. */
  async letsIn(person: string, role: string): Promise<void> {
    const code = (await this.code(role)).split("/").at(-1);
    const answer = await fetch(`http://127.0.0.1:${this.port}/api/join`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ code, person, roles: [role], language: "english", unit: "tenths", same_person: true }),
    });
    if (!answer.ok) throw new Error(`${person}: ${answer.status} ${await answer.text()}`);
  }

  /** Makes a page the laptop's own. */
  async signsIn(page: Page): Promise<void> {
    const cookies = this.cookie.split("; ").map((one) => {
      const [name = "", ...value] = one.split("=");
      return { name, value: value.join("="), url: `http://127.0.0.1:${this.port}` };
    });
    await page.context().addCookies(cookies);
  }

  /** The path that a code of the tailgate leads to: the machine's, or the one that lets these roles in. */
  async code(role: string, machine: string | null = null): Promise<string> {
    const { codes } = await this.get("/api/codes");
    const fits = (one: { roles: string[]; machine: string | null }) =>
      one.roles.includes(role) && one.machine === machine;
    const found = codes.find(fits);
    if (!found) throw new Error(`No code for ${role} ${machine ?? ""}: ${JSON.stringify(codes)}`);
    return new URL(found.url).pathname;
  }
}
