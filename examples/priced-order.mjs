// A CSV of walls becomes a priced order list: as CSV, and as a workbook whose answers follow its givens.
import { createReadStream } from "node:fs";
import { writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";
import { allRows, csvText, orderTable, orderWorkbook, readTable, wallColumns } from "settingbed/sheet";
import { takeOff } from "settingbed/takeoff";

const columns = /** @type {const} */ ({
  ...wallColumns,
  openingWidth: { is: "length", names: ["opening width"], says: "width of the opening in it", optional: true },
  openingHeight: { is: "length", names: ["opening height"], says: "height of the opening in it", optional: true },
});
const walls = await allRows(readTable(createReadStream(new URL("walls.csv", import.meta.url)), columns));
for (const { message } of walls.problems) console.error(message);

const list = takeOff.solve({
  measuredTo: "backing",
  elevations: walls.values.map(({ name, width, height, openingWidth, openingHeight }) => {
    const hole = openingWidth === undefined || openingHeight === undefined ? [] : [{ kind: /** @type {const} */ ("rectangle"), width: openingWidth, height: openingHeight }];
    const openings = hole.map((shape) => ({ shape, returnDepth: "0 in", returnUnits: /** @type {const} */ ("flat") }));
    return { name, shape: { kind: "rectangle", width, height }, openings, outsideCorners: [] };
  }),
  layers: [
    { kind: "studs", spacing: "16 in" },
    { kind: "boards", name: "cement board", acrossStuds: "4 ft", alongStuds: "8 ft", edgesBacked: false, screwSpacing: "8 in" },
    { kind: "barrier", name: "barrier", wetFilm: "18 mil", coats: 2 },
  ],
  packs: { "cement board screws": { pieces: 1000 }, barrier: { volume: "5 gal" } },
  allowances: { "cement board": { waste: "10 %" }, "cement board screws": { waste: "5 %" }, barrier: { lossShare: "20 %" } },
  prices: { smallest: "0.01 USD", items: { "cement board": { each: "31.40 USD" }, "cement board screws": { perPack: "64.00 USD" }, barrier: { perPack: "212.50 USD" } } },
});

// Into the folder that is named, or else one for what is passing.
const out = process.argv[2] ?? tmpdir();
await writeFile(path.join(out, "order.csv"), csvText(orderTable(list)));
await writeFile(path.join(out, "order.xlsx"), orderWorkbook(list, { title: `Order for ${walls.values.length} walls` }));
console.log(`${list.answers.cost?.total}, in ${path.join(out, "order.xlsx")}`);
