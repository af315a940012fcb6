// Rows that are taken off together in plain numbers must come out as each does by itself: the same lines, counts to the
// last one, the same problems word for word, the same totals. Walls are drawn by lot, wrong ones among them.
import { describe, expect, it, vi } from "vitest";
import { quantity, type Quantity, sum } from "../../src/core/index.js";
import { type Assembly, type Cells, type Job, takeOff, takeOffRows, type TakenRow, type WallPattern } from "../../src/takeoff/index.js";
import { type Draw, drawFrom } from "../support/random.js";

/** How many rows were taken off by themselves. */
const alone = vi.hoisted(() => ({ rows: 0 }));

vi.mock(import("../../src/takeoff/take-read.js"), async (original) => {
  const { takeOffOfRead, ...rest } = await original();
  const counted: typeof takeOffOfRead = (of) => {
    const real = takeOffOfRead(of);
    const attempt: typeof real.try = (input) => {
      alone.rows += 1;
      return real.try(input);
    };
    return Object.assign((input: Parameters<typeof real>[0]) => real(input), real, { try: attempt });
  };
  return { ...rest, takeOffOfRead: counted };
});

async function all(rows: readonly Cells[], assembly: Assembly, wall: WallPattern): Promise<{ readonly taken: readonly TakenRow[]; readonly totals: ReturnType<ReturnType<typeof takeOffRows>["totals"]> }> {
  const taken: TakenRow[] = [];
  const together = takeOffRows(rows, { assembly, wall });
  for await (const one of together) taken.push(one);
  return { taken, totals: together.totals() };
}

/** A row by itself, under the number it has among the others: there is nothing yet that it could be worked out with. */
async function byItself(cells: Cells, row: number, assembly: Assembly, wall: WallPattern): Promise<TakenRow> {
  const { taken: [one] } = await all([{ row, cells }], assembly, wall);
  if (one === undefined) throw new Error("a row gives a result");
  return one;
}

const bag = { bag: "50 lb", yield: "0.45 ft3", waterLow: "5 qt", waterHigh: "6 qt" } as const;
const wasteOf = (waste: string, ...items: readonly string[]): Assembly["allowances"] => Object.fromEntries(items.map((item) => [item, { waste }]));

const full: Assembly = {
  measuredTo: "backing",
  layers: [
    { kind: "studs", spacing: "16 in" },
    { kind: "boards", name: "sheathing", acrossStuds: "4 ft", alongStuds: "8 ft", edgesBacked: false, screwSpacing: "8 in", edgeDistance: "3/8 in" },
    { kind: "boards", name: "board", acrossStuds: "5 ft", alongStuds: "3 ft", edgesBacked: true, screwSpacing: "8 in", edgeDistance: "3/8 in" },
    { kind: "barrier", name: "barrier", wetFilm: "18 mil", coats: 2, deductFrom: "4 ft2", weightPerArea: "0.2 lb/ft2" },
    { kind: "sheet goods", name: "mat", sheetWidth: "39 in", sideLap: "3 in", endLap: "4 in", fastenersPerArea: "1.5 /ft2" },
    { kind: "ledger", name: "ledger", lap: "0 in" },
    { kind: "trim", name: "sills", along: ["sills"], beyond: "2 in", lap: "0 in" },
    { kind: "trim", name: "edges", along: ["heads", "jambs", "round openings", "caps", "outside corners", "soffits"], beyond: "4 in", lap: "1 in" },
    { kind: "setting bed", name: "setting", bed: { from: "trowel", notch: "square", depth: "1/2 in", width: "1/2 in", tooth: "1/2 in", angle: "45 deg" }, backButter: "1/8 in", butteredShare: "100 %" },
    {
      kind: "units", name: "flats", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", unitThickness: "1 in", headJoint: "3/8 in", bedJoint: "1/2 in",
      corners: { name: "corners", longLeg: "8 in", shortLeg: "4 in" }, spacers: { name: "spacers", perUnit: 2, reuseShare: "60 %" },
    },
    { kind: "joints", name: "joints", squeezeOut: "1/4 in", tooling: { profile: "raked", profileDepth: "3/16 in" } },
    { kind: "movement joints", name: "sealant", length: "0 ft", insideCorners: true, width: "3/8 in", backerRod: "rod" },
  ],
  packs: {
    "sheathing screws": { pieces: 1000 }, "board screws": { pieces: 500 }, "board edge backing": { length: "12 ft" }, barrier: { volume: "5 gal" },
    mat: { length: "50 ft" }, "mat fasteners": { pieces: 250 }, ledger: { length: "16 ft" }, sills: { length: "3 ft" }, edges: { length: "10 ft" },
    setting: bag, flats: { pieces: 40 }, corners: { pieces: 12 }, joints: bag, sealant: { volume: "10 fl oz" }, rod: { length: "100 ft" },
  },
  allowances: {
    ...wasteOf("10 %", "sheathing", "sheathing screws", "board", "board screws", "board edge backing", "mat", "mat fasteners", "ledger", "sills", "edges", "setting", "flats", "corners", "joints", "sealant", "rod"),
    barrier: { lossShare: "15 %" },
  },
  spare: { flats: "2 %", corners: "2 %", sheathing: "1 %" },
  weights: { perPack: { flats: "55 lb", setting: "50 lb", sheathing: "61 lb" }, hoistLoad: "400 lb" },
  prices: {
    smallest: "0.01 USD", markup: "12 %", allowance: { share: "5 %", taxed: true }, tax: "8.25 %",
    items: { flats: { perPack: "84.50 USD", taxed: true }, setting: { perPack: "31.15 USD", taxed: true }, sheathing: { each: "40 USD", taxed: false, markup: "0 %" } },
  },
  labour: { efficiency: "80 %", tasks: [{ name: "set stone", of: "flats", hours: "1 h", per: 12 }, { name: "corners", of: "corner edges", hours: "1 h", per: "3 ft" }, { name: "barrier", of: "backing", hours: "1 h", per: "100 ft2" }] },
};

