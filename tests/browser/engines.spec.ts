/**
 * The main chain, a lost link, a held script, the outbox, a hold and what comes late, in each engine that a phone may have. The
 * other specs are Chromium's alone; these are the few that a different engine may break.
 */
import { test as base, expect } from "@playwright/test";
import { FOOT } from "./crew.ts";
import { until } from "./display.ts";
import { Hub } from "./hub.ts";
import { Link } from "./link.ts";
import { type Engine, host, type Screen, screen } from "./screen.ts";

const ENGINES: readonly Engine[] = ["Chromium", "Firefox", "WebKitGTK"];

/** Finds the key of this name: what it says of itself, or its own text without the small print on it. */
const KEY = (name: string) => `
  const named = (key) => key.getAttribute("aria-label") ??
    [...key.childNodes].filter((one) => one.nodeName !== "SMALL").map((one) => one.textContent).join("").trim();
  const keys = [...document.querySelectorAll("button")].filter((key) => named(key) === ${JSON.stringify(name)});
  const key = keys.find((one) => one.getClientRects().length > 0 && one.getAttribute("aria-disabled") !== "true");`;

/** A phone of the crew in some engine, with its own way to the hub. */
class Phone {
  constructor(
    readonly screen: Screen,
    readonly link: Link,
  ) {}

  /** Waits for a text anywhere on the page. */
  async sees(text: string): Promise<void> {
    await this.holds(`document.body.innerText.toUpperCase().includes(${JSON.stringify(text.toUpperCase())})`, text);
  }

  async seesNot(text: string): Promise<void> {
    const said = `document.body.innerText.toUpperCase().includes(${JSON.stringify(text.toUpperCase())})`;
    await this.holds(`!${said}`, `“${text}” to go`);
  }

  /** Waits for the call on a cab's screen to stand, or not to stand. */
  async shows(call: string, stands = true): Promise<void> {
    const there = `!!document.querySelector('[role=group][aria-label^="${call}."]')`;
    await this.holds(stands ? there : `!${there}`, `${call} to be ${stands ? "shown" : "gone"}`);
  }

  async press(name: string): Promise<void> {
    const [x, y] = await this.at(name);
    await this.screen.down(x, y);
    await this.screen.up();
  }

  /** The middle of a key, once it is there, can be pressed and has stopped moving. */
  async at(name: string): Promise<[number, number]> {
    const place = () =>
      this.screen.run<[number, number] | null>(`${KEY(name)}
        if (!key) return null;
        key.scrollIntoView({ block: "nearest" });
        const box = key.getBoundingClientRect();
        return [box.x + box.width / 2, box.y + box.height / 2];`);
    let last: [number, number] | null = null;
    await until(async () => {
      const before = last;
      last = await place();
      return last !== null && JSON.stringify(before) === JSON.stringify(last);
    }, `the key ${name}`);
    if (!last) throw new Error(`${name} is gone again`);
    return last;
  }

  private async holds(condition: string, what: string): Promise<void> {
    try {
      await until(() => this.screen.run<boolean>(`return ${condition};`), what);
    } catch (error) {
      throw new Error(`${error}\n${await this.screen.run<string>("return document.body.innerText;")}`);
    }
  }

  async comesIn(path: string, person: string): Promise<void> {
    await this.screen.open(this.link.base + path);
    await this.holds(`!!document.querySelector("input")`, "the form");
    const [x, y] = await this.screen.run<[number, number]>(`
      const box = document.querySelector("input").getBoundingClientRect();
      return [box.x + box.width / 2, box.y + box.height / 2];`);
    await this.screen.down(x, y);
    await this.screen.up();
    await this.screen.type(person);
    await this.press("IN");
    await this.sees("STOP");
  }

  async sends(reading: string): Promise<void> {
    for (const digit of reading) await this.press(digit);
    await this.press("SEND");
  }

  async close(): Promise<void> {
    await this.screen.close();
    this.link.close();
  }
}

interface Yard {
  hub: Hub;
  ground: Phone;
  cab: Phone;
}

const test = base.extend<{ yard: Yard; engine: Engine; refuses: RegExp | null }>({
  engine: ["Chromium", { option: true }],
  /** What no phone gets over its link until the test lets it through. */
  refuses: [null, { option: true }],
  yard: async ({ engine, refuses }, use) => {
    const hub = await Hub.onTheYard();
    const phones: Phone[] = [];
    const phone = async () => {
      const one = new Phone(await screen(engine), await Link.to(() => hub.port, host(engine)));
      one.link.refuses = refuses;
      phones.push(one);
      return one;
    };
    try {
      const cab = await phone();
      await cab.comesIn(await hub.code("operator", "EX-1"), "OW");
      const ground = await phone();
      await ground.comesIn(await hub.code("ground"), "RT");
      await hub.say({ kind: "set_up_laser", laser: "L1", benchmark: "BM-1", rod: "A", text: "5.00" });
      await hub.say({ kind: "shoot_check", set_up: "S1", benchmark: "BM-2", rod: "A", text: "3.48" });
      await hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 300 * FOOT, y: 300 * FOOT } });
      await ground.sees("ROD MUST READ");
      await use({ hub, ground, cab });
    } finally {
      for (const one of phones) await one.close();
      await hub.close();
    }
  },
});

/** A square of a picture that is all ink, px: of what the cab shows only a number's strokes and STOP hold any. */
const SQUARE = 20;

