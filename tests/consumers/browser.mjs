// Builds the form with Vite, serves it under a policy that lets only its own scripts run, and fills it in a browser.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import path from "node:path";
import { chromium } from "playwright-core";
import { findBrowser } from "../browser/find-browser.mjs";

const kinds = /** @type {Record<string, string>} */ ({ ".html": "text/html", ".js": "text/javascript", ".json": "application/json" });
const policy = "default-src 'none'; script-src 'self'; img-src data:; connect-src 'self'";

/**
 * @param {string} folder where the consumer is installed
 * @param {(command: string, args: string[], cwd: string) => string} run
 */
export async function browserConsumer(folder, run) {
  run(process.execPath, ["node_modules/vite/bin/vite.js", "build"], folder);
  const executablePath = findBrowser();
  if (executablePath === undefined) return "the app builds; no browser is installed here, so it was not opened";
  const server = createServer(({ url = "/" }, response) => {
    const file = path.join(folder, "out", path.posix.normalize(url === "/" ? "/index.html" : url));
    try {
      const text = readFileSync(file);
      response.writeHead(200, { "Content-Type": kinds[path.extname(file)] ?? "text/plain", "Content-Security-Policy": policy }).end(text);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", () => { resolve(undefined); }));
  const browser = await chromium.launch({ executablePath, args: process.getuid?.() === 0 ? ["--no-sandbox"] : [] });
  try {
    const { port } = /** @type {import("node:net").AddressInfo} */ (server.address());
    return await drive(await browser.newPage(), `http://127.0.0.1:${port}/`);
  } finally {
    await browser.close();
    server.close();
  }
}

/** @param {import("playwright-core").Page} page @param {string} address */
async function drive(page, address) {
  /** @type {string[]} */
  const faults = [];
  page.on("console", (message) => { if (message.type() === "error") faults.push(message.text()); });
  page.on("pageerror", (error) => { faults.push(String(error)); });
  await page.goto(address);

  /** @param {string} name @param {string} text */
  const fill = (name, text) => page.fill(`input[name=${name}]`, text);
  /** @param {string} name */
  const problem = (name) => page.textContent(`#${name}-problem`);
  await fill("area", "312");
  await fill("unitLength", "12 in");
  await fill("unitHeight", "4 in");
  await fill("headJoint", "1/2 in");
  await fill("bedJoint", "1/2 in");
  await page.click("button");
  // The area has no unit and the depth is missing: each is told at its own field, and there is no answer.
  assert.match((await problem("area")) ?? "", /"312" has no unit/);
  assert.match((await problem("depth")) ?? "", /depth/);
  assert.equal(await problem("unitLength"), "");
  assert.equal(await page.textContent("#answer"), "");

  await fill("area", "75 ft2");
  await fill("depth", "1 in");
  await page.click("button");
  // 12-1/2 x 4-1/2 in with its joints is 56.25 in2, of which 48 in2 is unit: 11/75 is joint. 75 ft2 x 11/75 x 1/12 ft = 11/12 ft3.
  await page.waitForFunction("document.querySelector('#answer').textContent !== ''", undefined, { timeout: 20_000 });
  assert.equal(await page.textContent("#answer"), "0.9166666667 ft3");
  assert.equal(await problem("area"), "");

  await page.waitForFunction("document.querySelector('#order').textContent !== ''", undefined, { timeout: 60_000 });
  assert.match((await page.textContent("#order")) ?? "", /^\d+ lines$/);
  assert.deepEqual(faults, []);
  return `a form by Vite shows problem and answer, a worker takes a job off, under "${policy}"`;
}
