/** A face is left and a buried line is near: what the cab and the ground person see, with two phones and the laptop at once. */
import { call, expect, sendsReading, test } from "./crew.ts";

/**
 * The pad is dug to 100.00 under a face whose toe lies at y = 25; the ground before the cut is level at 110.00, so the strip
 * under it is 10 ft wide. The gas line runs past P-3. Worked out by hand; invented.
 */
const CUTS = `
[excavation]
competent = ["PN"]

[[face]]
id = "BANK"
name = "north bank"
kind = "face"
toe = [["0 ft", "25 ft", "100 ft"], ["60 ft", "25 ft", "100 ft"]]
bank = "left"
ground = { flat = { elevation = "110 ft" } }
pins = ["C1-C2"]
target = "PAD"

[[utility]]
id = "MAIN"
kind = "gas"
points = [["31 ft", "0 ft"], ["31 ft", "40 ft"]]
outside = "2 in"
`;

test.use({ more: CUTS });

test("beside a buried line under a face that nobody inspected, the call says so", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await expect(cab.page.getByRole("note").getByText("HAND DIG", { exact: true })).toBeVisible();
  await expect(cab.page.getByText("FACE NOT INSPECTED", { exact: false })).toBeVisible();
});

test("what comes down clears the cab, and only the competent person's words bring the crew back", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  const board = await crew.joins("SUPERVISOR", "PN");
  await crew.confirms(board);
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  // READ gives way to what became of the call; from there the marks are one press away.
  await ground.page.getByRole("button", { name: "MARKS", exact: true }).click();
  await ground.page.getByRole("button", { name: "FACE", exact: true }).click();
  const panel = ground.page.getByRole("dialog", { name: /north bank/ });
  await panel.getByRole("button", { name: "CAME DOWN", exact: true }).click();
  // Everybody is told by that one press; how much came down is asked for afterwards.
  await expect(cab.page.getByRole("alert").filter({ hasText: "Track back" })).toBeVisible();
  for (const [field, feet] of [
    ["Along the face, ft", "16"],
    ["High, ft", "8"],
    ["Back, ft", "5"],
  ] as const) {
    await panel.getByLabel(field).fill(feet);
  }
  await panel.getByRole("button", { name: "SEND", exact: true }).click();
  // The number is gone, the whole screen says why; the ground phone says it too, on every page.
  const leave = cab.page.getByRole("alert").filter({ hasText: "Track back" });
  await expect(leave).toBeVisible();
  await expect(cab.page.locator(".number")).toHaveCount(0);
  await expect(ground.page.getByText("nobody within 10 ft of its toe", { exact: false }).first()).toBeVisible();
  await cab.page.getByRole("button", { name: "I AM AWAY", exact: true }).click();
  await expect(leave).toHaveCount(0);
  await expect(cab.page.getByText("nobody within 10 ft of its toe", { exact: false })).toBeVisible();
  // A reading there is kept and not called.
  await ground.page.getByRole("button", { name: "READ", exact: true }).click();
  await board.page.getByRole("button", { name: "FACES", exact: true }).click();
  await board.page.getByRole("button", { name: "INSPECT BANK", exact: true }).click();
  const form = board.page.getByRole("dialog", { name: /^Inspection of/ });
  await form.getByLabel("What you see", { exact: false }).fill("scarp, no new cracks");
  await form.getByRole("button", { name: "GOES IN WITH EFFORT", exact: true }).click();
  await form.getByRole("button", { name: "B", exact: true }).click();
  await form.getByLabel("Why people go back under it").fill("trimmed from the top down");
  await form.getByRole("button", { name: "SIGN", exact: true }).click();
  await expect(board.page.getByText("Inspected by PN", { exact: false })).toBeVisible();
  await expect(cab.page.getByText("nobody within 10 ft of its toe", { exact: false })).toHaveCount(0);
});

test("a phone without a link hides its number while the face is left on the others", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  cab.link.cut();
  await expect(cab.page.getByText("NO LINK", { exact: true })).toBeVisible();
  await crew.hub.say({ kind: "see_slough", zone: "BANK", length: "16", height: "8", back: "5" });
  await expect(ground.page.getByText("nobody within 10 ft of its toe", { exact: false }).first()).toBeVisible();
  await expect(cab.page.locator(".living")).toHaveCount(0);
  cab.link.mend();
  await expect(cab.page.getByRole("alert").filter({ hasText: "Track back" })).toBeVisible();
});

test("gas that a cab meets sends everybody away on every phone, 911 first and then its owner", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await cab.page.getByRole("button", { name: "CAN'T" }).click();
  await cab.page.getByRole("dialog").getByRole("button", { name: "PIPE", exact: true }).click();
  for (const page of [cab.page, ground.page]) {
    const away = page.getByRole("alert").filter({ hasText: "LINE STRUCK: MAIN" });
    await expect(away).toContainText("EVERYBODY AWAY NOW, UPWIND");
    await expect(away).toContainText("call 911, then its owner");
  }
  await expect(cab.page.locator(".number")).toHaveCount(0);
  await expect(cab.page.getByText("Nobody on the list is not nobody there: LOOK.")).toBeVisible();
});

test("BURIED says that the locate comes first, and takes STRUCK from anybody on foot", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await ground.page.getByRole("button", { name: "MARKS", exact: true }).click();
  await ground.page.getByRole("button", { name: "BURIED", exact: true }).click();
  const panel = ground.page.getByRole("dialog");
  await expect(panel).toContainText("The one-call locate comes before anything drawn here");
  await panel.getByRole("button", { name: "STRUCK", exact: true }).click();
  await expect(cab.page.getByRole("alert").filter({ hasText: "LINE STRUCK: MAIN" })).toBeVisible();
});

test("rain is said once for the whole site; cab and board show it until somebody says that it stopped", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  const board = await crew.joins("SUPERVISOR", "PN");
  const opens = async () => {
    await ground.page.getByRole("button", { name: "MARKS", exact: true }).click();
    await ground.page.getByRole("button", { name: "FACE", exact: true }).click();
    return ground.page.getByRole("dialog", { name: /north bank/ });
  };
  await (await opens()).getByRole("button", { name: "RAIN", exact: true }).click();
  for (const page of [cab.page, board.page]) {
    await expect(page.getByText("IT RAINS", { exact: false })).toBeVisible();
  }
  const panel = await opens();
  await expect(panel.getByText("INSPECTION DUE: rain", { exact: false })).toBeVisible();
  await board.page.getByRole("button", { name: "RAIN STOPPED", exact: true }).click();
  for (const page of [cab.page, board.page]) {
    await expect(page.getByText("IT RAINS", { exact: false })).toHaveCount(0);
  }
  // What stood open meanwhile has it too: nothing is left there to be stopped a second time.
  await expect(panel.getByRole("button", { name: "RAIN STOPPED", exact: true })).toHaveCount(0);
});

test("water that a cab met is pumped out on the board, and the board shows it no more", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  const board = await crew.joins("SUPERVISOR", "PN");
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await cab.page.getByRole("button", { name: "CAN'T" }).click();
  await cab.page.getByRole("dialog").getByRole("button", { name: "WATER", exact: true }).click();
  const pumped = board.page.getByRole("button", { name: /^PUMPED OUT / });
  await pumped.click();
  await expect(pumped).toHaveCount(0);
});
