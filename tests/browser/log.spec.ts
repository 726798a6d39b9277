/** LOG on the laptop: the filter acts as one types and is in the address, an entry opens with its proof, ten thousand lines. */
import { readFileSync } from "node:fs";
import type { Page } from "@playwright/test";
import { call, type Crew, expect, sendsReading, test } from "./crew.ts";
import { crowded, DESKS, LAPTOP } from "./fits.ts";

const count = (page: Page) => page.locator(".log-count");
const rows = (page: Page) => page.locator(".log-rows tbody tr[data-seq]");
const choose = (page: Page, name: string) => page.getByRole("combobox", { name });

/** A laptop that looks at the log of a reading that went to the cab and was acknowledged. */
async function looks(crew: Crew): Promise<Page> {
  const { ground, cab } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await cab.page.getByRole("button", { name: "GOT IT", exact: true }).click();
  await expect(ground.page.getByText("GOT IT PRESSED IN THE CAB", { exact: true })).toBeVisible();
  const { page } = await crew.joins("SUPERVISOR", "PN", null, LAPTOP);
  await page.getByRole("button", { name: "LOG", exact: true }).click();
  await expect(rows(page).first()).toBeVisible();
  return page;
}

test("the filter acts as one types, is counted, and goes off in one press", async ({ crew }) => {
  const page = await looks(crew);
  const { head } = await crew.hub.get("/api/log?before=0&limit=1");
  await expect(count(page)).toHaveText(`${head} of ${head} lines`);
  await page.keyboard.press("/");
  await page.keyboard.type("down 3");
  // The call, and that it was shown.
  await expect(count(page)).toHaveText(`2 of ${head} lines`);
  await expect(rows(page)).toHaveCount(2);
  await choose(page, "What").selectOption("call_shown");
  await expect(rows(page)).toHaveCount(1);
  await expect(rows(page)).toContainText("DOWN 3");
  await expect(rows(page)).toContainText("call on the screen");
  await page.getByRole("button", { name: "TAKE OFF THE FILTER" }).click();
  await expect(count(page)).toHaveText(`${head} of ${head} lines`);
  await expect(page.getByRole("searchbox", { name: "With the words" })).toHaveValue("");
  await choose(page, "Who").selectOption("OW");
  await page.getByRole("textbox", { name: "From" }).fill("25:00");
  await expect(page.getByText("“25:00” is no time of day. Write it as 10:05.")).toBeVisible();
  for (const by of await rows(page).locator(".log-by").allTextContents()) expect(by).toBe("OW");
});