/** Nothing is wasted and sizes are round, so that packs often come out whole. */
const even: Assembly = {
  measuredTo: "backing",
  layers: [
    { kind: "foam board", name: "foam", boardWidth: "4 ft", boardHeight: "8 ft", fastenersPerArea: "0.5 /ft2" },
    { kind: "sheet goods", name: "paper", sheetWidth: "3 ft", sideLap: "0 in", endLap: "0 in" },
    { kind: "trim", name: "screed", along: ["base"], lap: "0 in" },
    { kind: "units", name: "units", unitLength: "23-5/8 in", unitHeight: "11-5/8 in", unitThickness: "1 in", headJoint: "3/8 in", bedJoint: "3/8 in", corners: { name: "corners", longLeg: "8 in", shortLeg: "4 in" } },
  ],
  packs: { "foam fasteners": { pieces: 8 }, paper: { length: "20 ft" }, screed: { length: "4 ft" }, units: { pieces: 4 }, corners: { pieces: 2 } },
  allowances: wasteOf("0 %", "foam", "foam fasteners", "paper", "screed", "units", "corners"),
};

const metric: Assembly = {
  measuredTo: "stoneFace",
  layers: [
    { kind: "masonry backing" },
    { kind: "lath", name: "lath", sheetWidth: "700 mm", sheetLength: "2.5 m", sideLap: "25 mm", endLap: "50 mm", fastenersPerArea: "12 /m2" },
    { kind: "scratch coat", name: "scratch", thickness: "12 mm" },
    { kind: "setting bed", name: "setting", bed: { from: "thickness", thickness: "12 mm" }, backButter: "3 mm", butteredShare: "100 %" },
    { kind: "units", name: "flats", unitLength: "290 mm", unitHeight: "90 mm", unitThickness: "25 mm", headJoint: "10 mm", bedJoint: "10 mm", corners: { name: "corners", longLeg: "200 mm", shortLeg: "100 mm" } },
  ],
  packs: {
    "lath fasteners": { pieces: 200 }, scratch: { bag: "25 kg", yield: "13.2 L", waterLow: "4 L", waterHigh: "5 L" }, setting: { bag: "25 kg", yield: "13.2 L", waterLow: "4 L", waterHigh: "5 L" },
    flats: { pieces: 36 }, corners: { pieces: 10 },
  },
  allowances: wasteOf("7.5 %", "lath", "lath fasteners", "scratch", "setting", "flats", "corners"),
};

const column = (name: string): { readonly column: string } => ({ column: name });
const window = (shape: WallPattern): WallPattern => ({ shape, count: column("windows"), returnDepth: column("return"), returnUnits: column("units"), toBase: false });

