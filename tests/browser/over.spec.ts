/** What must be seen lies over everything: each of it over each panel of each role, as a finger would find it, the sign of life too. */
import type { Page } from "@playwright/test";
import { Altered } from "./altered.ts";
import { STATES } from "./cab_states.ts";
import { expect, test } from "./crew.ts";

const key = (page: Page, name: string | RegExp) => page.getByRole("button", { name, exact: true });

/** Whether all of what holds these words is what a finger would find there: at its middle and near its corners. */
async function onTop(page: Page, what: string, says: string): Promise<string[]> {
  return page.evaluate(
    ([name, words]) => {
      const found = [...document.querySelectorAll(name)].filter((one) => {
        const { width, height } = one.getBoundingClientRect();
        return (one.textContent ?? "").includes(words) && width > 0 && height > 0;
      });
      const wrong: string[] = [];
      if (found.length === 0) return [`${words} is nowhere`];
      const seen = found.some((one) => {
        const { left, top, right, bottom } = one.getBoundingClientRect();
        const points = [
          [(left + right) / 2, (top + bottom) / 2],
          [left + 8, top + 8],
          [right - 8, top + 8],
        ] as const;
        return points.every(([x, y]) => one.contains(document.elementFromPoint(x, y)));
      });
      if (!seen) wrong.push(`${words} is covered`);
      // The newest sign of life is the one that is in sight.
      const alive = [...document.querySelectorAll(".tick")].some((tick) => {
        const { left, top, right, bottom } = tick.getBoundingClientRect();
        return tick.contains(document.elementFromPoint((left + right) / 2, (top + bottom) / 2));
      });
      if (!alive) wrong.push("the sign of life is covered");
      const stop = [...document.querySelectorAll(".key.stop")].some((one) => {
        const { left, top, right, bottom } = one.getBoundingClientRect();
        return one.contains(document.elementFromPoint((left + right) / 2, (top + bottom) / 2));
      });
      if (!stop) wrong.push("STOP is covered");
      return wrong;
    },
    [what, says] as const,
  );
}

const SIZES = [
  { width: 360, height: 740 },
  { width: 740, height: 360 },
];

test("in the cab whatever panel is open goes when one of it comes, and it fills the screen", async ({
  crew,
}) => {
  test.slow();
  const cab = await Altered.cab(crew, { width: 360, height: 740 });
  const quiet = STATES["no-call"]?.view() ?? {};
  const wrong: string[] = [];
  for (const opens of ["CAN'T", "SCREEN", "ELSEWHERE", "PLAN"]) {
    for (const [comes, says] of [
      ["stop", "RT pressed STOP"],
      ["asks", "RT ASKS TO COME IN AT N-04"],
      ["not-agreed", "YOU DID NOT AGREE"],
      ["leave-face", "GET AWAY FROM THE FACE"],
    ] as const) {
      await cab.show(quiet);
      // The plan comes back by itself with what it was opened over.
      if ((await key(cab.page, "SECTION").count()) === 0) await key(cab.page, opens).click();
      await cab.show(STATES[comes]?.view() ?? {});
      await expect(cab.page.getByRole("dialog")).toHaveCount(0);
      for (const size of SIZES) {
        await cab.page.setViewportSize(size);
        const found = await onTop(cab.page, ".stop-plate", says);
        wrong.push(...found.map((one) => `${opens}, ${comes}, ${size.width}: ${one}`));
      }
    }
  }
  expect(wrong).toEqual([]);
});

test("in the cab a panel that is opened under one of it has it at its head", async ({ crew }) => {
  const cab = await Altered.cab(crew, { width: 360, height: 740 });
  const wrong: string[] = [];
  for (const opens of ["CAN'T", "SCREEN"]) {
    for (const [comes, says] of [
      ["stop", "RT pressed STOP"],
      ["asks", "RT ASKS TO COME IN AT N-04"],
      ["not-agreed", "YOU DID NOT AGREE"],
    ] as const) {
      await cab.show(STATES[comes]?.view() ?? {});
      await key(cab.page, opens).click();
      for (const size of SIZES) {
        await cab.page.setViewportSize(size);
        const found = await onTop(cab.page, ".urgent > *", says);
        wrong.push(...found.map((one) => `${opens}, ${comes}, ${size.width}: ${one}`));
      }
      await cab.page.keyboard.press("Escape");
    }
  }
  // A buried line that was struck is no less.
  const struck = [{ since: Date.now(), by: "RT", lines: ["GAS"], what: "gas", machine: "EX-1", call: "" }];
  await cab.show({ ...STATES["down-3"]?.view(), struck } as never);
  await key(cab.page, "CAN'T").click();
  wrong.push(...(await onTop(cab.page, ".urgent > *", "GAS")));
  expect(wrong).toEqual([]);
});

/** What is seldom used of MARKS stands behind one key. */
const TOOLS = "PAINT · TIES · SUMS · WORK";

test("on the ground's, the supervisor's and a visitor's page it stands over each panel", async ({ crew }) => {
  test.slow();
  const { ground, cab } = await crew.digs({ viewport: { width: 360, height: 740 } });
  const board = await crew.joins("SUPERVISOR", "PN", null, { viewport: { width: 1366, height: 768 } });
  const visitor = await crew.joins("VISITOR", "VV", null, { viewport: { width: 360, height: 740 } });
  await key(cab.page, "STOP: every machine").click();
  const says = "OW pressed STOP";
  const wrong: string[] = [];
  const each = async (page: Page, ways: readonly (readonly string[])[]) => {
    for (const way of ways) {
      const last = way.at(-1) ?? "";
      for (const name of way)
        await page
          .getByRole("button", { name, exact: name !== TOOLS })
          .first()
          .click();
      await expect(page.getByRole("dialog")).toBeVisible();
      const found = await onTop(page, ".panel .urgent > *", says);
      wrong.push(...found.map((one) => `${last}: ${one}`));
      await page.keyboard.press("Escape");
      await expect(page.getByRole("dialog")).toHaveCount(0);
    }
  };
  for (const page of [ground.page, board.page, visitor.page]) {
    await expect(page.getByRole("alert").filter({ hasText: says }).first()).toBeVisible();
  }
  await each(ground.page, [
    ["SCREEN"],
    ["BY EYE"],
    ["LASER", "SET UP A LASER"],
    ["MARKS", TOOLS, "PAINT"],
    [TOOLS, "SUMS"],
  ]);
  await each(board.page, [["SCREEN"], ["LIFT STOP EX-1"]]);
  await each(visitor.page, [["SCREEN"]]);
  // And no link.
  ground.link.cut();
  await expect(ground.page.getByText("No link to the hub. Use hands.").first()).toBeVisible();
  await key(ground.page, "SCREEN").click();
  wrong.push(...(await onTop(ground.page, ".panel .urgent > *", "No link to the hub")));
  expect(wrong).toEqual([]);
});