test("what is looked at is in the address: a reload, a link, back and forward find it again", async ({ crew }) => {
  const page = await looks(crew);
  await choose(page, "Mark").selectOption("P-1");
  await page.getByRole("searchbox", { name: "With the words" }).fill("got it");
  await expect(rows(page)).toHaveCount(1);
  await expect(page).toHaveURL(/#log\?mark=P-1&words=got\+it$/);
  await rows(page).click();
  const entry = page.getByRole("complementary", { name: /^Entry \d+$/ });
  await expect(entry).toBeVisible();
  const address = page.url();
  await page.reload();
  await expect(rows(page)).toHaveCount(1);
  await expect(entry).toBeVisible();
  await expect(choose(page, "Mark")).toHaveValue("P-1");
  await page.goBack();
  await expect(entry).toHaveCount(0);
  await expect(rows(page)).toHaveCount(1);
  await page.goBack();
  await expect(choose(page, "Mark")).toHaveValue("");
  await page.goForward();
  await page.goForward();
  await expect(entry).toBeVisible();
  // The link in another window of the same laptop.
  const other = await page.context().newPage();
  await other.goto(address);
  await expect(rows(other)).toHaveCount(1);
  await expect(other.getByRole("complementary", { name: /^Entry \d+$/ })).toBeVisible();
});

test("a link to a day that the log does not have says so, and leads on", async ({ crew }) => {
  const page = await looks(crew);
  await page.goto("/#log?day=1999-01-01");
  await expect(page.locator(".log-head .warning")).toContainText("1999-01-01");
  await expect(choose(page, "Day")).toHaveValue("1999-01-01");
  await choose(page, "Day").selectOption({ index: 0 });
  await expect(rows(page).first()).toBeVisible();
  await expect(page.locator(".log-head .warning")).toHaveCount(0);
});

test("what does not come is said with the hub's words, and is asked again by one press", async ({ crew }) => {
  const page = await looks(crew);
  await page.route("**/api/log?**", (route) => route.abort());
  await page.reload();
  await expect(page.locator(".log-head .warning")).toBeVisible();
  await page.unroute("**/api/log?**");
  await page.getByRole("button", { name: "TRY AGAIN" }).click();
  await expect(rows(page).first()).toBeVisible();
  await expect(page.locator(".log-head .warning")).toHaveCount(0);
});

test("heads sort; what has nothing there comes last", async ({ crew }) => {
  const page = await looks(crew);
  const head = (name: string) => page.getByRole("columnheader", { name });
  await head("Mark").getByRole("button").click();
  await expect(head("Mark")).toHaveAttribute("aria-sort", "ascending");
  await expect(rows(page).first().locator(".log-mark")).toHaveText("P-1");
  await head("Mark").getByRole("button").click();
  await expect(head("Mark")).toHaveAttribute("aria-sort", "descending");
  await expect(rows(page).first().locator(".log-mark")).toHaveText("P-1");
  await head("No.").getByRole("button").click();
  await head("No.").getByRole("button").click();
  await expect(rows(page).first()).toHaveAttribute("data-seq", "1");
});

test("an entry opens in words with its proof, and can be copied on plain http", async ({ crew }) => {
  const page = await looks(crew);
  await choose(page, "What").selectOption("call_sent");
  await rows(page).first().click();
  const entry = page.getByRole("complementary", { name: /^Entry \d+$/ });
  await expect(entry).toContainText("EX-1 ← DOWN 3");
  await expect(entry).toContainText("call sent");
  const seq = Number(/seq=|Entry (\d+)/.exec((await entry.getAttribute("aria-label")) ?? "")?.[1]);
  const { hash, prev } = await crew.hub.get(`/api/log/${seq}`);
  await expect(entry.getByText(hash)).toBeVisible();
  await expect(entry.getByText(prev)).toBeVisible();
  await expect(entry.getByText("This page worked the hash out from the text: it is the same.")).toBeVisible();
  await expect(entry.getByText(`Entry ${seq - 1} has this hash: the chain holds here.`)).toBeVisible();
  await entry.getByRole("button", { name: "COPY", exact: true }).click();
  await expect(entry.getByText("Copied.")).toBeVisible();
  const words = page.getByRole("searchbox", { name: "With the words" });
  await words.click();
  await page.keyboard.press("ControlOrMeta+V");
  await expect(words).toHaveValue(new RegExp(`Entry ${seq}.*EX-1 ← DOWN 3.*${hash}`, "s"));
});

test("an entry whose text was changed on its way is named, and so is a chain that does not hold", async ({ crew }) => {
  const page = await looks(crew);
  const { head } = await crew.hub.get("/api/log?before=0&limit=1");
  const changes = async (seq: number, what: RegExp, to: string) => {
    const text = JSON.stringify(await crew.hub.get(`/api/log/${seq}`));
    expect(text).toMatch(what);
    await page.route(`**/api/log/${seq}`, (route) => route.fulfill({ body: text.replace(what, to) }));
  };
  await changes(head, /"person":"./, '"person":"#');
  await changes(head - 2, /"hash":"../, '"hash":"ff');
  await rows(page).first().click();
  await expect(page.getByText("This page gets another hash from the text.")).toBeVisible();
  await page.locator(`[data-seq="${head - 1}"]`).click();
  await expect(page.getByText(`ENTRY ${head - 2} HAS ANOTHER HASH.`)).toBeVisible();
});

test("the lines that fit go along as a file", async ({ crew }) => {
  const page = await looks(crew);
  await choose(page, "Mark").selectOption("P-1");
  const shown = await rows(page).count();
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "CSV OF THESE LINES" }).click(),
  ]);
  const text = readFileSync(await file.path(), "utf8");
  const [heads, ...lines] = text.trimEnd().split("\r\n");
  expect(heads).toBe("\ufeffseq,at,made_at,by,device,kind,machine,mark,verdict,english,spanish,portuguese");
  expect(lines).toHaveLength(shown);
  for (const line of lines) expect(line).toContain(",P-1,");
  expect(lines.some((line) => line.includes("EX-1 ← DOWN 3"))).toBe(true);
});

test("the keyboard searches, walks the lines, opens and shuts; letters can be taken off", async ({ crew }) => {
  const page = await looks(crew);
  const { head } = await crew.hub.get("/api/log?before=0&limit=1");
  const focused = () => page.evaluate(() => document.activeElement?.closest("tr")?.getAttribute("data-seq"));
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowDown");
  await expect.poll(focused).toBe(String(head - 1));
  await page.keyboard.press("Enter");
  await expect(page.getByRole("complementary", { name: `Entry ${head - 1}` })).toBeVisible();
  await page.keyboard.press("ArrowDown");
  await expect(page.getByRole("complementary", { name: `Entry ${head - 2}` })).toBeVisible();
  await page.keyboard.press("Escape");
  await expect(page.getByRole("complementary")).toHaveCount(0);
  await expect.poll(focused).toBe(String(head - 2));
  await page.keyboard.press("?");
  const panel = page.getByRole("dialog", { name: "Keys of the keyboard" });
  await expect(panel).toContainText("search");
  await panel.getByRole("button", { name: "Single letters act" }).click();
  await page.keyboard.press("Escape");
  await page.keyboard.press("/");
  await expect(page.getByRole("searchbox", { name: "With the words" })).not.toBeFocused();
});

