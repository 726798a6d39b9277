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
 * A browser may hold a script that did not come once to be missing for good (Firefox does). So the files of a late script are
 * fetched before it is run: each is in the browser's own store then, and what fails can be asked for again (src/late.ts). The
 * bundler names them where there are several; one alone stands in the import itself.
 */
const FETCH_FIRST = `export const __vitePreload = (run, files) => {
  const alone = /import\\(.\\.\\/([\\w-]+\\.js)/.exec(run);
  const all = files && files.length ? files : alone ? ["assets/" + alone[1]] : [];
  return Promise.all(all.map((file) => fetch("/" + file).then((got) => {
    if (!got.ok) throw new Error(file + " did not come");
    return got.text();
  }))).then(run);
};`;

/** Takes the place of what the bundler puts round each late import, which gives up and goes on without what failed. */
function fetchFirst(): Plugin {
  return {
    name: "fetch-first",
    apply: "build",
    enforce: "pre",
    load: (id) => (id === "\0vite/preload-helper.js" ? FETCH_FIRST : null),
  };
}

export default defineConfig({
  plugins: [fluentWords(), fetchFirst(), gzipBeside()],
  build: {
    target: ["chrome87", "safari14", "firefox78"],
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
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
