/** `npm run shots`: pictures of every page and state, for a person to look at. They prove nothing by themselves. */
import { defineConfig } from "@playwright/test";
import tests from "./playwright.config.ts";

export default defineConfig({ ...tests, testMatch: "shots.spec.ts", testIgnore: [], timeout: 600_000 });
