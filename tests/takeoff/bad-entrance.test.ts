// What is wrong with a large job comes back at once, each problem under its own path, whatever part of the job it is in.
import { describe, expect, it } from "vitest";
import { takeOff } from "../../src/takeoff/index.js";
import { entranceInFeet as good } from "./entrance-job.js";

type Tree = Record<string, unknown>;

/** The job with one place of it set to another value; nothing is set where the value is undefined, and the key is gone. */
function withValue(path: readonly (string | number)[], value: unknown, job: unknown = good): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  if (Array.isArray(job)) return job.map((part: unknown, index) => (index === key ? withValue(rest, value, part) : part));
  const tree = job as Tree;
  const inner = withValue(rest, value, tree[key] ?? {});
  return Object.fromEntries([...Object.entries(tree).filter(([name]) => name !== key), ...(inner === undefined ? [] : [[key, inner]])]);
}

/** The problems without what the input is, which is held by tests/schema. */
function problemsOf(job: unknown): readonly string[] {
  const tried = takeOff.try(job);
  return tried.ok ? [] : tried.problems.map(({ code, message, says }) => `${code} ${message.replace(` (${says})`, "")}`);
}

it("the good job has none", () => {
  expect(problemsOf(good)).toEqual([]);
});

/** Where something is put that is wrong, and the one problem it gives. */
const cases: readonly (readonly [path: readonly (string | number)[], value: unknown, says: RegExp])[] = [
  // shapes and corners
  [["elevations", 1, "openings", 0, "shape", "width"], "17 ft", /^refused elevations\[1\]\.openings\[0\]\.shape: an opening 17 ft wide and 4 ft high: side is 16 ft wide and 10 ft high/],
  [["elevations", 0, "outsideCorners", 0, "with"], "sied", /^notAChoice elevations\[0\]\.outsideCorners\[0\]\.with: "sied" is not offered; did you mean side\?/],
  [["elevations", 0, "outsideCorners", 0, "with"], "front", /^refused elevations\[0\]\.outsideCorners\[0\]\.with: "front": a corner lies between two elevations/],
  [["elevations", 0, "outsideCorners", 1, "with"], "side", /^refused elevations\[0\]\.outsideCorners\[1\]\.with: "side": the face round this corner is not clad/],
  [["elevations", 0, "outsideCorners", 0, "with"], undefined, /^missing elevations\[0\]\.outsideCorners\[0\]\.with: .* write the name of the other elevation/],
  [["elevations", 0, "insideCorners", 0, "height"], "11 ft", /^refused elevations\[0\]\.insideCorners\[0\]\.height: 11 ft: front is 10 ft high/],
  [["elevations", 2, "name"], "side", /^refused elevations\[2\]\.name: "side": there is an elevation of this name already/],
  [["columns", 0, "width"], "0 ft", /^tooLow columns\[0\]\.width: is 0 ft/],
  [["elevations", 0, "outsideCorners", 0, "with"], "the neighbour", /^notAChoice elevations\[0\]\.outsideCorners\[0\]\.with: "the neighbour" .*front, side, bay/],
  // layers
  [["layers", 10, "lots"], undefined, /^missing layers\[10\]\.lots: .* "by elevation" .* or "together"/],
  [["layers", 6, "beyond"], undefined, /^missing layers\[6\]\.beyond: .* such as 0 in/],
  [["layers", 3, "over"], "sheeting", /^notAChoice layers\[3\]\.over: "sheeting" .*: sheathing, cement board$/],
  [["layers", 8, "beyond"], "1 in", /^unknown layers\[8\]\.beyond: .* only sills and heads/],
  [["layers", 8, "along"], ["soffit"], /^notAChoice layers\[8\]\.along\[0\]: "soffit" is not offered; did you mean soffits\?/],
  [["layers", 8, "along"], ["round openings"], /^refused layers\[8\]\.along: round openings: the job has none of these/],
  [["layers", 12, "widht"], "1 in", /^unknown layers\[12\]\.widht: is not known here; did you mean width\?/],
  // packs, allowances, spare
  [["packs", "flat units", "pieces"], 0, /^tooLow packs\.flat units\.pieces: is 0, but must be at least 1/],
  [["packs", "sealant", "volume"], "0 gal", /^tooLow packs\.sealant\.volume: is 0 gal/],
  [["packs", "sealent"], { volume: "10 fl oz" }, /^unknown packs\.sealent: is not known here; did you mean sealant\?/],
  [["packs", "gravel for the yard"], { pieces: 1 }, /^unknown packs\.gravel for the yard: .*sheathing screws, .*backer rod/],
  [["allowances", "caps"], undefined, /^missing allowances\.caps: /],
  [["allowances", "sheathing"], { lossShare: "10 %" }, /^refused allowances\.sheathing\.lossShare: /],
  [["spare", "flat unit"], "2 %", /^unknown spare\.flat unit: is not known here; did you mean flat units\?/],
  [["spare", "barrier"], "2 %", /^refused spare\.barrier: spare stock is kept of what is counted in pieces; barrier is volume/],
  // weights and hoist
  [["weights", "perPack", "stones"], "5 lb", /^unknown weights\.perPack\.stones: is not known here/],
  [["weights", "perPack", "gravel for the yard"], "5 lb", /^unknown weights\.perPack\.gravel for the yard: .*sheathing, .*backer rod/],
  [["weights", "perPack", "mixing water for joint mortar"], "5 lb", /^refused weights\.perPack\.mixing water for joint mortar: .* leave its weight out/],
  [["weights", "hoistLoad"], "100 lb", /^tooLow weights\.perPack\.flat units\.packsPerTrip/],
  // labour
  [["labour", "tasks", 0, "of"], "stone fase", /^notAChoice labour\.tasks\[0\]\.of: "stone fase" is not offered; did you mean stone face\?/],
  [["labour", "tasks", 0, "per"], "100 ft", /^wrongDimension labour\.tasks\[0\]\.per: "100 ft" is a length/],
  [["labour", "tasks", 0, "per"], "0 ft2", /^tooLow labour\.tasks\[0\]\.per: is 0 ft2, but must be above 0/],
  [["labour", "efficiency"], "120 %", /^tooHigh labour\.efficiency/],
  // prices
  [["prices", "items", "sheathing", "each"], "31.15", /^wrongKind prices\.items\.sheathing\.each: "31\.15" cannot be read; write a number and the currency in three capital letters/],
  [["prices", "items", "sheathing", "each"], undefined, /^missing prices\.items\.sheathing\.each: /],
  [["prices", "items", "sheathing", "each"], "31.15 EUR", /^refused prices\.items\.sheathing\.each: 31\.15 EUR: the smallest amount is in USD, and prices in two currencies are not added/],
  [["prices", "items", "sheathing", "perPack"], "31.15 USD", /^unknown prices\.items\.sheathing\.perPack: .* bought by the piece; write each/],
  [["prices", "items", "setting mortar", "each"], "1.15 USD", /^unknown prices\.items\.setting mortar\.each: .* bought in packs; write perPack/],
  [["prices", "items", "sheathing", "taxed"], undefined, /^missing prices\.items\.sheathing\.taxed: .* whether this item is taxed/],
  [["prices", "items", "mixing water for joint mortar"], { each: "1 USD", taxed: true }, /^refused prices\.items\.mixing water for joint mortar: .* leave its price out/],
  [["prices", "smallest"], "0 USD", /^tooLow prices\.smallest/],
  [["prices", "tax"], undefined, /^missing prices\.tax: .* write the tax/],
  // checks
  [["checks", "wetFilm", "least"], "30 mil", /^tooHigh checks\.wetFilm\.least: is 30 mil, but must be at most 22 mil/],
  [["checks", "weight"], { layers: ["flat units"], most: "15 lb/ft2" }, /^missing layers\[10\]\.weightPerArea: .* write what it weighs as installed/],
  [["checks", "weight"], { layers: ["flat unit"], most: "15 lb/ft2" }, /^notAChoice checks\.weight\.layers\[0\]: "flat unit" is not offered/],
];

