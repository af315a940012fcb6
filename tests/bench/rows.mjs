// Walls in rows: what a take-off of 25 lines costs beside the same arithmetic in plain numbers in the same run, and whether
// memory stays flat. Run after a build: node --expose-gc tests/bench/rows.mjs [rows]
import { quantity } from "settingbed";
import { takeOffRows } from "settingbed/takeoff";

const count = Number(process.argv[2] ?? 100_000);

const bag = { bag: "50 lb", yield: "0.45 ft3", waterLow: "5 qt", waterHigh: "6 qt" };
const assembly = /** @type {import("settingbed/takeoff").Assembly} */ ({
  measuredTo: "backing",
  layers: [
    { kind: "studs", spacing: "16 in" },
    { kind: "boards", name: "sheathing", acrossStuds: "4 ft", alongStuds: "8 ft", edgesBacked: false, screwSpacing: "8 in", edgeDistance: "3/8 in" },
    { kind: "boards", name: "board", acrossStuds: "5 ft", alongStuds: "3 ft", edgesBacked: true, screwSpacing: "8 in", edgeDistance: "3/8 in" },
    { kind: "joint tape", name: "tape", over: "board", overlaps: 20, overlap: "2 in" },
    { kind: "barrier", name: "barrier", wetFilm: "18 mil", coats: 2, deductFrom: "0 ft2" },
    { kind: "sheet goods", name: "mat", sheetWidth: "39 in", sideLap: "3 in", endLap: "4 in", fastenersPerArea: "1.5 /ft2" },
    { kind: "ledger", name: "ledger", lap: "0 in" },
    { kind: "trim", name: "screed", along: ["base"], lap: "1 in" },
    { kind: "trim", name: "sills", along: ["sills"], beyond: "2 in", lap: "0 in" },
    { kind: "trim", name: "flashing", along: ["heads"], beyond: "4 in", lap: "4 in" },
    { kind: "setting bed", name: "setting", bed: { from: "thickness", thickness: "1/2 in" }, backButter: "1/8 in", butteredShare: "100 %" },
    {
      kind: "units", name: "flats", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", unitThickness: "1 in", headJoint: "3/8 in", bedJoint: "3/8 in",
      corners: { name: "corners", longLeg: "8 in", shortLeg: "4 in" }, spacers: { name: "spacers", perUnit: 2, reuseShare: "60 %" },
    },
    { kind: "joints", name: "joints", squeezeOut: "1/4 in", tooling: { profile: "raked", profileDepth: "3/16 in" } },
    { kind: "movement joints", name: "sealant", length: "20 ft", insideCorners: true, width: "3/8 in", backerRod: "rod" },
  ],
  packs: {
    "sheathing screws": { pieces: 1000 }, "board screws": { pieces: 500 }, "board edge backing": { length: "12 ft" }, tape: { length: "150 ft" }, barrier: { volume: "5 gal" },
    mat: { length: "50 ft" }, "mat fasteners": { pieces: 250 }, ledger: { length: "16 ft" }, screed: { length: "10 ft" }, sills: { length: "3 ft" }, flashing: { length: "10 ft" },
    setting: bag, flats: { pieces: 40 }, corners: { pieces: 12 }, joints: bag, sealant: { volume: "10 fl oz" }, rod: { length: "100 ft" },
  },
  allowances: Object.fromEntries(
    ["sheathing", "sheathing screws", "board", "board screws", "board edge backing", "tape", "barrier", "mat", "mat fasteners", "ledger", "screed", "sills", "flashing", "setting", "flats", "corners", "joints", "sealant", "rod"].map((name) => [name, { waste: "10 %" }]),
  ),
  spare: { flats: "2 %", corners: "2 %", sheathing: "1 %" },
});

const wall = {
  name: { column: "wall" },
  shape: { kind: "rectangle", width: { column: "width" }, height: { column: "height" } },
  openings: [{ shape: { kind: "rectangle", width: { column: "window width" }, height: { column: "window height" } }, count: { column: "windows" }, returnDepth: "6 in", returnUnits: "corner", toBase: false }],
  outsideCorners: [{ height: { column: "height" }, otherFace: "unclad", count: 2 }],
};

/** @param {number} rows */
function* walls(rows) {
  for (let index = 0; index < rows; index += 1) {
    yield { wall: `wall ${String(index)}`, width: `${String(20 + (index % 41))} ft`, height: `${String(8 + (index % 5))} ft`, windows: String(1 + (index % 3)), "window width": "3 ft", "window height": `${String(3 + (index % 3))} ft` };
  }
}

