// The packed package as users get it: in a fresh folder, installed from the tarball, under what they use it with.
//
//   node tests/consumers/run.mjs                     the present Node: every entry imported and required
//   node tests/consumers/run.mjs --long              other Nodes, Deno, Bun, four compilers, a form in a browser as well
//   ... --only node,types,browser,deno,bun           some of the long ones
//   ... --tarball <file>                             another package than the one packed from here
import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { parseArgs } from "node:util";
import { readPackage } from "../support/exports.mjs";
import { browserConsumer } from "./browser.mjs";

const { values: told } = parseArgs({ options: { long: { type: "boolean", default: false }, only: { type: "string" }, tarball: { type: "string" } } });
const here = import.meta.dirname;
const root = path.resolve(here, "../..");
const folder = mkdtempSync(path.join(tmpdir(), "settingbed-consumers-"));

/** Runs a program and gives what it printed. @param {string} command @param {string[]} args @param {string} cwd @returns {string} */
const run = (command, args, cwd) => execFileSync(command, args, { cwd, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"], maxBuffer: 1 << 26 });

/** A folder of its own with the files of a consumer and packages. @param {string} name @param {string} files @param {string[]} packages */
function consumer(name, files, packages) {
  const own = path.join(folder, name);
  mkdirSync(own, { recursive: true });
  cpSync(path.join(here, files), own, { recursive: true });
  cpSync(path.join(root, "examples/wall.json"), path.join(own, "job.json"));
  writeFileSync(path.join(own, "package.json"), '{ "private": true, "type": "module" }\n');
  run("npm", ["install", "--no-audit", "--no-fund", "--prefer-offline", "--loglevel", "error", ...packages], own);
  return own;
}

/** What was not to be had: a package that the registry does not bring, or that does not start here. */
class NotToBeHad extends Error {}

/** @template T @param {() => T} get @returns {T} */
function had(get) {
  try {
    return get();
  } catch (error) {
    const { stderr } = /** @type {{ stderr?: unknown }} */ (error);
    throw new NotToBeHad(String(stderr ?? error).trim().split("\n").slice(0, 2).join(" "));
  }
}

/** @type {Record<string, (tarball: string) => Promise<string> | string>} */
const checks = {
  "present Node"(tarball) {
    const own = consumer("import", "import", [tarball]);
    return [run(process.execPath, ["use.mjs"], own), run(process.execPath, ["use.cjs"], own)].join("").trim();
  },
  ...Object.fromEntries(["22", "24", "26"].map((version) => [`node ${version}`, (/** @type {string} */ tarball) => {
    const own = consumer(`node-${version}`, "import", [tarball]);
    const node = ["-y", `node@${version}`];
    had(() => run("npx", [...node, "--version"], own));
    return [run("npx", [...node, "use.mjs"], own), run("npx", [...node, "use.cjs"], own)].join("").trim();
  }])),
  ...Object.fromEntries(["5.4", "5.9", "6.0", "7.0"].map((version) => [`types ${version}`, (/** @type {string} */ tarball) => {
    const own = consumer(`types-${version}`, "types", [tarball]);
    const tools = path.join(folder, `typescript-${version}`);
    mkdirSync(tools, { recursive: true });
    writeFileSync(path.join(tools, "package.json"), '{ "private": true }\n');
    had(() => run("npm", ["install", "--no-audit", "--no-fund", "--loglevel", "error", `typescript@${version}`], tools));
    const compiler = path.join(tools, "node_modules/typescript/bin/tsc");
    const found = had(() => run(process.execPath, [compiler, "--version"], own)).trim();
    run(process.execPath, [compiler, "-p", "tsconfig.json"], own);
    return `${found} compiles the consumer, with the declarations of all packages checked`;
  }])),
  ...Object.fromEntries(/** @type {[string, string[]][]} */ ([["deno", ["run", "--allow-read", "--allow-env", "use.mjs"]], ["bun", ["use.mjs"]]]).map(([name, args]) => [name, (/** @type {string} */ tarball) => {
    const own = consumer(name, "import", [tarball]);
    // The package of an engine fetches its program when it is first installed or started.
    had(() => run("npx", ["-y", name, "--version"], own));
    return [run("npx", ["-y", name, ...args], own), ...(name === "bun" ? [run("npx", ["-y", "bun", "use.cjs"], own)] : [])].join("").trim();
  }])),
  browser: (tarball) => browserConsumer(consumer("browser", "browser", [tarball, "vite@8", "@tanstack/form-core@1"]), run),
};

const wanted = told.only?.split(",") ?? [];
const names = Object.keys(checks).filter((name) => name === "present Node" || (told.long && (wanted.length === 0 || wanted.some((one) => name.startsWith(one)))));

try {
  const tarball = path.resolve(told.tarball ?? packed());
  for (const name of names) {
    try {
      console.log(`${name}: ${(await checks[name]?.(tarball)) ?? ""}`);
    } catch (error) {
      if (error instanceof NotToBeHad) {
        console.log(`${name}: not to be had here, so not checked (${error.message})`);
      } else {
        const { stdout = "", stderr = "" } = /** @type {{ stdout?: string, stderr?: string }} */ (error);
        console.error(`${name}: FAILED\n${stdout}${stderr}${stdout + stderr === "" ? String(error) : ""}`);
        process.exitCode = 1;
      }
    }
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}

/** Packs what the build made. */
function packed() {
  run("npm", ["pack", "--ignore-scripts", "--silent", "--pack-destination", folder], root);
  return path.join(folder, `settingbed-${readPackage().version}.tgz`);
}
