// Imports every entry as an ES module, and works out two things whose figures are known by hand.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { coatingOrder } from "settingbed/film";
import { takeOff } from "settingbed/takeoff";

const require = createRequire(import.meta.url);
const { exports: entries } = require("settingbed/package.json");
const names = Object.keys(entries).filter((name) => name !== "./package.json").map((name) => `settingbed${name.slice(1)}`);

for (const name of names) {
  const module = await import(name);
  assert.ok(Object.keys(module).length > 0, `${name} exports nothing`);
}

// 3850 ft2 x 144 in2/ft2 x 0.035 in = 19404 in3 = 84 gal of 231 in3; where 30 % is lost, 84 / 0.7 = 120 gal: 24 pails of 5 gal.
const order = coatingOrder({ area: "3850 ft2", wetFilm: "35 mil", coats: 1, lossShare: "30 %", packVolume: "5 gal" });
assert.equal(order.packs.toString(), "24");

const job = JSON.parse(readFileSync(new URL("job.json", import.meta.url), "utf8"));
const tried = takeOff.try(job);
assert.ok(tried.ok, tried.ok ? "" : tried.problems.map(({ message }) => message).join("\n"));
assert.ok(tried.solution.answers.lines.length > 5);

const refused = coatingOrder.try({ area: "3850", wetFilm: "35 mil", coats: 1, lossShare: "30 %", packVolume: "5 gal" });
assert.deepEqual(refused.ok ? [] : refused.problems.map(({ code, path }) => [code, ...path]), [["noUnit", "area"]]);

const { Deno, Bun } = /** @type {{ Deno?: { version: { deno: string } }, Bun?: { version: string } }} */ (globalThis);
const engine = Deno === undefined ? (Bun === undefined ? `Node ${process.version}` : `Bun ${Bun.version}`) : `Deno ${Deno.version.deno}`;
console.log(`${names.length} entries as ES modules under ${engine}`);
