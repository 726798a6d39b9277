/** What axe finds wrong with a page: its rules for WCAG 2.0 to 2.2, A and AA, and those of good practice. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "@playwright/test";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

interface Found {
  passes: unknown[];
  violations: { id: string; impact: string; nodes: { html: string }[] }[];
}

/** `grave` asks for what hinders somebody seriously, and no more; else everything is told. */
export async function axeFaults(page: Page, grave: boolean): Promise<string[]> {
  await page.evaluate(AXE);
  return page.evaluate(async (grave) => {
    // The page has no such name before the line above; axe puts it there.
    const { axe } = window as unknown as { axe: { run(options?: object): Promise<Found> } };
    // WCAG 2.2 AA asks for targets of 24 px or as much room round them; axe leaves the rule off unless it is asked for.
    const { passes, violations } = await axe.run({ rules: { "target-size": { enabled: true } } });
    // An axe that has looked at nothing finds nothing.
    if (passes.length < 5) return [`axe held only ${passes.length} rules against this page`];
    return violations
      .filter((one) => !grave || one.impact === "serious" || one.impact === "critical")
      .map((one) => `${one.id}: ${one.nodes.map((node) => node.html).join(" ")}`);
  }, grave);
}
