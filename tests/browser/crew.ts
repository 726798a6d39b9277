/** The crew for a test: a hub on the yard, and as many phones as it takes, each with its own network. */
import { type BrowserContextOptions, expect, type Page, test as base } from "@playwright/test";
import { Hub } from "./hub.ts";
import { Link } from "./link.ts";

export { expect } from "@playwright/test";

/** A phone of the crew: its page, and its way to the hub. */
export interface Phone {
  page: Page;
  link: Link;
}

/** A foot in tenth-micrometres (NIST Handbook 44: 1 ft = 0.3048 m exactly). */
export const FOOT = 3_048_000;

export type Role = "GROUND" | "OPERATOR" | "SUPERVISOR" | "VISITOR";

export class Crew {
  private readonly links: Link[] = [];

  constructor(
    readonly hub: Hub,
    private readonly browse: (options: BrowserContextOptions) => Promise<Page>,
  ) {}

  /** A phone that has scanned the code and sees the form. */
  async scans(role: Role, machine: string | null = null, options: BrowserContextOptions = {}): Promise<Phone> {
    const link = await Link.to(() => this.hub.port);
    this.links.push(link);
    const page = await this.browse({ baseURL: link.base, ...options });
    await page.goto(await this.hub.code(role.toLowerCase(), machine));
    return { page, link };
  }

  /** A phone that has come in as its owner does: name, role, IN. */
  async joins(
    role: Role,
    person: string,
    machine: string | null = null,
    options: BrowserContextOptions = {},
  ): Promise<Phone> {
    const phone = await this.scans(role, machine, options);
    await comeIn(phone.page, role, person);
    return phone;
  }

  /** The ground person's phone and the screen of EX-1, with a laser that two benchmarks prove. */
  async digs(options: BrowserContextOptions = {}): Promise<{ ground: Phone; cab: Phone }> {
    const cab = await this.joins("OPERATOR", "OW", "EX-1", options);
    const ground = await this.joins("GROUND", "RT", null, options);
    await this.provesLaser();
    // Far from every mark: nobody is in its swing, and no reminder covers a number.
    await this.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 300 * FOOT, y: 300 * FOOT } });
    await expect(cab.page.getByText("NO CALL", { exact: true })).toBeVisible();
    await expect(ground.page.getByText("ROD MUST READ")).toBeVisible();
    return { ground, cab };
  }

  /** 100.00 + 5.00 = HI 105.00 ft; 105.00 − 3.48 = 101.52 ft, as BM-2 is said to be (elevation + backsight). */
  async provesLaser(): Promise<void> {
    await this.hub.say({ kind: "set_up_laser", laser: "L1", benchmark: "BM-1", rod: "A", text: "5.00" });
    await this.hub.say({ kind: "shoot_check", set_up: "S1", benchmark: "BM-2", rod: "A", text: "3.48" });
  }

  /** Whoever sits at the laptop has looked whose phone it is. */
  async confirms({ page }: Phone): Promise<void> {
    const me = await page.evaluate(async () => (await fetch("/api/me")).json());
    await this.hub.say({ kind: "confirm_person", device: me.device, person: me.person });
  }

  /** A page of nobody's, for looking at pictures. */
  async page(): Promise<Page> {
    return this.browse({});
  }

  close(): void {
    for (const link of this.links) link.close();
  }
}

/** Fills the form as a person does and waits for the page of the role. */
export async function comeIn(page: Page, role: Role, person: string): Promise<void> {
  await page.getByLabel("Name or initials").fill(person);
  const choice = page.getByRole("button", { name: role, exact: true });
  const enter = page.getByRole("button", { name: "IN", exact: true });
  await expect(enter).toBeVisible();
  if (await choice.isVisible()) {
    await choice.click();
    await expect(choice).toHaveAttribute("aria-pressed", "true");
  }
  await enter.click();
  await expect(page.getByRole("button", { name: "STOP: every machine" }).first()).toBeVisible();
}

/** Presses the digits of a reading on the ground page's keypad. */
export async function typeRod(page: Page, reading: string): Promise<void> {
  for (const digit of reading) await page.getByRole("button", { name: digit, exact: true }).click();
  await expect(page.getByRole("textbox", { name: "Type the rod" })).toHaveValue(reading);
}

/** Types a reading and sends it. */
export async function sendsReading(page: Page, reading: string): Promise<void> {
  await typeRod(page, reading);
  await page.getByRole("button", { name: "SEND", exact: true }).click();
}

/** The call on a cab's screen, by the name that its drawing has for a reader of the screen: "DOWN 3". */
export function call(page: Page, line: string) {
  return page.getByRole("group", { name: new RegExp(`^${line}\\.`) });
}

/** Keeps a key pressed until what it does has happened. */
export async function hold(page: Page, name: string | RegExp, done: () => Promise<void>): Promise<void> {
  await page.getByRole("button", { name }).hover();
  await page.mouse.down();
  await done();
  await page.mouse.up();
}

export const test = base.extend<{ crew: Crew; more: string }>({
  /** What a test adds to the yard's site file. */
  more: ["", { option: true }],
  crew: async ({ browser, more }, use) => {
    const hub = await Hub.onTheYard(more);
    const contexts: { close(): Promise<void> }[] = [];
    const crew = new Crew(hub, async (options) => {
      const context = await browser.newContext(options);
      contexts.push(context);
      const page = await context.newPage();
      return page;
    });
    await use(crew);
    for (const context of contexts) await context.close();
    crew.close();
    await hub.close();
  },
});
