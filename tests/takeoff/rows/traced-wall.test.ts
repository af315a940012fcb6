// One wall traced, and others worked out as it was: figures by hand from what a square foot takes (foam-wall.ts). A trace that
// gives for its own row anything but what came out for that row is not to be had.
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/amount.js";
import { quantity, type Quantity } from "../../../src/core/index.js";
import { makeQuantity } from "../../../src/core/quantity.js";
import { Trace } from "../../../src/many/trace.js";
import { fillWall, valueAt, type WallPattern } from "../../../src/takeoff/rows/fill-wall.js";
import { readAgain, readElevation } from "../../../src/takeoff/rows/read-elevation.js";
import { type Sample, TracedWall, traceWall } from "../../../src/takeoff/rows/traced-wall.js";
import type { Taken, TakeOff } from "../../../src/takeoff/take-job.js";
import { takeOffOfRead } from "../../../src/takeoff/take-read.js";
import { foamAssemblyRead as assembly, foamWall } from "./foam-wall.js";

/** A row as it is taken off by itself. */
function sampleOf(width: string, height: string, pattern = foamWall, of = assembly): Sample {
  const cells = { wall: "east", width, height };
  const { wall, places } = fillWall(pattern, cells);
  const read = readAgain(wall);
  const { answers } = takeOffOfRead("many walls").solve({ ...of, elevations: [read] });
  return { cells, read: new Map(places.map(({ column, path }) => [column, valueAt(path, read)])), answers };
}

const columns = [{ name: "width", unit: "ft" }, { name: "height", unit: "ft" }] as const;
const sample = sampleOf("40 ft", "8 ft");
const traced = (of: Sample = sample): TracedWall | undefined => traceWall(foamWall, assembly, of, columns, 8);

function tracedOrNot(): TracedWall {
  const wall = traced();
  if (wall === undefined) throw new Error("the wall can be traced");
  return wall;
}

function without<Of extends object, Key extends keyof Of>(key: Key, of: Of): Omit<Of, Key> {
  return Object.fromEntries(Object.entries(of).filter(([name]) => name !== key)) as Omit<Of, Key>;
}

/** The lines of a wall of so many ft2 with so many boards, packs of fasteners and packs of flats. */
function linesOf(area: number, boards: number, fasteners: number, flats: number): readonly object[] {
  const foam = { layer: "foam", unit: "count" };
  return [
    { item: "foam", ...foam, net: area / 32, toOrder: boards, packs: boards },
    { item: "foam fasteners", ...foam, net: area / 2, toOrder: (area / 2) * 1.1, packs: fasteners },
    { item: "flats", layer: "flats", unit: "count", net: area * 3, toOrder: area * 3, packs: flats },
    { item: "spacers", layer: "flats", unit: "count", net: area * 6, toOrder: (area * 6 * 4) / 10 },
  ];
}

describe("rows worked out in a trace", () => {
  it("have the lines of their own figures", () => {
    const wall = tracedOrNot();
    wall.run([Float64Array.of(40, 20, 30), Float64Array.of(8, 8, 8)], 3);
    expect([0, 1, 2].map((place) => wall.rows.holds(place))).toEqual([true, true, true]);
    // 320 / 32 * 1.1 = 11; 176 / 50 = 3.52: 4; 960 / 40 = 24
    expect(wall.linesAt(0)).toStrictEqual(linesOf(320, 11, 4, 24));
    // 160 / 32 * 1.1 = 5.5: 6; 88 / 50 = 1.76: 2; 480 / 40 = 12
    expect(wall.linesAt(1)).toStrictEqual(linesOf(160, 6, 2, 12));
    // 240 / 32 * 1.1 = 8.25: 9; 132 / 50 = 2.64: 3; 720 / 40 = 18
    expect(wall.linesAt(2)).toStrictEqual(linesOf(240, 9, 3, 18));
    expect(Object.isFrozen(wall.linesAt(2))).toBe(true);
  });

  it("know which figures are an item's net, what is bought of it, and the cost", () => {
    const wall = tracedOrNot();
    wall.run([Float64Array.of(40, 20), Float64Array.of(8, 8)], 2);
    const at = (figure: number | undefined, place: number): string => String(wall.rows.exactly(figure ?? NaN, place));
    expect(wall.items.map(({ item, net, bought }) => [item, at(net, 1), at(bought, 1)])).toEqual([["foam", "5", "6"], ["foam fasteners", "80", "2"], ["flats", "480", "12"], ["spacers", "960", "384"]]);
    // 11 * 20 + 24 * 30, 6 * 20 + 12 * 30
    expect([at(wall.cost, 0), at(wall.cost, 1)]).toEqual(["940", "480"]);
  });

  it("give way to others only once that has been told", () => {
    const wall = tracedOrNot();
    const seen: string[] = [];
    wall.run([Float64Array.of(40), Float64Array.of(8)], 1);
    wall.beforeNext(() => void seen.push(String(wall.rows.exactly(wall.items[2]?.net ?? NaN, 0))));
    wall.run([Float64Array.of(20), Float64Array.of(8)], 1);
    wall.run([Float64Array.of(30), Float64Array.of(8)], 1);
    expect(seen).toEqual(["960", "480"]);
    expect(wall.linesAt(0)).toStrictEqual(linesOf(240, 9, 3, 18));
  });
});

