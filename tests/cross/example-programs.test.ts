// Every program of examples/ runs, against the sources and has something to say.
import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { build, type Plugin } from "esbuild";
import { describe, expect, it } from "vitest";

const root = path.resolve(import.meta.dirname, "../..");
const folder = path.join(root, "examples");
const cache = path.join(root, "node_modules/.cache/examples");
const programs = readdirSync(folder).filter((file) => file.endsWith(".mjs"));

/** `settingbed/film` is src/film/index.ts here; a program still knows where it stands. */
const sources: Plugin = {
  name: "sources",
  setup(bundler) {
    bundler.onResolve({ filter: /^settingbed(\/|$)/ }, ({ path: name }) => {
      const within = path.join(root, "src", name.slice("settingbed".length));
      return { path: existsSync(`${within}.ts`) ? `${within}.ts` : path.join(within, "index.ts") };
    });
    bundler.onLoad({ filter: /[\\/]examples[\\/][^\\/]+\.mjs$/ }, ({ path: file }) => ({
      contents: readFileSync(file, "utf8").replaceAll("import.meta.url", JSON.stringify(pathToFileURL(file).href)),
      loader: "js",
    }));
  },
};

describe("the program", () => {
  it.each(programs)("%s runs", { timeout: 60_000 }, async (program) => {
    mkdirSync(cache, { recursive: true });
    const outfile = path.join(cache, program);
    await build({ entryPoints: [path.join(folder, program)], outfile, bundle: true, platform: "node", format: "esm", packages: "external", plugins: [sources], logLevel: "silent" });
    const printed = execFileSync(process.execPath, [outfile], { encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });
    expect(printed.trim().length).toBeGreaterThan(10);
    expect(printed).not.toMatch(/\bNaN\b|undefined|\[object /);
  });
});

it("there are programs", () => {
  expect(programs.length).toBeGreaterThan(0);
});