/** How many squares of a display's picture are all ink: with the number gone, its strokes are gone whatever stands there now. */
function solid(picture: Buffer): number {
  // The head of the X window dump format tells where its points begin, and how wide and high it is (XWDFile.h, version 7).
  const [head, wide, high, line, colours] = [0, 16, 20, 48, 76].map((at) => picture.readUInt32BE(at)) as [
    number,
    number,
    number,
    number,
    number,
  ];
  const ink = (x: number, y: number) => (picture[head + colours * 12 + y * line + x * 4 + 1] ?? 255) < 64;
  let found = 0;
  for (let top = 0; top + SQUARE <= high; top += SQUARE) {
    for (let left = 0; left + SQUARE <= wide; left += SQUARE) {
      let all = true;
      for (let i = 0; all && i < SQUARE * SQUARE; i++) {
        all = ink(left + (i % SQUARE), top + Math.floor(i / SQUARE));
      }
      if (all) found++;
    }
  }
  return found;
}

for (const engine of ENGINES) {
  test.describe(engine, () => {
    test.use({ engine });
    // Deadlines for a slow machine: a browser on a display without a graphics card takes its time.
    test.describe.configure({ timeout: 600_000 });

    test("a reading reaches the cab, GOT IT reaches the ground, STOP stops", async ({ yard: { ground, cab } }) => {
      await ground.sends("4.70");
      await cab.shows("DOWN 3");
      await ground.sees("ON THE CAB'S SCREEN");
      await cab.press("GOT IT");
      await ground.sees("GOT IT");
      await ground.press("STOP: every machine");
      await cab.sees("RT pressed STOP");
      await cab.shows("DOWN 3", false);
    });

    test("a lost link takes the number, tells the ground, and what lives comes back", async ({ yard: { ground, cab } }) => {
      await ground.sends("4.70");
      await cab.shows("DOWN 3");
      await ground.sees("ON THE CAB'S SCREEN");
      cab.link.cut();
      await cab.shows("DOWN 3", false);
      await cab.sees("NO LINK");
      await ground.sees("NOT ON THE CAB'S SCREEN – USE HANDS");
      cab.link.mend();
      await cab.shows("DOWN 3");
      await ground.seesNot("USE HANDS");
    });

    test("a script that is held: the number goes from the picture by itself, and the ground is told", async ({
      yard: { ground, cab },
    }) => {
      // Without a graphics card it paints nothing while a script holds it: PHONE-CHECK has a phone look, lines 7, 9 and 10.
      test.skip(engine === "WebKitGTK", "its compositor needs a graphics card");
      const without = solid(cab.screen.look());
      await ground.sends("4.70");
      await cab.shows("DOWN 3");
      await ground.sees("ON THE CAB'S SCREEN");
      await until(async () => solid(cab.screen.look()) > without + 10, "the strokes of the number to be painted");
      const shown = solid(cab.screen.look());
      // No line of this page's script runs for so long, whatever the test does meanwhile.
      await cab.screen.run(`setTimeout(() => {
        const until = performance.now() + 30000;
        while (performance.now() < until);
        window.ran = Date.now();
      });`);
      const told = ground.sees("NOT ON THE CAB'S SCREEN – USE HANDS");
      await until(
        async () => solid(cab.screen.look()) - without < (shown - without) / 4,
        "the number to go from the picture",
      );
      const gone = Date.now();
      await told;
      await until(() => cab.screen.run<boolean>("return !!window.ran;"), "the script to go on");
      const ran = await cab.screen.run<number>("return window.ran;");
      expect(ran, "the script ran on before the number went").toBeGreaterThan(gone);
      await cab.shows("DOWN 3");
    });

    test("a reading without a link outlives a load of the page, is asked about, and is sent once", async ({
      yard: { hub, ground, cab },
    }) => {
      ground.link.cut();
      await ground.sends("4.70");
      await ground.sees("1 NOT SENT – USE HANDS");
      ground.link.mend();
      await ground.screen.open(`${ground.link.base}/`);
      await ground.sees("Does it still hold?");
      await cab.shows("DOWN 3", false);
      await ground.press("SEND");
      await cab.shows("DOWN 3");
      const { lines } = await hub.get("/api/log?limit=200&kind=call_sent");
      expect(lines).toHaveLength(1);
    });

    test("a hold acts when it is full, and says when it was let go too soon", async ({ yard: { ground, cab } }) => {
      await ground.press("LASER");
      await ground.press("IT WAS BUMPED");
      await ground.sees("LET GO TOO SOON");
      const [x, y] = await ground.at("IT WAS BUMPED");
      await ground.screen.down(x, y);
      await cab.sees("PAUSE");
      await ground.screen.up();
    });

    test.describe("with what comes late broken off", () => {
      test.use({ refuses: /GET \/assets\/(seldom|late)-/ });

      test("it is asked for until it is here, and opens without a link", async ({ yard: { ground, cab } }) => {
        for (const { link, screen } of [cab, ground]) {
          // The first page works without it.
          await until(async () => link.refused > 3, "the late script to be asked for again and again");
          link.refuses = null;
          const came = `const files = performance.getEntriesByType("resource").filter((one) => one.decodedBodySize > 0);
            return ["seldom", "late"].every((name) => files.some((one) => one.name.includes("/" + name + "-")));`;
          await until(() => screen.run<boolean>(came), "the late script and its look");
        }
        // Fetched is not yet run: it is once what it shows is here.
        await ground.press("MARKS");
        await ground.sees("PLAN");
        await ground.press("READ");
        await cab.press("CAN'T");
        await cab.sees("WATER");
        await cab.press("CANCEL");
        cab.link.cut();
        ground.link.cut();
        await cab.sees("NO LINK");
        await ground.sees("No link to the hub");
        await ground.press("MARKS");
        await ground.press("PLAN");
        await ground.sees("LIST");
        await cab.press("CAN'T");
        await cab.sees("WATER");
      });
    });
  });
}
