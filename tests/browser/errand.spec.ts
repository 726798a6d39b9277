/** A whole errand in each language but English, from the code to the stop: what stands on the screens, and no English word among it. */
import type { Page } from "@playwright/test";
import { type Crew, call, expect, FOOT, type Phone, test } from "./crew.ts";
import { OTHERS } from "./languages.ts";

/** Words of the English pages that no other screen says; names of the site are its own. */
const ENGLISH =
  /\b(stop|down|up|read|send|sent|got|the|and|tenths|high|low|grade|mark|marks|machine|call|nobody|hold|close|cancel|name|screen|day|lift|by)\b/i;

/** What stands on the screens of an errand. */
interface Said {
  comeIn: string;
  ofCab: string;
  name: string;
  operator: string;
  ground: string;
  enter: string;
  stopKey: string;
  noCall: string;
  nobody: string;
  noLaser: string;
  mustRead: string;
  rod: string;
  groundIs: string;
  call: string;
  tenths: string;
  send: string;
  onScreen: string;
  gotIt: string;
  gotPressed: string;
  gotInCab: string;
  stop: string[];
  stopped: string;
}

const SAID: Record<string, Said> = {
  es: {
    comeIn: "Entrar · Mill yard",
    ofCab: "Este teléfono será la pantalla de EX-1.",
    name: "Nombre o iniciales",
    operator: "OPERADOR",
    ground: "PISO",
    enter: "ENTRAR",
    stopKey: "PARE: todas las máquinas",
    noCall: "SIN ORDEN",
    nobody: "NADIE HA PEDIDO ENTRAR – MIRE DE TODOS MODOS",
    noLaser: "No hay láser puesto. Apriete LÁSER.",
    mustRead: "DEBE LEER",
    rod: "Escriba el estadal",
    groundIs: "ALTO 0.30 ft",
    call: "BAJE 3",
    tenths: "DÉCIMAS",
    send: "ENVIAR",
    onScreen: "EN LA PANTALLA DE LA CABINA",
    gotIt: "ENTENDIDO",
    gotPressed: "YA LO TIENE",
    gotInCab: "EN LA CABINA APRETARON ENTENDIDO",
    stop: [
      "PARE",
      "TODAS LAS MÁQUINAS",
      "LM apretó PARE",
      "Quieto, cucharón al suelo.",
      "Que no haya nadie en la lista no quiere decir que no haya nadie: MIRE.",
      "Lo levanta un supervisor.",
    ],
    stopped: "EX-1 PARADA por LM",
  },
  pt: {
    comeIn: "Entrar · Mill yard",
    ofCab: "Este celular vai ser a tela de EX-1.",
    name: "Nome ou iniciais",
    operator: "OPERADOR",
    ground: "SOLO",
    enter: "ENTRAR",
    stopKey: "PARE: todas as máquinas",
    noCall: "SEM ORDEM",
    nobody: "NINGUÉM PEDIU PARA ENTRAR – OLHE MESMO ASSIM",
    noLaser: "Nenhum laser instalado. Aperte LASER.",
    mustRead: "MIRA DEVE DAR",
    rod: "Digite a mira",
    groundIs: "ALTO 0.30 ft",
    call: "DESÇA 3",
    tenths: "DÉCIMOS",
    send: "ENVIAR",
    onScreen: "NA TELA DA CABINE",
    gotIt: "ENTENDI",
    gotPressed: "JÁ ENTENDIDO",
    gotInCab: "NA CABINE APERTARAM ENTENDI",
    stop: [
      "PARE",
      "TODAS AS MÁQUINAS",
      "LM apertou PARE",
      "Fique parado, caçamba no chão.",
      "Não haver ninguém na lista não quer dizer que não há ninguém lá: OLHE.",
      "Um supervisor levanta o PARE.",
    ],
    stopped: "EX-1 PARADA por LM",
  },
};

