/** A photo from the phone's camera: reduced and stripped there, kept while the link is gone, in DAY, REVIEW and on paper. */
import { createHash } from "node:crypto";
import type { Page } from "@playwright/test";
import { type Crew, expect, sendsReading, test } from "./crew.ts";

const sha256 = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");

/**
 * A picture as a camera writes it, 2400 by 1800, white above and black below, in a file that says where it was taken and
 * that it is to be turned: orientation 6, the first row is the right-hand side (Exif 2.3, 4.6.4 and 4.6.6).
 */
async function fromCamera(page: Page): Promise<Buffer> {
  const encoded = await page.evaluate(() => {
    const canvas = document.createElement("canvas");
    canvas.width = 2400;
    canvas.height = 1800;
    const brush = canvas.getContext("2d") as CanvasRenderingContext2D;
    brush.fillStyle = "#fff";
    brush.fillRect(0, 0, 2400, 900);
    brush.fillStyle = "#000";
    brush.fillRect(0, 900, 2400, 900);
    return canvas.toDataURL("image/jpeg", 0.9).split(",")[1] ?? "";
  });
  const plain = Buffer.from(encoded, "base64");
  const word = (value: number) => [value >> 8, value & 0xff];
  // Two tags in the first directory: orientation (0x0112), and where the GPS directory stands (0x8825); one tag in that.
  const first = [...word(2), ...word(0x0112), ...word(3), 0, 0, 0, 1, ...word(6), 0, 0];
  const gps = [...word(0x8825), ...word(4), 0, 0, 0, 1, 0, 0, 0, 38, 0, 0, 0, 0];
  const north = [...word(1), ...word(1), ...word(2), 0, 0, 0, 2, 0x4e, 0, 0, 0, 0, 0, 0, 0];
  const exif = [...Buffer.from("Exif\0\0MM\0*"), 0, 0, 0, 8, ...first, ...gps, ...north];
  const part = Buffer.from([0xff, 0xe1, ...word(exif.length + 2), ...exif]);
  return Buffer.concat([plain.subarray(0, 2), part, plain.subarray(2)]);
}

/** Takes it by the key whose name begins with PHOTO, and keeps it. */
async function takes(page: Page, buffer: Buffer, words: string): Promise<void> {
  await page.getByLabel(/^PHOTO/).setInputFiles({ name: "camera.jpg", mimeType: "image/jpeg", buffer });
  const panel = page.getByRole("dialog", { name: /^PHOTO/ });
  // 1800 by 2400 once it is turned; the longer side comes to 1600.
  await expect(panel.getByText(/^1200 × 1600, \d+ kB, without place, hour or maker\./)).toBeVisible();
  await panel.getByLabel("What it shows (may be empty)").fill(words);
  await panel.getByRole("button", { name: "KEEP IT", exact: true }).click();
  await expect(panel).toHaveCount(0);
}

/** What an address gives to this phone. */
async function bytesAt(page: Page, path: string): Promise<Buffer> {
  const bytes = await page.evaluate(async (from) => {
    const answer = await fetch(from);
    return Array.from(new Uint8Array(await answer.arrayBuffer()));
  }, path);
  return Buffer.from(bytes);
}

/** The entries of one kind. */
async function entries(crew: Crew, kind: string) {
  const { lines } = await crew.hub.get(`/api/log?limit=200&kind=${kind}`);
  const all = [];
  for (const line of lines) all.push((await crew.hub.get(`/api/log/${line.seq}`)).entry);
  return all;
}

test("a photo beside a reading is turned, reduced, stripped, and stands in DAY, REVIEW and on paper", async ({ crew }) => {
  const { ground } = await crew.digs();
  const board = await crew.joins("SUPERVISOR", "PN", null, { viewport: { width: 1366, height: 850 } });
  await sendsReading(ground.page, "4.70");
  await expect(ground.page.getByText("ON THE CAB'S SCREEN", { exact: true })).toBeVisible();
  const file = await fromCamera(ground.page);
  expect(file.includes("Exif")).toBe(true);
  await takes(ground.page, file, "scarp at the toe");
  await board.page.getByRole("button", { name: "DAY", exact: true }).click();
  const picture = board.page.getByRole("img", { name: /P-1 RT .* scarp at the toe/ });
  await expect(picture).toBeVisible();
  // The right-hand half is white, the left-hand half black, as the camera said.
  await picture.scrollIntoViewIfNeeded();
  const seen = await picture.evaluate(async (image) => {
    const shown = image as HTMLImageElement;
    await shown.decode();
    const canvas = document.createElement("canvas");
    const [width, height] = [shown.naturalWidth, shown.naturalHeight];
    canvas.width = width;
    canvas.height = height;
    const brush = canvas.getContext("2d") as CanvasRenderingContext2D;
    brush.drawImage(shown, 0, 0);
    const light = (x: number) => brush.getImageData(x, height / 2, 1, 1).data[0] ?? 0;
    return { width, height, left: light(width / 4), right: light((width * 3) / 4) };
  });
  expect([seen.width, seen.height]).toEqual([1200, 1600]);
  expect(seen.left).toBeLessThan(40);
  expect(seen.right).toBeGreaterThan(215);
  // The log names both files by their hashes, as another program works them out, and the reading.
  const [promised] = await entries(crew, "photo_promised");
  const [reading] = await entries(crew, "reading_taken");
  expect(promised.body).toMatchObject({ original: sha256(file), mark: "P-1", entry: reading.seq });
  const kept = await bytesAt(board.page, `/api/photos/${promised.body.sha256}`);
  expect(sha256(kept)).toBe(promised.body.sha256);
  expect(kept.includes("Exif")).toBe(false);
  const [added] = await entries(crew, "photo_added");
  expect(added.body).toMatchObject({ sha256: promised.body.sha256, bytes: kept.length });
  // In REVIEW beside what it goes with, and in the sheet itself, byte for byte.
  await board.page.getByRole("button", { name: "REVIEW", exact: true }).click();
  await expect(board.page.getByRole("img", { name: /scarp at the toe/ })).toBeVisible();
  const sheet = await bytesAt(board.page, "/api/report/day");
  const carried = /src="data:image\/jpeg;base64,([^"]+)"/.exec(sheet.toString());
  expect(sha256(Buffer.from(carried?.[1] ?? "", "base64"))).toBe(promised.body.sha256);
  await board.page.goto("/api/report/day");
  const printed = board.page.getByRole("img", { name: "P-1", exact: true });
  await expect(printed).toBeVisible();
  expect(await printed.evaluate((image) => (image as HTMLImageElement).naturalWidth)).toBe(1200);
});

