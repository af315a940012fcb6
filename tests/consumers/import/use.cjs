// Requires every entry as a CommonJS module, and works out a figure known by hand.
const assert = require("node:assert/strict");

const { exports: entries } = require("settingbed/package.json");
const names = Object.keys(entries).filter((name) => name !== "./package.json").map((name) => `settingbed${name.slice(1)}`);

for (const name of names) assert.ok(Object.keys(require(name)).length > 0, `${name} exports nothing`);

// 3850 ft2 x 144 in2/ft2 x 0.035 in = 19404 in3 = 84 gal; 84 / 0.7 = 120 gal: 24 pails of 5 gal.
const { coatingOrder } = require("settingbed/film");
const order = coatingOrder({ area: "3850 ft2", wetFilm: "35 mil", coats: 1, lossShare: "30 %", packVolume: "5 gal" });
assert.equal(order.packs.toString(), "24");

// What one way of loading made, the other reads.
import("settingbed/core").then(({ quantity }) => {
  const area = quantity("area", "3850 ft2");
  // To the compiler the two are not one type; when it runs, they are.
  const again = coatingOrder({ area: /** @type {any} */ (area), wetFilm: "35 mil", coats: 1, lossShare: "30 %", packVolume: "5 gal" });
  assert.equal(again.packs.toString(), "24");
  console.log(`${names.length} entries as CommonJS modules under ${"Bun" in globalThis ? "Bun" : `Node ${process.version}`}`);
});