test("lines that come while older ones are read wait above and say how many they are", async ({ crew }) => {
  const page = await looks(crew);
  await page.setViewportSize({ width: 1366, height: 480 });
  const { head } = await crew.hub.get("/api/log?before=0&limit=1");
  await page.locator(".log-rows").evaluate((box) => {
    box.scrollTop = 100;
  });
  const top = () => page.locator(".log-rows").evaluate((box) => box.scrollTop);
  await expect.poll(top).toBe(100);
  await crew.hub.say({ kind: "add_note", words: "the fence is up" });
  await page.getByRole("button", { name: "1 NEW LINE" }).click();
  await expect(rows(page).filter({ hasText: "the fence is up" })).toHaveCount(1);
  await expect(rows(page).first()).toHaveAttribute("data-seq", String(head + 1));
});

test("ten thousand lines: few of them are there, all are counted, filtered, sorted and reached", async ({ crew }) => {
  test.slow();
  const { page } = await crew.joins("SUPERVISOR", "PN", null, LAPTOP);
  const people = ["RT", "OW", "JM", "LG", "HF"];
  await crew.hub.longer(10_000, (index) => ({
    person: people[index % people.length] ?? "",
    body: { kind: "note_added", words: `note ${index}`, mark: `P-${1 + (index % 3)}` },
  }));
  const { head } = await crew.hub.get("/api/log?before=0&limit=1");
  expect(head).toBeGreaterThan(10_000);
  const all = head.toLocaleString("en-US");
  await page.reload();
  await page.getByRole("button", { name: "LOG", exact: true }).click();
  await expect(count(page)).toHaveText(`${all} of ${all} lines`);
  const there = () => rows(page).count();
  expect(await there()).toBeLessThan(100);
  await choose(page, "Who").selectOption("LG");
  await expect(count(page)).toHaveText(`2,000 of ${all} lines`);
  await page.getByRole("searchbox", { name: "With the words" }).fill("note 9998");
  await expect(count(page)).toHaveText(`1 of ${all} lines`);
  await page.getByRole("button", { name: "TAKE OFF THE FILTER" }).click();
  await page.getByRole("columnheader", { name: "No." }).getByRole("button").click();
  await expect(rows(page).first()).toHaveAttribute("data-seq", "1");
  await page.locator(".log-rows").evaluate((box) => {
    box.scrollTop = box.scrollHeight;
  });
  await expect(rows(page).last()).toHaveAttribute("data-seq", String(head));
  expect(await there()).toBeLessThan(100);
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "CSV OF THESE LINES" }).click(),
  ]);
  expect(readFileSync(await file.path(), "utf8").trimEnd().split("\r\n")).toHaveLength(head + 1);
  // Over all days the hub itself looks, by what is chosen.
  await choose(page, "Day").selectOption("every day");
  await choose(page, "Who").selectOption("JM");
  await expect(count(page)).toHaveText("2,000 lines");
});

test("nothing lies on anything else and nothing is cut off, on the desk, a phone and a phone on its side", async ({
  crew,
}) => {
  const page = await looks(crew);
  await rows(page).nth(2).click();
  await expect(page.getByText("This page worked the hash out from the text: it is the same.")).toBeVisible();
  await choose(page, "Verdict").selectOption("high");
  for (const language of ["English", "Español"]) {
    for (const size of DESKS) {
      await page.setViewportSize(size);
      expect(await crowded(page, ".middle"), `${language}, an entry, ${size.width} px`).toEqual([]);
    }
    await page.keyboard.press("Escape");
    await expect(page.getByRole("complementary")).toHaveCount(0);
    for (const size of [...DESKS, { width: 390, height: 844 }, { width: 360, height: 740 }, { width: 844, height: 390 }]) {
      await page.setViewportSize(size);
      expect(await crowded(page, ".middle"), `${language}, the table, ${size.width} px`).toEqual([]);
      // At least two lines are in sight.
      const room = await page.locator(".log-rows").evaluate((box) => box.clientHeight);
      expect(room, `${language}, ${size.width} px`).toBeGreaterThanOrEqual(130);
    }
    await page.setViewportSize(LAPTOP.viewport);
    if (language === "Español") break;
    await page.getByRole("button", { name: "SCREEN", exact: true }).click();
    await page.getByRole("button", { name: "Español" }).click();
    await page.getByRole("button", { name: "CERRAR", exact: true }).click();
    await rows(page).first().click();
    await expect(page.getByText("Esta página calculó la huella desde el texto: es la misma.")).toBeVisible();
  }
});

test("on a phone the filter and what is seldom needed stand behind one key, and an entry opens over the table", async ({
  crew,
}) => {
  const page = await looks(crew);
  await page.setViewportSize({ width: 390, height: 844 });
  await expect(page.getByRole("button", { name: "CSV OF THESE LINES" })).toBeHidden();
  await page.getByRole("button", { name: "FILTER", exact: true }).click();
  await choose(page, "Mark").selectOption("P-1");
  await expect(page.getByRole("button", { name: "CSV OF THESE LINES" })).toBeVisible();
  await page.getByRole("button", { name: "FILTER · 1 on" }).click();
  await rows(page).first().click();
  const panel = page.getByRole("dialog", { name: /^Entry \d+$/ });
  await expect(panel.getByText("This page worked the hash out from the text: it is the same.")).toBeVisible();
  await panel.getByRole("button", { name: "CLOSE" }).click();
  await expect(panel).toHaveCount(0);
});