/** Walls of several shapes, by name; each takes what it needs from the same columns. */
const patterns: Readonly<Record<string, WallPattern>> = {
  rectangle: {
    name: column("wall"), shape: { kind: "rectangle", width: column("width"), height: column("height") },
    openings: [
      window({ kind: "rectangle", width: column("window width"), height: column("window height") }),
      { name: "door", shape: { kind: "rectangle", width: "3 ft", height: column("door height") }, count: column("doors"), returnDepth: "4 in", returnUnits: "flat", toBase: true },
    ],
    outsideCorners: [{ height: column("height"), count: column("corners"), otherFace: "unclad" }, { height: "5 ft", otherFace: "elevation" }],
    insideCorners: [{ height: column("height"), count: column("inside"), otherFace: "unclad" }],
    soffits: [{ length: column("window width"), depth: "2 ft", count: column("soffits") }],
    caps: [{ length: column("width"), count: column("soffits") }],
  },
  "gable and arch": {
    name: column("wall"), shape: { kind: "gable", width: column("width"), height: column("height") },
    openings: [window({ kind: "arched", width: column("window width"), height: column("window height"), rise: "6 in" })],
    outsideCorners: [{ height: "4 ft", count: column("corners"), otherFace: "unclad" }],
  },
  "trapezoid and round": {
    name: "one name", shape: { kind: "trapezoid", width: column("width"), leftHeight: column("height"), rightHeight: "9 ft" },
    openings: [window({ kind: "round", diameter: column("window width") })],
    outsideCorners: [{ height: "8 ft", otherFace: "unclad" }],
  },
  segment: { name: column("wall"), shape: { kind: "segment", width: column("width"), rise: column("rise") }, openings: [], outsideCorners: [] },
  polygon: {
    name: column("wall"),
    shape: { kind: "polygon", points: [{ x: "0 ft", y: "0 ft" }, { x: column("width"), y: "0 ft" }, { x: column("width"), y: column("height") }, { x: column("window width"), y: "12 ft" }, { x: "0 ft", y: "8 ft" }] },
    openings: [window({ kind: "rectangle", width: column("window width"), height: column("window height") })],
    outsideCorners: [],
  },
};

const eighths = (draw: Draw): string => ["", "", "", "-1/8", "-1/2", "-5/8"][draw.whole(0, 5)] ?? "";
/** A length as people write it. */
const lengthText = (draw: Draw, from: number, to: number): string => {
  const feet = draw.whole(from, to);
  return [`${String(feet)} ft`, `${String(feet)} ft`, `${String(feet)} ft`, `${String(feet * 12)}${eighths(draw)} in`, `${String(feet)} ft ${String(draw.whole(0, 11))}${eighths(draw)} in`, `${String(feet)}.25 ft`][draw.whole(0, 5)] ?? "";
};
const metres = (draw: Draw, from: number, to: number): string => `${(draw.whole(from * 30, to * 30) / 100).toFixed(2)} m`;

function drawnRow(draw: Draw, index: number, lengths: typeof lengthText): Cells {
  const right: Record<string, unknown> = {
    wall: `wall ${String(index)}`, width: lengths(draw, 18, 60), height: lengths(draw, 9, 14), rise: "5 ft", "window width": lengths(draw, 2, 4), "window height": lengths(draw, 2, 5), "door height": lengths(draw, 6, 8),
    windows: draw.whole(0, 4) === 0 ? "0" : draw.whole(1, 2), doors: String(draw.whole(0, 1)), corners: draw.whole(0, 2), inside: draw.whole(0, 1), soffits: draw.whole(0, 1), return: draw.whole(0, 4) === 0 ? "0 in" : `${String(draw.whole(2, 8))} in`, units: draw.whole(0, 2) === 0 ? "flat" : "corner",
  };
  if (draw.whole(0, 9) > 0) return right;
  const wrong: readonly (readonly [string, unknown])[] = [
    ["width", ""], ["width", "=A1*2"], ["width", "12"], ["height", "9 gal"], ["height", "0 ft"], ["height", "-3 ft"], ["window width", "70 ft"], ["window height", "16 ft"], ["windows", "x"], ["windows", 400], ["windows", 1.5],
    ["corners", undefined], ["return", "1e31 in"], ["units", "round"], ["wall", " "], ["wall", "w".repeat(81)], ["door height", null], ["width", { value: 20, unit: "ft" }], ["width", quantity("length", "20 ft")], ["height", 9], ["width", "20.123456789012345 ft"], ["width", "61/3 ft"], ["width", "4 ft"], ["width", "1e9 ft"],
  ];
  const [key, value] = wrong[draw.whole(0, wrong.length - 1)] ?? ["", ""];
  return { ...right, [key]: value };
}

const counted = (one: Quantity | undefined): string | undefined => one && JSON.stringify(one);

interface Case {
  readonly name: string;
  readonly assembly: Assembly;
  readonly pattern: string;
  readonly rows: number;
  readonly lengths?: typeof lengthText;
  /** The most of the rows, in parts of 100, that may need the long way. */
  readonly most: number;
}

const cases: readonly Case[] = [
  { name: "rectangles, everything asked for", assembly: full, pattern: "rectangle", rows: 500, most: 60 },
  { name: "rectangles, packs that come out whole", assembly: even, pattern: "rectangle", rows: 700, most: 60 },
  { name: "rectangles in metres", assembly: metric, pattern: "rectangle", rows: 400, lengths: metres, most: 60 },
  { name: "gables with arched windows", assembly: metric, pattern: "gable and arch", rows: 250, most: 60 },
  { name: "trapezoids with round windows", assembly: even, pattern: "trapezoid and round", rows: 250, most: 60 },
  { name: "segments", assembly: even, pattern: "segment", rows: 100, most: 60 },
  { name: "polygons", assembly: even, pattern: "polygon", rows: 250, most: 60 },
];