/** The lines of a wall in plain numbers, in feet; it reads the same texts. */
function plain(/** @type {Record<string, string>} */ row) {
  const read = (/** @type {string | undefined} */ text) => Number.parseFloat(text ?? "");
  const [width, height, windows, w, h] = [read(row.width), read(row.height), read(row.windows), read(row["window width"]), read(row["window height"])];
  const up = Math.ceil;
  const more = 1.1;
  const [walls, openings, around, jambs, corners] = [width * height, windows * w * h, windows * 2 * (w + h), windows * 2 * h, 2 * height];
  const returns = around / 2;
  const backing = walls - openings;
  const growth = (corners + 2 * around) / 8;
  const edges = corners + jambs;
  const cover = corners + jambs;
  const face = backing + returns + corners / 2 + growth;
  const [sheets, boards] = [backing / 32, backing / 15];
  const [sheathingScrews, boardScrews] = [up(sheets) * 52, up(boards) * 30];
  const tape = (boards * 16 - (2 * (width + height) + around)) / 2 + corners + 20 / 6;
  const gallons = ((backing + returns) * 36 * 12) / 19250;
  const courses = up((height - 0.25) / 3) * width;
  const bed = (face * 0.625) / 12;
  const flats = (face - cover) * 3;
  const cornerUnits = edges * 3;
  const joint = ((face * 125) / 1024) * (1.25 / 12) * 0.85;
  const sealant = (20 * 12 * 0.375 * 0.25) / (231 / 128);
  const bags = up((bed * more) / 0.45);
  const jointBags = up((joint * more) / 0.45);
  const run = (/** @type {number} */ length, /** @type {number} */ piece, /** @type {number} */ lap) => up((length * more - lap) / (piece - lap));
  return {
    sheathing: up(sheets * more), "sheathing screws": up((sheathingScrews * more) / 1000), board: up(boards * more), "board screws": up((boardScrews * more) / 500), "board edge backing": up((up(boards) * 3 * more) / 12),
    tape: up((tape * more) / 150), barrier: up((gallons * more) / 5), mat: run(courses, 50, 1 / 3), "mat fasteners": up((backing * 1.5 * more) / 250), ledger: up((width * more) / 16), screed: run(width, 10, 1 / 12),
    sills: run(windows * (w + 1 / 3), 3, 0), flashing: run(windows * (w + 2 / 3), 10, 1 / 3), setting: bags, settingWater: [bags * 5, bags * 6], flats: up((flats * 1.1) / 40), corners: up((cornerUnits * 1.1) / 12), spacers: up((up(flats) + up(cornerUnits)) * 2 * 0.4),
    joints: jointBags, jointWater: [jointBags * 5, jointBags * 6], sealant: up((sealant * more) / 10), rod: up((20 * more) / 100), "flats spare": up((flats * 0.02) / 40), "corners spare": up((cornerUnits * 0.02) / 12), "sheathing spare": up(sheets * 0.01),
  };
}

/** @type {unknown} */
let kept;

/** @param {number} rows */
async function take(rows) {
  for await (const one of takeOffRows(walls(rows), { assembly, wall })) if (one.ok) kept = one.lines;
}

/** @param {number} rows */
function takePlain(rows) {
  for (const row of walls(rows)) kept = plain(row);
}

/** Milliseconds of processor time, so that other work on the machine counts for less. */
async function timed(/** @type {() => unknown} */ work) {
  const start = process.cpuUsage();
  await work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

// Both must say the same before either is timed: packs differ only where a plain number falls off a whole one.
let [lines, differing, compared] = [0, 0, 0];
for await (const one of takeOffRows(walls(200), { assembly, wall })) {
  if (!one.ok) throw new Error(one.problems.map(({ message }) => message).join("\n"));
  const other = /** @type {Record<string, unknown>} */ (plain(/** @type {Record<string, string>} */ ([...walls(compared + 1)][compared])));
  lines = one.solution.answers.lines.length;
  for (const [index, { item, packs, toOrder }] of one.lines.entries()) {
    const found = packs ?? toOrder;
    const exact = one.solution.answers.lines[index];
    if (exact?.item !== item || (exact.packs ?? exact.toOrder).toNumber() !== found) throw new Error(`${one.name}: ${item} is not what it is by itself`);
    if (typeof other[item] === "number" && other[item] !== found) differing += 1;
  }
  compared += 1;
}
console.log(`${String(lines)} lines a wall; of ${String(compared * lines)} lines ${String(differing)} differ from plain numbers`);

const each = 50_000;
await take(each);
takePlain(each);
const rounds = [];
for (let round = 0; round < 5; round += 1) {
  const before = (await timed(() => { takePlain(each); })) / each;
  const own = (await timed(() => take(each))) / each;
  const after = (await timed(() => { takePlain(each); })) / each;
  rounds.push({ own, ratio: own / ((before + after) / 2) });
}
rounds.sort((a, b) => a.ratio - b.ratio);
const middle = rounds[2];
console.log(`${(middle?.own ?? NaN).toFixed(4)} ms a wall, ${(middle?.ratio ?? NaN).toFixed(1)} times plain numbers that read the same texts`);

const gc = globalThis.gc;
if (gc === undefined) throw new Error("run with --expose-gc");
/** @type {number[]} */
const heaps = [];
const taken = takeOffRows(walls(count), {
  assembly,
  wall,
  progress({ rows }) {
    if (rows % Math.ceil(count / 10) !== 0) return;
    gc();
    heaps.push(process.memoryUsage().heapUsed / 2 ** 20);
  },
});
for await (const one of taken) if (one.ok) kept = one.lines;
console.log(`${String(taken.totals().rows)} rows, ${String(taken.totals().refused)} refused; heap in MB after each tenth: ${heaps.map((heap) => heap.toFixed(1)).join(" ")}`);
if (kept === quantity) throw new Error("nothing was kept");
