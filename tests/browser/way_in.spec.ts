/** Into a keep-out and out again, with the ground person's phone, the cab and the laptop at once, and one link cut. */
import { call, expect, hold, sendsReading, test } from "./crew.ts";

/** A foot in tenth-micrometres (NIST Handbook 44: 1 ft = 0.3048 m exactly). */
const FOOT = 3_048_000;
const DOWN = "BUCKET DOWN · LEVER LOCKED";

test("ask, bucket down, in, out, release: each page says who may be in, and nothing is released before", async ({
  crew,
}) => {
  const { ground, cab } = await crew.digs();
  const board = await crew.joins("SUPERVISOR", "PN");
  await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 20 * FOOT, y: 30 * FOOT } });
  // P-1 lies within the reach: the keypad gives way to asking.
  await expect(ground.page.getByText("P-1 lies within the keep-out of EX-1.")).toBeVisible();
  await expect(ground.page.getByRole("textbox", { name: "Type the rod" })).toHaveCount(0);
  await ground.page.getByRole("button", { name: "ASK EX-1 TO COME IN" }).click();
  await expect(ground.page.getByText("STAY OUT", { exact: true })).toBeVisible();
  const stop = cab.page.getByRole("alert").filter({ hasText: "RT ASKS TO COME IN AT P-1" });
  await expect(stop).toBeVisible();
  await hold(cab.page, DOWN, async () => {
    await expect(ground.page.getByText("BUCKET IS DOWN. GET EYE CONTACT. PRESS IN AS YOU GO IN.")).toBeVisible();
  });
  await ground.page.getByRole("button", { name: "I GO IN", exact: true }).click();
  await expect(ground.page.getByText(/^YOU ARE IN AT EX-1/)).toBeVisible();
  await expect(cab.page.getByText("RT IS IN", { exact: false })).toBeVisible();
  await expect(board.page.getByText("IN · EX-1 · P-1", { exact: false })).toBeVisible();
  // A reading from within: the number is there, the cab stays on STOP.
  await sendsReading(ground.page, "4.70");
  await expect(cab.page.getByText("RT IS IN", { exact: false })).toBeVisible();
  await expect(cab.page.locator(".number")).toHaveCount(0);
  await hold(cab.page, "RELEASE", async () => {
    await expect(cab.page.getByText("NOT RELEASED: RT IN. Look, and wait for OUT.")).toBeVisible();
  });
  await expect(cab.page.getByText("RT IS IN", { exact: false })).toBeVisible();
  await hold(ground.page, "I AM OUT", async () => {
    await expect(cab.page.getByText("NOBODY SAYS THEY ARE IN – LOOK BEFORE YOU HOLD RELEASE")).toBeVisible();
  });
  await hold(cab.page, "RELEASE", async () => {
    await expect(call(cab.page, "DOWN 3")).toBeVisible();
  });
});

test("nobody answers, then the operator says no: the phone says STAY OUT all the while", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  const board = await crew.joins("SUPERVISOR", "PN");
  await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 20 * FOOT, y: 30 * FOOT } });
  await ground.page.getByRole("button", { name: "ASK EX-1 TO COME IN" }).click();
  await expect(ground.page.getByText("NOT ANSWERED – STAY OUT – GET EYE CONTACT")).toBeVisible();
  await expect(board.page.getByText("RT asks at EX-1: no answer.")).toBeVisible();
  await cab.page.getByRole("button", { name: "NO RT" }).click();
  await expect(ground.page.getByText("THE CAB SAYS NO – STAY OUT")).toBeVisible();
});

