/** Every state of the cab's and of the ground person's page, held against axe's rules for WCAG 2.2 AA: nothing is found, however slight. */
import { Altered } from "./altered.ts";
import { axeFaults } from "./axe.ts";
import { STATES } from "./cab_states.ts";
import { expect, test } from "./crew.ts";
import { DOUBT, FULL_YARD, KEEP_OUT, PANELS, READING } from "./ground_states.ts";

test("the cab", async ({ crew }) => {
  test.setTimeout(600_000);
  const cab = await Altered.cab(crew, { width: 390, height: 844 });
  const wrong: string[] = [];
  for (const [name, state] of Object.entries(STATES)) {
    await cab.show(state.view());
    wrong.push(...(await axeFaults(cab.page, false)).map((what) => `${name}: ${what}`));
  }
  for (const panel of ["CAN'T", "SCREEN"]) {
    await cab.page.getByRole("button", { name: panel, exact: true }).click();
    await expect(cab.page.getByRole("dialog")).toBeVisible();
    wrong.push(...(await axeFaults(cab.page, false)).map((what) => `${panel}: ${what}`));
    await cab.page.getByRole("dialog").getByRole("button", { name: /^(CLOSE|CANCEL)$/ }).click();
  }
  expect(wrong).toEqual([]);
});

test.describe("with a full yard", () => {
  test.use({ more: FULL_YARD });

  for (const [name, states] of Object.entries({ READING, DOUBT, KEEP_OUT, PANELS })) {
    test(`the ground: ${name}`, async ({ crew }) => {
      test.setTimeout(600_000);
      const yard = { crew, ...(await crew.digs({ viewport: { width: 390, height: 844 } })) };
      const wrong: string[] = [];
      for (const state of states) {
        await state.reach(yard);
        if (!state.name) continue;
        const found = await axeFaults(yard.ground.page, false);
        wrong.push(...found.map((what) => `${state.name}: ${what}`));
      }
      expect(wrong).toEqual([]);
    });
  }
});

test("a visitor, and the form to come in", async ({ crew }) => {
  const { page } = await crew.scans("VISITOR");
  await expect(page.getByRole("button", { name: "IN", exact: true })).toBeVisible();
  const wrong = await axeFaults(page, false);
  const guest = await crew.joins("VISITOR", "VV");
  await expect(guest.page.getByRole("button", { name: "I AM ON SITE" })).toBeVisible();
  wrong.push(...(await axeFaults(guest.page, false)));
  expect(wrong).toEqual([]);
});
