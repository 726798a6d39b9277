/** A whole errand in Spanish, from the code to the stop: what stands on the screens, and no English word among it. */
import type { Page } from "@playwright/test";
import { type Crew, call, expect, FOOT, type Phone, test } from "./crew.ts";

const PHONE = { locale: "es-MX" };

/** Words of the English pages that no Spanish screen says; names of the site are its own. */
const ENGLISH =
  /\b(stop|down|up|read|send|sent|got|the|and|tenths|high|low|grade|mark|marks|machine|call|nobody|hold|close|cancel|name|screen|day|lift|by)\b/i;

async function enters(
  crew: Crew,
  role: "GROUND" | "OPERATOR",
  word: string,
  who: string,
  machine: string | null,
): Promise<Phone> {
  const phone = await crew.scans(role, machine, PHONE);
  const { page } = phone;
  await expect(page.getByRole("heading", { name: "Entrar · Mill yard" })).toBeVisible();
  if (machine) await expect(page.getByText(`Este teléfono será la pantalla de ${machine}.`)).toBeVisible();
  await isSpanish(page);
  await page.getByLabel("Nombre o iniciales").fill(who);
  const choice = page.getByRole("button", { name: word, exact: true });
  if (await choice.isVisible()) await choice.click();
  await page.getByRole("button", { name: "ENTRAR", exact: true }).click();
  await expect(page.getByRole("button", { name: "PARE: todas las máquinas" }).first()).toBeVisible();
  return phone;
}

async function isSpanish(page: Page): Promise<void> {
  await expect(page.locator("html")).toHaveAttribute("lang", "es");
  const text = await page.locator("#app").innerText();
  expect(text.match(ENGLISH)?.[0], text).toBeUndefined();
}

test("join, a reading, the cab, GOT IT and STOP in Spanish", async ({ crew }, info) => {
  const cab = await enters(crew, "OPERATOR", "OPERADOR", "OW", "EX-1");
  const ground = await enters(crew, "GROUND", "PISO", "LM", null);
  await expect(cab.page.getByText("SIN ORDEN", { exact: true })).toBeVisible();
  await expect(cab.page.getByText("NADIE HA PEDIDO ENTRAR – MIRE DE TODOS MODOS")).toBeVisible();
  await expect(ground.page.getByText("No hay láser puesto. Apriete LÁSER.")).toBeVisible();
  await crew.provesLaser();
  await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 300 * FOOT, y: 300 * FOOT } });
  await expect(ground.page.getByText("DEBE LEER")).toBeVisible();
  for (const page of [cab.page, ground.page]) await isSpanish(page);

  for (const digit of "4.70") await ground.page.getByRole("button", { name: digit, exact: true }).click();
  await expect(ground.page.getByRole("textbox", { name: "Escriba el estadal" })).toHaveValue("4.70");
  // 105.00 − 4.70 = 100.30, 0.30 over 100.00 (derived by hand).
  await expect(ground.page.locator(".echo p")).toHaveText(["ALTO 0.30 ft", "→ EX-1: BAJE 3"]);
  await ground.page.getByRole("button", { name: "ENVIAR", exact: true }).click();

  await expect(call(cab.page, "BAJE 3")).toBeVisible();
  await expect(cab.page.getByText("DÉCIMAS", { exact: true })).toBeVisible();
  await expect(ground.page.locator(".sent-line")).toContainText("EX-1: BAJE 3");
  await expect(ground.page.getByText("EN LA PANTALLA DE LA CABINA", { exact: true })).toBeVisible();
  for (const page of [cab.page, ground.page]) await isSpanish(page);
  await cab.page.getByRole("button", { name: "ENTENDIDO" }).click();
  await expect(cab.page.getByRole("button", { name: "YA LO TIENE" })).toBeVisible();
  await expect(ground.page.getByText("EN LA CABINA APRETARON ENTENDIDO", { exact: true })).toBeVisible();

  await ground.page.getByRole("button", { name: "PARE: todas las máquinas" }).click();
  const stop = cab.page.getByRole("alert");
  for (const words of [
    "PARE",
    "TODAS LAS MÁQUINAS",
    "LM apretó PARE",
    "Quieto, cucharón al suelo.",
    "Que no haya nadie en la lista no quiere decir que no haya nadie: MIRE.",
    "Lo levanta un supervisor.",
  ]) {
    await expect(stop).toContainText(words);
  }
  await expect(cab.page.locator(".number")).toHaveCount(0);
  await expect(ground.page.getByRole("alert").first()).toContainText("LM apretó PARE");
  await expect(ground.page.getByText("EX-1 PARADA por LM").first()).toBeVisible();
  for (const page of [cab.page, ground.page]) await isSpanish(page);
  await cab.page.screenshot({ path: info.outputPath("cab-stop.png") });
  await ground.page.screenshot({ path: info.outputPath("ground-stop.png") });
});
