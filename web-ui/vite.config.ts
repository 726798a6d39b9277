/** How the pages are built: one page, the first script and stylesheet, late ones, the words; each with its gzip beside it. */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Plugin } from "vite";
import { defineConfig } from "vitest/config";
import { fluentWords } from "./fluent/make.mjs";

/** The hub compresses nothing while a crew waits: every text file gets its `.gz` here. */
function gzipBeside(): Plugin {
  let folder = "";
  return {
    name: "gzip-beside",
    apply: "build",
    configResolved(config) {
      folder = config.build.outDir;
    },
    closeBundle() {
      for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
        if (!entry.isFile() || !/\.(js|css|html|svg)$/.test(entry.name)) continue;
        const path = join(entry.parentPath, entry.name);
        writeFileSync(`${path}.gz`, gzipSync(readFileSync(path), { level: 9 }));
      }
    },
  };
}

/**
 * What comes late is a script and a stylesheet that its asker waits for (src/late_sheet.ts): nothing is to be fetched ahead of
 * it, so what the bundler puts round each late import for that, which every field phone would fetch first, does nothing.
 */
function nothingAhead(): Plugin {
  return {
    name: "nothing-ahead",
    apply: "build",
    enforce: "pre",
    load: (id) =>
      id === "\0vite/preload-helper.js" ? "export const __vitePreload = (fetch) => fetch();" : null,
  };
}

export default defineConfig({
  plugins: [fluentWords(), nothingAhead(), gzipBeside()],
  build: {
    target: ["chrome87", "safari14", "firefox78"],
    assetsInlineLimit: 0,
    modulePreload: false,
    cssCodeSplit: false,
    reportCompressedSize: false,
  },
  test: {
    environment: "happy-dom",
    include: ["{src,fluent}/**/*.test.{ts,tsx}"],
    setupFiles: ["src/words.setup.ts"],
  },
  server: { proxy: { "/api": { target: "http://127.0.0.1:7654", ws: true } } },
});