describe.each(cases)("$name", ({ name, assembly, pattern, rows: count, lengths = lengthText, most }) => {
  it(`${String(count)} rows come out as each by itself`, { timeout: 300_000 }, async () => {
    const draw = drawFrom(name.length * 7919 + count);
    const rows = Array.from({ length: count }, (_, index) => drawnRow(draw, index, lengths));
    const wall = patterns[pattern] as WallPattern;
    alone.rows = 0;
    const { taken, totals } = await all(rows, assembly, wall);
    const longWay = alone.rows;
    expect(taken).toHaveLength(count);
    const nets = new Map<string, Quantity[]>();
    let [refused, cost] = [0, 0];
    for (const [index, row] of taken.entries()) {
      const own = await byItself(rows[index] as Cells, index + 2, assembly, wall);
      if (!own.ok || !row.ok) {
        expect(row).toEqual(own);
        refused += 1;
        continue;
      }
      const { lines, cost: price } = own.solution.answers;
      cost += Number(price?.amounts.total.times(100).toFixed() ?? 0);
      expect([row.row, row.name]).toEqual([own.row, own.name]);
      expect(row.lines.map(({ item, layer, spareOf, unit, packs }) => [item, layer, spareOf, unit, packs])).toEqual(lines.map((line) => [line.item, line.layer, line.spareOf, line.toOrder.unit, line.packs?.toNumber()]));
      for (const [at, { net, toOrder }] of row.lines.entries()) {
        const exact = lines[at]!;
        const [ownNet, ownToOrder] = [exact.net.toNumber(exact.toOrder.unit), exact.toOrder.toNumber()];
        expect(Math.abs(net - ownNet)).toBeLessThanOrEqual(Math.abs(ownNet) * 1e-12);
        if (Number.isInteger(ownToOrder)) expect(toOrder).toBe(ownToOrder);
        expect(Math.abs(toOrder - ownToOrder)).toBeLessThanOrEqual(Math.abs(ownToOrder) * 1e-12);
        nets.set(exact.item, [...(nets.get(exact.item) ?? []), exact.net]);
      }
      if (index % 10 === 0) expect(JSON.stringify(row.solution)).toBe(JSON.stringify(own.solution));
    }
    expect([totals.rows, totals.refused]).toEqual([count, refused]);
    expect(totals.items.map(({ item, net }) => [item, counted(net)])).toEqual([...nets].map(([item, some]) => [item, counted(sum(some as Quantity<"count">[]))]));
    expect(totals.cost).toBe(assembly.prices === undefined ? undefined : `${(cost / 100).toFixed(2)} USD`);
    expect(refused).toBeGreaterThan(0);
    // Most rows are worked out together, or this test says nothing.
    expect((longWay / count) * 100).toBeLessThan(most);
  });
});

it("a row worked out with others is what a job of it alone gives", async () => {
  const wall = patterns.rectangle as WallPattern;
  const draw = drawFrom(11);
  const rows = Array.from({ length: 60 }, (_, index): Cells => ({ wall: `w${String(index)}`, width: `${String(draw.whole(20, 60))} ft`, height: `${String(draw.whole(9, 12))} ft`, "window width": "3 ft", "window height": "4 ft", "door height": "7 ft", windows: 2, doors: 1, corners: 1, inside: 0, soffits: 1, return: "6 in", units: "corner" }));
  const { taken } = await all(rows, even, wall);
  for (const [index, row] of taken.entries()) {
    const { width, height } = rows[index] as { readonly width: string; readonly height: string };
    const job = {
      ...even,
      elevations: [{
        name: `w${String(index)}`, shape: { kind: "rectangle", width, height },
        openings: [
          { shape: { kind: "rectangle", width: "3 ft", height: "4 ft" }, count: 2, returnDepth: "6 in", returnUnits: "corner", toBase: false },
          { name: "door", shape: { kind: "rectangle", width: "3 ft", height: "7 ft" }, count: "1", returnDepth: "4 in", returnUnits: "flat", toBase: true },
        ],
        outsideCorners: [{ height, count: 1, otherFace: "unclad" }, { height: "5 ft", otherFace: "elevation" }],
        insideCorners: [],
        soffits: [{ length: "3 ft", depth: "2 ft", count: 1 }],
        caps: [{ length: width, count: 1 }],
      }],
    } as Job;
    const list = takeOff(job);
    if (!row.ok) throw new Error(row.problems[0]?.message ?? "");
    expect(row.lines.map(({ item, packs }) => [item, packs])).toEqual(list.lines.map(({ item, packs }) => [item, packs?.toNumber()]));
    expect(JSON.stringify(row.solution.answers)).toBe(JSON.stringify(list));
  }
});
