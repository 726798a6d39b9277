/** The edge of a cut and the line that nobody may cross: what is left is told, and a crossed line stops the machine. */
import type { Page } from "@playwright/test";
import { call, type Crew, expect, FOOT, hold, sendsReading, test } from "./crew.ts";

/** Opens EDGE, says on which side of the line the edge lies, types the tape and sends it. */
async function tapes(page: Page, side: "INSIDE" | "OVER", tape: string): Promise<void> {
  await page.getByRole("button", { name: "EDGE", exact: true }).click();
  const panel = page.getByRole("dialog", { name: /^Edge of the cut/ });
  await panel.getByRole("button", { name: side, exact: true }).click();
  for (const digit of tape) await panel.getByRole("button", { name: digit, exact: true }).click();
  await expect(panel.getByRole("textbox", { name: "Tape, ft" })).toHaveValue(tape);
  await panel.getByRole("button", { name: "SEND", exact: true }).click();
  await expect(panel).toHaveCount(0);
}

test("what is left to the line is told with every doubt taken off", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await tapes(ground.page, "INSIDE", "0.30");
  // Three doubts of 0.02 ft are 0.035 ft; 0.30 − 0.035 = 0.265 ft, rounded down to half-tenths (derived by hand).
  await expect(call(cab.page, "LINE 2½")).toBeVisible();
  await expect(cab.page.getByText("0.30 ft inside ± 0.035 ft")).toBeVisible();
});

test("a crossed line stops that machine and no other", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  const other = await crew.joins("OPERATOR", "LG", "EX-2");
  // A machine that is about and whose place nobody has said would have to be asked first.
  await crew.hub.say({ kind: "place_machine", machine: "EX-2", at: { x: 500 * FOOT, y: 500 * FOOT } });
  await expect(ground.page.getByRole("textbox", { name: "Type the rod" })).toBeVisible();
  await tapes(ground.page, "OVER", "0.10");
  await expect(cab.page.getByRole("alert").getByText("CREEK: line crossed", { exact: false })).toBeVisible();
  await expect(other.page.getByText("NO CALL", { exact: true })).toBeVisible();
});

const edges = async (crew: Crew): Promise<unknown[]> => (await crew.hub.get("/api/log?kind=edge_read")).lines;

test("EDGE within a keep-out asks the working machine first, and no edge goes out before somebody is in", async ({
  crew,
}) => {
  const { ground, cab } = await crew.digs();
  const page = ground.page;
  const press = (name: string) => page.getByRole("button", { name, exact: true }).click();
  const panel = page.getByRole("dialog", { name: /^Edge of the cut/ });
  await sendsReading(page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await press("READ AGAIN");
  // Opened while the machine is far off; it is placed at the mark before the tape is typed.
  await press("EDGE");
  await expect(panel).toBeVisible();
  await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 20 * FOOT, y: 30 * FOOT } });
  await expect(panel).toHaveCount(0);
  await expect(page.getByRole("button", { name: "ASK EX-1 TO COME IN" })).toBeVisible();
  await page.reload();
  await press("EDGE");
  await expect(page.getByRole("alert")).toContainText("P-1 lies within a keep-out: ask before you tape there.");
  await expect(panel).toHaveCount(0);
  await press("ASK EX-1 TO COME IN");
  await expect(cab.page.getByRole("alert")).toContainText("RT ASKS TO COME IN AT P-1");
  await expect(page.getByRole("button", { name: "EDGE", exact: true })).toHaveCount(0);
  expect(await edges(crew)).toEqual([]);
  await hold(cab.page, /^BUCKET DOWN/, async () => {
    await expect(page.getByText("BUCKET IS DOWN", { exact: false })).toBeVisible();
  });
  await press("I GO IN");
  await expect(page.getByText(/^YOU ARE IN AT EX-1/)).toBeVisible();
  await tapes(page, "INSIDE", "0.30");
  await expect.poll(async () => (await edges(crew)).length).toBe(1);
  // It is on its way; nothing is dug by it while somebody is in.
  await expect(cab.page.getByText("RT IS IN", { exact: false })).toBeVisible();
  await expect(cab.page.locator(".number")).toHaveCount(0);
  await hold(page, "I AM OUT", async () => {
    await expect(cab.page.getByText("RT IS IN", { exact: false })).toHaveCount(0);
  });
  await hold(cab.page, "RELEASE", async () => {
    await expect(call(cab.page, "LINE 2½")).toBeVisible();
  });
});
