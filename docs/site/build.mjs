// Builds the site into docs/dist: the handbook and the guides, the script that runs the package in the page, the API.
// `node docs/site/build.mjs [folder] [--no-api]`
import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { subPaths } from "../../tests/support/exports.mjs";

const site = import.meta.dirname;
const root = path.resolve(site, "../..");
const words = process.argv.slice(2);
const out = path.resolve(words.find((word) => !word.startsWith("--")) ?? path.join(site, "../dist"));
const cache = path.join(root, "node_modules/.cache/site");

rmSync(out, { recursive: true, force: true });
mkdirSync(cache, { recursive: true });

// What readers see: one script for all pages, so that a browser keeps it, and so that a page opened from a disk works.
await build({ entryPoints: [path.join(site, "page/main.ts")], outfile: path.join(out, "site.js"), bundle: true, minify: true, format: "iife", target: "es2022", legalComments: "none" });
await build({ entryPoints: [path.join(site, "site.css")], outfile: path.join(out, "site.css"), minify: true, target: ["chrome109", "firefox115", "safari16"] });

/** Every entry of the package, under the name that a user imports it by. @type {import("esbuild").Plugin} */
const packages = {
  name: "packages",
  setup(bundler) {
    bundler.onResolve({ filter: /^virtual:packages$/ }, () => ({ path: "packages", namespace: "virtual" }));
    bundler.onLoad({ filter: /.*/, namespace: "virtual" }, () => {
      const entries = Object.entries(subPaths());
      const imports = entries.map(([, file], index) => `import * as entry${String(index)} from ${JSON.stringify(path.join(root, "src", `${file}.ts`))};`);
      const list = entries.map(([name], index) => `${JSON.stringify(path.posix.join("settingbed", name))}: entry${String(index)}`);
      return { contents: `${imports.join("\n")}\nexport const packages = { ${list.join(", ")} };`, resolveDir: root, loader: "ts" };
    });
    // A bundled file still has to know where it stood.
    bundler.onLoad({ filter: /(docs\/site|tests)\/.*\.ts$/ }, ({ path: file }) => ({
      contents: readFileSync(file, "utf8").replaceAll("import.meta.dirname", JSON.stringify(path.dirname(file))),
      loader: "ts",
    }));
  },
};
const generator = path.join(cache, "generate.mjs");
await build({ entryPoints: [path.join(site, "generator/generate.ts")], outfile: generator, bundle: true, platform: "node", format: "esm", target: "node20", packages: "external", plugins: [packages] });
/** @type {unknown} */
const generated = await import(`${pathToFileURL(generator).href}?${String(Date.now())}`);
const { generate } = /** @type {{ generate: (out: string) => Promise<string> }} */ (generated);
console.log(await generate(out));

if (!words.includes("--no-api")) {
  execFileSync(process.execPath, [path.join(root, "node_modules/typedoc/bin/typedoc"), "--tsconfig", path.join(site, "api.tsconfig.json"), "--out", path.join(out, "api")], { cwd: root, stdio: "inherit" });
}
