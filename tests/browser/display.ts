/** A display in memory for one browser, and the programs that a test starts: until they are ready, until they are over. */
import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

export const XVFB = "/usr/bin/Xvfb";

/** A short phone: in the cab GOT IT takes no row of its own, so that all else stands in one place with and without a number. */
export const PHONE = { width: 390, height: 660 };

/** Waits for a line of a program that says that it is ready. */
export function says(child: ChildProcess, ready: RegExp): Promise<RegExpExecArray> {
  let said = "";
  return new Promise((resolve, reject) => {
    const hear = (bytes: Buffer) => {
      said += bytes.toString();
      const found = ready.exec(said);
      if (found) resolve(found);
    };
    for (const stream of child.stdio.slice(1)) stream?.on("data", hear);
    child.on("error", reject);
    child.on("exit", (code) => reject(new Error(`${child.spawnfile} ended with ${code}:\n${said}`)));
  });
}

async function ends(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const over = new Promise((resolve) => child.once("exit", resolve));
  child.kill("SIGKILL");
  await over;
}

/** A display in memory: a file holds what is painted on it. */
export class Display {
  private readonly programs: ChildProcess[] = [];

  private constructor(
    private readonly child: ChildProcess,
    private readonly folder: string,
    readonly env: NodeJS.ProcessEnv,
  ) {}

  static async start(): Promise<Display> {
    const folder = mkdtempSync(join(tmpdir(), "rodcall-display-"));
    const size = `${PHONE.width + 110}x${PHONE.height + 160}x24`;
    const child = spawn(XVFB, ["-displayfd", "3", "-screen", "0", size, "-fbdir", folder, "-nolisten", "tcp"], {
      stdio: ["ignore", "ignore", "pipe", "pipe"],
    });
    const [, number] = await says(child, /^(\d+)\n/m);
    // A Wayland display that is named, though empty, is looked for.
    const { WAYLAND_DISPLAY: _none, ...env } = process.env;
    return new Display(child, folder, { ...env, DISPLAY: `:${number}`, HOME: folder });
  }

  /** Starts a program that draws here, and ends with the display. */
  runs(program: string, args: string[], env: NodeJS.ProcessEnv = {}): ChildProcess {
    const child = spawn(program, args, { env: { ...this.env, ...env }, stdio: ["ignore", "pipe", "pipe"] });
    // A pipe that nobody reads fills, and holds the program.
    for (const stream of [child.stdout, child.stderr]) stream?.resume();
    this.programs.push(child);
    return child;
  }

  look(): Buffer {
    return readFileSync(join(this.folder, "Xvfb_screen0"));
  }

  get home(): string {
    return this.folder;
  }

  async close(): Promise<void> {
    for (const child of [...this.programs, this.child]) await ends(child);
    rmSync(this.folder, { recursive: true, force: true });
  }
}

/** Waits for something to hold; says what it waited for when it never does. */
export async function until(holds: () => Promise<boolean>, what = "the browser to be ready", limit = 60_000): Promise<void> {
  const end = Date.now() + limit;
  while (!(await holds())) {
    if (Date.now() > end) throw new Error(`Waited in vain for ${what}`);
    await new Promise((next) => setTimeout(next, 100));
  }
}
