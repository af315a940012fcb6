// Builds the site and looks at it in a browser. Where none is installed it says so and ends well, unless BROWSER_CHECKS
// is "required", as it is in .ci/run.
import { execFileSync } from "node:child_process";
import path from "node:path";
import { findBrowser } from "./find-browser.mjs";

const root = path.resolve(import.meta.dirname, "../..");
const browser = findBrowser();

if (browser === undefined) {
  console.log("The site is not looked at: no Chromium is installed here. Install one, or name it in CHROMIUM_PATH.");
  process.exitCode = process.env.BROWSER_CHECKS === "required" ? 1 : 0;
} else {
  const pages = path.join(root, "node_modules/.cache/site/pages");
  const options = /** @type {const} */ ({ cwd: root, stdio: "inherit", env: { ...process.env, CHROMIUM_PATH: browser, SITE: pages } });
  try {
    execFileSync(process.execPath, ["docs/site/build.mjs", pages, "--no-api"], options);
    execFileSync(process.execPath, ["node_modules/vitest/vitest.mjs", "run", "--config", "tests/browser/vitest.config.ts"], options);
  } catch {
    // What went wrong has been printed.
    process.exitCode = 1;
  }
}
