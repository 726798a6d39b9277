/** The same call for everyone: in Spanish, in inches and millimetres, at dusk, by keyboard alone. */
import type { Page } from "@playwright/test";
import { call, expect, sendsReading, test } from "./crew.ts";

/** Chooses one of the screen's settings, by the words on it. */
async function sets(page: Page, ...names: string[]): Promise<void> {
  await page.getByRole("button", { name: /^(SCREEN|PANTALLA)$/ }).click();
  const panel = page.getByRole("dialog");
  for (const name of names) {
    await panel.getByRole("button", { name, exact: true }).click();
    await expect(panel.getByRole("button", { name, exact: true })).toHaveAttribute("aria-pressed", "true");
  }
  await panel.getByRole("button", { name: /^(CLOSE|CERRAR)$/ }).click();
}

test("a Spanish cab reads BAJE, PARE and its keys in Spanish; the ground person stays in English", async ({
  crew,
}) => {
  const { ground, cab } = await crew.digs();
  await sets(cab.page, "Español");
  await expect(cab.page.locator("html")).toHaveAttribute("lang", "es");
  await sendsReading(ground.page, "4.70");
  await expect(call(cab.page, "BAJE 3")).toBeVisible();
  await cab.page.getByRole("button", { name: "ENTENDIDO" }).click();
  await expect(ground.page.getByText("GOT IT PRESSED IN THE CAB", { exact: true })).toBeVisible();
  await cab.page.getByRole("button", { name: "PARE: todas las máquinas" }).click();
  await expect(cab.page.getByRole("alert")).toContainText("PARE");
  await expect(cab.page.getByRole("alert")).toContainText("TODAS LAS MÁQUINAS");
  await expect(ground.page.getByText("EX-1 STOPPED by OW").first()).toBeVisible();
});

test("a phone that is set to Spanish is met in Spanish", async ({ crew }) => {
  const { page } = await crew.scans("GROUND", null, { locale: "es-MX" });
  await expect(page.getByRole("heading", { name: "Entrar · Mill yard" })).toBeVisible();
  await page.getByLabel("Nombre o iniciales").fill("LM");
  const choice = page.getByRole("button", { name: "PISO", exact: true });
  if (await choice.isVisible()) await choice.click();
  await page.getByRole("button", { name: "ENTRAR", exact: true }).click();
  await expect(page.getByRole("button", { name: "LEER" })).toBeVisible();
});

test("the same call in feet and inches and in millimetres", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  await sets(cab.page, "Feet and inches");
  await sendsReading(ground.page, "4.70");
  // 0.30 ft is 3.6 in, 3 5/8 to the eighth (0.30 × 12 = 3.6; NIST Handbook 44: 1 ft = 12 in).
  await expect(call(cab.page, "DOWN 3 5/8 IN")).toBeVisible();
  await sets(cab.page, "Millimetres");
  // 0.30 × 304.8 = 91.44 mm.
  await expect(call(cab.page, "DOWN 91 MM")).toBeVisible();
});

test("at dusk black and white change places, and stay so after a reload", async ({ crew }) => {
  const { cab } = await crew.digs();
  const paper = () => cab.page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  expect(await paper()).toBe("rgb(255, 255, 255)");
  await sets(cab.page, "DUSK");
  expect(await paper()).toBe("rgb(0, 0, 0)");
  await cab.page.reload();
  await expect(cab.page.getByText("NO CALL", { exact: true })).toBeVisible();
  expect(await paper()).toBe("rgb(0, 0, 0)");
});

/** Presses Tab until the focus is on what is asked for, as one without a touch screen does. */
async function tabsTo(page: Page, name: string): Promise<void> {
  const wanted = page.getByRole("button", { name, exact: true });
  for (let presses = 0; presses < 60; presses++) {
    if (await wanted.evaluate((one) => one === document.activeElement)) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`Tab never reaches ${name}`);
}

test("a reading is sent, seen and stopped by keyboard alone", async ({ crew }) => {
  const { ground, cab } = await crew.digs();
  for (const digit of "4.70") {
    await tabsTo(ground.page, digit);
    await ground.page.keyboard.press("Enter");
  }
  await tabsTo(ground.page, "SEND");
  await ground.page.keyboard.press("Enter");
  await expect(call(cab.page, "DOWN 3")).toBeVisible();
  await tabsTo(cab.page, "GOT IT");
  await cab.page.keyboard.press("Space");
  await expect(ground.page.getByText("GOT IT PRESSED IN THE CAB", { exact: true })).toBeVisible();
  await tabsTo(ground.page, "STOP: every machine");
  await ground.page.keyboard.press("Enter");
  await expect(cab.page.getByRole("alert")).toContainText("RT pressed STOP");
});

test("a panel takes the focus, keeps it, and gives it back on Escape", async ({ crew }) => {
  const { cab } = await crew.digs();
  await tabsTo(cab.page, "CAN'T");
  await cab.page.keyboard.press("Enter");
  const panel = cab.page.getByRole("dialog", { name: "CAN'T" });
  await expect(panel).toBeVisible();
  for (let presses = 0; presses < 12; presses++) {
    await cab.page.keyboard.press("Tab");
    expect(await panel.evaluate((one) => one.contains(document.activeElement))).toBe(true);
  }
  await cab.page.keyboard.press("Escape");
  await expect(panel).toBeHidden();
  await expect(cab.page.getByRole("button", { name: "CAN'T" })).toBeFocused();
});