test("a photo on a cut phone waits, outlives a reload, and comes once", async ({ crew }) => {
  const { ground } = await crew.digs();
  const board = await crew.joins("SUPERVISOR", "PN");
  await board.page.getByRole("button", { name: "DAY", exact: true }).click();
  await ground.page.getByRole("button", { name: "MARKS", exact: true }).click();
  await ground.page.getByRole("button", { name: /^PAINT · TIES/ }).click();
  await ground.page.getByRole("button", { name: "WORK", exact: true }).click();
  const file = await fromCamera(ground.page);
  ground.link.cut();
  await expect(ground.page.getByText("No link to the hub. Use hands.")).toBeVisible();
  await takes(ground.page, file, "water");
  await expect(ground.page.getByText("1 photo waits on this phone.")).toBeVisible();
  await expect(board.page.getByRole("img", { name: /water/ })).toHaveCount(0);
  ground.link.mend();
  await ground.page.reload();
  await expect(board.page.getByRole("img", { name: /water/ })).toBeVisible();
  await expect(ground.page.getByText("1 photo waits on this phone.")).toHaveCount(0);
  expect(await entries(crew, "photo_promised")).toHaveLength(1);
  expect(await entries(crew, "photo_added")).toHaveLength(1);
});

test("a photo that was promised and has not come is shown as owed, and is open until it is given up", async ({ crew }) => {
  const board = await crew.joins("SUPERVISOR", "PN");
  await crew.hub.say({ kind: "promise_photo", photo: "photo-0001", sha256: sha256(Buffer.from("")), mark: "P-1" });
  await board.page.getByRole("button", { name: "DAY", exact: true }).click();
  await expect(board.page.getByText(/A photo is still on .*'s phone/)).toBeVisible();
  await expect(board.page.locator(".owed")).toBeVisible();
  await board.page.getByRole("button", { name: /^GIVE UP/ }).click();
  const panel = board.page.getByRole("dialog", { name: /photo of/ });
  await panel.getByLabel("Why will it not come?").fill("the phone is lost");
  await panel.getByRole("button", { name: "GIVE UP", exact: true }).click();
  await expect(board.page.getByText(/not waited for any more: the phone is lost/)).toBeVisible();
  await expect(board.page.getByText(/A photo is still on .*'s phone/)).toHaveCount(0);
});

test("a file that is no picture is said to be none, and nothing is kept", async ({ crew }) => {
  const { ground } = await crew.digs();
  await ground.page.getByRole("button", { name: "MARKS", exact: true }).click();
  await ground.page.getByRole("button", { name: /^PAINT · TIES/ }).click();
  await ground.page.getByRole("button", { name: "WORK", exact: true }).click();
  const buffer = Buffer.from("no picture");
  await ground.page.getByLabel(/^PHOTO/).setInputFiles({ name: "notes.jpg", mimeType: "image/jpeg", buffer });
  const panel = ground.page.getByRole("dialog", { name: /^PHOTO/ });
  await expect(panel.getByText("This phone can't read that file as a picture.", { exact: false })).toBeVisible();
  await panel.getByRole("button", { name: "THROW AWAY", exact: true }).click();
  await expect(panel).toHaveCount(0);
  expect(await entries(crew, "photo_promised")).toHaveLength(0);
});

/** A face north of the pad. Invented. */
const BANK = `
[excavation]
competent = ["PN"]

[[face]]
id = "BANK"
name = "north bank"
kind = "face"
toe = [["0 ft", "25 ft", "100 ft"], ["60 ft", "25 ft", "100 ft"]]
bank = "left"
ground = { flat = { elevation = "110 ft" } }
target = "PAD"
`;

test.describe("at a face", () => {
  test.use({ more: BANK });

  test("a photo of a face stands beside it in FACES, and names it on paper", async ({ crew }) => {
    const { ground } = await crew.digs();
    const board = await crew.joins("SUPERVISOR", "PN");
    await ground.page.getByRole("button", { name: "MARKS", exact: true }).click();
    await ground.page.getByRole("button", { name: "FACE", exact: true }).click();
    await takes(ground.page, await fromCamera(ground.page), "new crack");
    await board.page.getByRole("button", { name: "FACES", exact: true }).click();
    const face = board.page.getByRole("region", { name: "north bank" });
    await expect(face.getByRole("img", { name: /BANK RT .* new crack/ })).toBeVisible();
    const sheet = await bytesAt(board.page, "/api/report/day");
    expect(sheet.toString()).toContain("face BANK");
  });
});