it("what is the same in all rows is traced with the rest", () => {
  const [foam] = assembly.layers;
  const capped = { ...(foamWall as { readonly [key: string]: WallPattern }), caps: [{ length: "12 ft" }] };
  const layers = [...(foam === undefined ? [] : [foam]), { kind: "trim" as const, name: "cap", along: ["caps" as const], lap: quantity("length", "0 in") }];
  const of = { ...without("prices", assembly), layers, packs: { ...assembly.packs, cap: { length: quantity("length", "5 ft") } }, allowances: { ...assembly.allowances, cap: { waste: quantity("ratio", "0 %") } } };
  const wall = traceWall(capped, of, sampleOf("40 ft", "8 ft", capped, of), columns, 8);
  wall?.run([Float64Array.of(20), Float64Array.of(8)], 1);
  // 12 ft of caps in lengths of 5 ft
  expect(wall?.linesAt(0)[2]).toStrictEqual({ item: "cap", layer: "cap", unit: "ft", net: 12, toOrder: 12, packs: 3 });
});

it("what is ordered by measure and not in packs is not bought by count, and without prices there is no cost", () => {
  const trace = new Trace();
  const length = makeQuantity("length", trace.input("width", exact(3n)), "ft");
  const line = (item: string, toOrder: Quantity): object => ({ item, layer: "trim", net: length, toOrder });
  const wall = new TracedWall({ lines: [line("rod", length), line("clips", quantity("count", 3))] } as unknown as Taken, trace, [{ name: "width", unit: "ft" }], 4);
  expect(wall.items.map(({ item, bought }) => [item, bought === undefined])).toEqual([["rod", true], ["clips", false]]);
  expect(wall.cost).toBeUndefined();
});

describe("a trace that is not what came out for its row", () => {
  const { answers } = sample;
  /** The answers with one line changed. */
  const withLine = (item: string, changed: object): TakeOff => ({ ...answers, lines: answers.lines.map((line) => (line.item === item ? { ...line, ...changed } : line)) });
  const withoutCost = without("cost", answers);

  it("is kept where all is the same", () => {
    expect(traced({ ...sample, answers: withLine("flats", {}) })).toBeInstanceOf(TracedWall);
  });

  it.each<[what: string, answers: TakeOff]>([
    ["another item", withLine("flats", { item: "corners" })],
    ["another net", withLine("flats", { net: quantity("count", 961) })],
    ["a smaller net", withLine("flats", { net: quantity("count", 959) })],
    ["another net of the last line", withLine("spacers", { net: quantity("count", 961) })],
    ["more to order", withLine("flats", { toOrder: quantity("count", 961) })],
    ["something else to order", withLine("flats", { toOrder: makeQuantity("ratio", exact(960n), "count") })],
    ["another unit", withLine("flats", { toOrder: makeQuantity("count", exact(960n), "ratio") })],
    ["another number of packs", withLine("flats", { packs: quantity("count", 25) })],
    ["no packs", withLine("flats", { packs: undefined })],
    ["packs where there are none", withLine("spacers", { packs: quantity("count", 768) })],
    ["a line less", { ...answers, lines: answers.lines.slice(0, -1) }],
    ["a line more", { ...answers, lines: [...answers.lines, ...answers.lines.slice(-1)] }],
    ["no cost", withoutCost],
  ])("is not to be had: %s", (_what, other) => {
    expect(traced({ ...sample, answers: other })).toBeUndefined();
  });

  it("is not to be had where there is a cost and it has none", () => {
    const unpriced = without("prices", assembly);
    expect(traceWall(foamWall, unpriced, sample, columns, 8)).toBeUndefined();
    expect(traceWall(foamWall, unpriced, { ...sample, answers: withoutCost }, columns, 8)).toBeInstanceOf(TracedWall);
  });
});

describe("a wall that cannot be traced", () => {
  it("is not to be had, whatever the reason", () => {
    expect(traced({ ...sample, cells: { width: "40 ft", height: "8 ft" } })).toBeUndefined();
    expect(traced({ ...sample, read: new Map() })).toBeUndefined();
  });
});

describe("an elevation", () => {
  const wall = { name: "east", shape: { kind: "rectangle", width: "40 ft", height: "8 ft" }, openings: [], outsideCorners: [] };

  it("is read, or all its problems are told", () => {
    const read = readElevation(wall);
    expect("value" in read && read.value.name).toBe("east");
    const bad = readElevation({ ...wall, name: 3, shape: { ...wall.shape, width: "40" } });
    expect("issues" in bad && bad.issues.map(({ code, path }) => [code, path])).toEqual([["wrongKind", ["name"]], ["noUnit", ["shape", "width"]]]);
  });

  it("that is read again and has changed is refused", () => {
    expect(readAgain(wall).name).toBe("east");
    expect(() => readAgain({ ...wall, openings: undefined })).toThrow(/openings/);
  });
});