test("the phone's link is cut while its person is in: the cab stays on STOP until a witness has looked", async ({
  crew,
}) => {
  const { ground, cab } = await crew.digs();
  const board = await crew.joins("SUPERVISOR", "PN");
  await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 20 * FOOT, y: 30 * FOOT } });
  await ground.page.getByRole("button", { name: "ASK EX-1 TO COME IN" }).click();
  await hold(cab.page, DOWN, async () => {
    await expect(ground.page.getByText("BUCKET IS DOWN", { exact: false })).toBeVisible();
  });
  await ground.page.getByRole("button", { name: "I GO IN", exact: true }).click();
  await expect(cab.page.getByText("RT IS IN", { exact: false })).toBeVisible();
  ground.link.cut();
  await expect(cab.page.getByText("NO LINK", { exact: false }).first()).toBeVisible();
  await expect(board.page.getByText("RT is IN at EX-1, no link. Look.")).toBeVisible();
  await hold(cab.page, "RELEASE", async () => {
    await expect(cab.page.getByText("NOT RELEASED: RT IN. Look, and wait for OUT.")).toBeVisible();
  });
  await board.page.getByRole("button", { name: "SAW OUT RT" }).first().click();
  const panel = board.page.getByRole("dialog");
  await panel.getByLabel("What did you see? It goes into the log.").fill("stands by the truck");
  await panel.getByRole("button", { name: "SAW OUT", exact: true }).click();
  await expect(cab.page.getByText("NOBODY SAYS THEY ARE IN – LOOK BEFORE YOU HOLD RELEASE")).toBeVisible();
});

test("whoever was witnessed out reads by whom on their own phone, and who is still in stops the machine again", async ({
  crew,
}) => {
  const board = await crew.joins("SUPERVISOR", "PN");
  const { ground, cab } = await crew.digs();
  await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 20 * FOOT, y: 30 * FOOT } });
  await ground.page.getByRole("button", { name: "ASK EX-1 TO COME IN" }).click();
  await hold(cab.page, DOWN, async () => {
    await expect(ground.page.getByText("BUCKET IS DOWN", { exact: false })).toBeVisible();
  });
  await ground.page.getByRole("button", { name: "I GO IN", exact: true }).click();
  await board.page.getByRole("button", { name: "SAW OUT RT" }).first().click();
  const panel = board.page.getByRole("dialog");
  await panel.getByLabel("What did you see? It goes into the log.").fill("stands by the truck");
  await panel.getByRole("button", { name: "SAW OUT", exact: true }).click();
  await expect(ground.page.getByText("PN SAYS THAT YOU ARE OUT AT EX-1. ARE YOU?")).toBeVisible();
  await expect(ground.page.getByText("“stands by the truck”")).toBeVisible();
  await hold(cab.page, "RELEASE", async () => {
    await expect(cab.page.getByText("NO CALL", { exact: true })).toBeVisible();
  });
  // It stands over a reload until it is answered.
  await ground.page.reload();
  await ground.page.getByRole("button", { name: "I AM STILL IN" }).click();
  await expect(cab.page.getByText("RT IS IN – YOU DID NOT AGREE", { exact: false })).toBeVisible();
  await expect(ground.page.getByText("GET OUT", { exact: false })).toBeVisible();
});

test("a group is asked for with its number and comes out whole; who said NOT ENTERING still asks in one press", async ({
  crew,
}) => {
  const { ground, cab } = await crew.digs();
  await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 20 * FOOT, y: 30 * FOOT } });
  await ground.page.getByRole("button", { name: "NOT ENTERING", exact: false }).click();
  await expect(ground.page.getByRole("textbox", { name: "Type the rod" })).toBeVisible();
  await ground.page.getByRole("button", { name: "ASK EX-1 TO COME IN" }).click();
  await expect(cab.page.getByText("RT ASKS TO COME IN AT P-1", { exact: false })).toBeVisible();
  await ground.page.getByRole("button", { name: "I AM NOT GOING IN" }).click();
  // Placed anew, what was said of the old place is not believed any more.
  await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 22 * FOOT, y: 30 * FOOT } });
  await ground.page.getByRole("button", { name: "one more comes along" }).click();
  await ground.page.getByRole("button", { name: "one more comes along" }).click();
  await ground.page.getByRole("button", { name: "ASK EX-1 TO COME IN" }).click();
  await expect(cab.page.getByText("RT + 2 ASKS TO COME IN", { exact: false })).toBeVisible();
  await hold(cab.page, DOWN, async () => {
    await expect(ground.page.getByText("BUCKET IS DOWN", { exact: false })).toBeVisible();
  });
  await ground.page.getByRole("button", { name: "I GO IN", exact: true }).click();
  await expect(cab.page.getByText("RT + 2 IS IN", { exact: false })).toBeVisible();
  await hold(ground.page, "ALL 3 ARE OUT", async () => {
    await expect(cab.page.getByText("RT + 2 IS IN", { exact: false })).toHaveCount(0);
  });
});