describe("a job that is wrong in one place says so under its path", () => {
  it.each(cases.map(([path, value, says]) => [path.join(" "), path, value, says] as const))("%s", (_, path, value, says) => {
    const problems = problemsOf(withValue(path, value));
    expect(problems.length).toBeGreaterThan(0);
    expect(problems[0]).toMatch(says);
    // Whatever else is told is told of the same thing, not of something that is right.
    expect(new Set(problems).size).toBe(problems.length);
  });
});

/** Every object of the job that is written by keys we know, by its path. */
function strictObjects(value: unknown, path: readonly (string | number)[] = []): readonly (readonly (string | number)[])[] {
  if (typeof value !== "object" || value === null) return [];
  const inner = Object.entries(value).flatMap(([key, part]) => strictObjects(part, [...path, Array.isArray(value) ? Number(key) : key]));
  // These have the names of items for keys.
  const named = ["packs", "allowances", "spare", "weights.perPack", "prices.items"].includes(path.join("."));
  return Array.isArray(value) || named ? inner : [path, ...inner];
}

it("an unknown key is refused by its path anywhere in the job", () => {
  const places = strictObjects(good);
  expect(places.length).toBeGreaterThan(70);
  for (const place of places) {
    const tried = takeOff.try(withValue([...place, "colour"], "blue"));
    expect([place, tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path])]).toEqual([place, [["unknown", [...place, "colour"]]]]);
  }
});