for (const { folder, name, voice } of OTHERS) {
  const said = SAID[folder];
  if (!said) throw new Error(`say what an errand in ${name} reads`);

  async function isOurs(page: Page): Promise<void> {
    await expect(page.locator("html")).toHaveAttribute("lang", folder);
    const text = await page.locator("#app").innerText();
    expect(text.match(ENGLISH)?.[0], text).toBeUndefined();
  }

  async function enters(
    crew: Crew,
    said: Said,
    role: "GROUND" | "OPERATOR",
    who: string,
    machine: string | null,
  ): Promise<Phone> {
    const phone = await crew.scans(role, machine, { locale: voice });
    const { page } = phone;
    await expect(page.getByRole("heading", { name: said.comeIn })).toBeVisible();
    if (machine) await expect(page.getByText(said.ofCab)).toBeVisible();
    await isOurs(page);
    await page.getByLabel(said.name).fill(who);
    const word = role === "GROUND" ? said.ground : said.operator;
    const choice = page.getByRole("button", { name: word, exact: true });
    if (await choice.isVisible()) await choice.click();
    await page.getByRole("button", { name: said.enter, exact: true }).click();
    await expect(page.getByRole("button", { name: said.stopKey }).first()).toBeVisible();
    return phone;
  }

  test(`join, a reading, the cab, GOT IT and STOP in ${name}`, async ({ crew }, info) => {
    const cab = await enters(crew, said, "OPERATOR", "OW", "EX-1");
    const ground = await enters(crew, said, "GROUND", "LM", null);
    await expect(cab.page.getByText(said.noCall, { exact: true })).toBeVisible();
    await expect(cab.page.getByText(said.nobody)).toBeVisible();
    await expect(ground.page.getByText(said.noLaser)).toBeVisible();
    await crew.provesLaser();
    await crew.hub.say({ kind: "place_machine", machine: "EX-1", at: { x: 300 * FOOT, y: 300 * FOOT } });
    await expect(ground.page.getByText(said.mustRead)).toBeVisible();
    for (const page of [cab.page, ground.page]) await isOurs(page);

    for (const digit of "4.70") await ground.page.getByRole("button", { name: digit, exact: true }).click();
    await expect(ground.page.getByRole("textbox", { name: said.rod })).toHaveValue("4.70");
    // 105.00 − 4.70 = 100.30, 0.30 over 100.00 (derived by hand).
    await expect(ground.page.locator(".echo p")).toHaveText([said.groundIs, `→ EX-1: ${said.call}`]);
    await ground.page.getByRole("button", { name: said.send, exact: true }).click();

    await expect(call(cab.page, said.call)).toBeVisible();
    await expect(cab.page.getByText(said.tenths, { exact: true })).toBeVisible();
    await expect(ground.page.locator(".sent-line")).toContainText(`EX-1: ${said.call}`);
    await expect(ground.page.getByText(said.onScreen, { exact: true })).toBeVisible();
    for (const page of [cab.page, ground.page]) await isOurs(page);
    await cab.page.getByRole("button", { name: said.gotIt }).click();
    await expect(cab.page.getByRole("button", { name: said.gotPressed })).toBeVisible();
    await expect(ground.page.getByText(said.gotInCab, { exact: true })).toBeVisible();

    await ground.page.getByRole("button", { name: said.stopKey }).click();
    const stop = cab.page.getByRole("alert");
    for (const words of said.stop) await expect(stop).toContainText(words);
    await expect(cab.page.locator(".number")).toHaveCount(0);
    await expect(ground.page.getByRole("alert").first()).toContainText(said.stop[2] ?? "");
    await expect(ground.page.getByText(said.stopped).first()).toBeVisible();
    for (const page of [cab.page, ground.page]) await isOurs(page);
    await cab.page.screenshot({ path: info.outputPath("cab-stop.png") });
    await ground.page.screenshot({ path: info.outputPath("ground-stop.png") });
  });
}

test("a language that no native speaker has read says so in its own words where it is chosen", async ({
  crew,
}) => {
  const { page } = await crew.scans("GROUND", null, { locale: "pt-BR" });
  const choice = page.getByRole("group", { name: "Idioma" });
  await expect(choice.getByRole("button", { name: /^Português/ })).toContainText(
    "Tradução ainda não lida por um falante nativo.",
  );
  await expect(choice.getByRole("button", { name: "English" })).not.toContainText("falante");
});
