/** `npm run start-figures`: how long each page takes to its first useful moment on a slow phone. It prints figures and proves nothing by itself. */
import { defineConfig } from "@playwright/test";
import tests from "./playwright.config.ts";

export default defineConfig({
  ...tests,
  testMatch: "start.spec.ts",
  testIgnore: [],
  workers: 1,
  timeout: 600_000,
  reporter: [["line"]],
});