it("all that is wrong comes together", () => {
  const bad = withValue(["prices", "items", "sheathing", "each"], "3 EUR", withValue(["labour", "tasks", 1, "of"], "roof", withValue(["spare", "tiles"], "1 %", withValue(["packs", "cap"], { length: "4 ft" }))));
  expect(problemsOf(bad).map((message) => message.split(":")[0])).toEqual(["unknown spare.tiles", "notAChoice labour.tasks[1].of", "refused prices.items.sheathing.each", "unknown packs.cap"]);
});

describe("a job that lacks a pack or an allowance says so, and goes on to what is wrong behind it", () => {
  // Every kind of layer that has an item: those of the entrance, and a wall of foam, mat and lath before its last layer.
  const fastened = { fastenersPerArea: "1.5 /ft2" };
  const more = [
    { kind: "foam board", name: "foam", boardWidth: "4 ft", boardHeight: "8 ft", ...fastened },
    { kind: "sheet goods", name: "mat", sheetWidth: "39 in", sideLap: "3 in", endLap: "4 in", ...fastened },
    { kind: "lath", name: "lath", sheetWidth: "27 in", sheetLength: "8 ft", sideLap: "1 in", endLap: "2 in", ...fastened },
    { kind: "scratch coat", name: "scratch coat", thickness: "3/8 in" },
  ];
  const pieces = { pieces: 100 };
  const full = {
    ...good,
    layers: [...good.layers.slice(0, -1), ...more, ...good.layers.slice(-1)],
    packs: { ...good.packs, "foam fasteners": pieces, mat: { length: "50 ft" }, "mat fasteners": pieces, "lath fasteners": pieces, "scratch coat": { bag: "80 lb", yield: "0.5 ft3", waterLow: "5 qt", waterHigh: "6 qt" } },
    allowances: { ...good.allowances, ...Object.fromEntries(["foam", "foam fasteners", "mat", "mat fasteners", "lath", "lath fasteners", "scratch coat"].map((name) => [name, { waste: "5 %" }])) },
  };
  const pathsOf = (job: unknown): readonly string[] => {
    const tried = takeOff.try(job);
    return tried.ok ? [] : tried.problems.map(({ code, path }) => `${code} ${path.join(".")}`);
  };
  // The rod behind the sealant is the last item of all.
  const last = "backer rod";

  it("lacks nothing at first", () => {
    expect(pathsOf(full)).toEqual([]);
  });

  it.each(Object.keys(full.packs).filter((item) => item !== last))("no pack of %s, and none of the last item", (item) => {
    expect([...pathsOf(withValue(["packs", item], undefined, withValue(["packs", last], undefined, full)))].sort()).toEqual([`missing packs.${item}`, `missing packs.${last}`].sort());
  });

  it.each(Object.keys(full.allowances).filter((item) => item !== last))("no allowance for %s, and no pack of the last item", (item) => {
    expect([...pathsOf(withValue(["allowances", item], undefined, withValue(["packs", last], undefined, full)))].sort()).toEqual([`missing allowances.${item}`, `missing packs.${last}`].sort());
  });

  it.each([
    ["a lap of the ledger as long as its pieces", ["layers", 5, "lap"], "16 ft", "tooLow layers.5.cover"],
    ["a lap of the flashing as long as its pieces", ["layers", 6, "lap"], "10 ft", "tooLow layers.6.cover"],
    ["a lap of the mat as wide as it is", ["layers", 13, "sideLap"], "39 in", "tooLow layers.13.courseCover"],
    ["more water at least than at most", ["packs", "setting mortar", "waterLow"], "7 qt", "tooLow packs.setting mortar.holdBack"],
    ["a lap of the lath as wide as it is", ["layers", 14, "sideLap"], "27 in", "tooLow layers.14.widthBetweenLaps"],
  ] as const)("%s", (_, path, value, problem) => {
    const told = pathsOf(withValue(path, value, withValue(["packs", last], undefined, full)));
    expect(told).toContain(`missing packs.${last}`);
    // Goods from a roll are laid on each face by itself, and each says so.
    expect([...new Set(told.filter((one) => one !== `missing packs.${last}`))]).toEqual([problem]);
  });
});
