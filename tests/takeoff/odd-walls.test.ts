// Walls that are odd but real, and walls that cannot be: units laid tight, doors over the whole foot, a pier of corner units
// alone, gables, layers given twice. Worked by hand in plain numbers beside each.
import { describe, expect, it } from "vitest";
import { type Job, takeOff, takeOffRows, type WallPattern } from "../../src/takeoff/index.js";

type Layer = Job["layers"][number];

const bag = { bag: "50 lb", yield: "0.45 ft3", waterLow: "5 qt", waterHigh: "6 qt" } as const;
const ledger: Layer = { kind: "ledger", name: "ledger", lap: "0 in" };
const units = { kind: "units", name: "flats", unitLength: "12 in", unitHeight: "4 in", unitThickness: "1 in", headJoint: "0 in", bedJoint: "0 in", lots: "together" } as const satisfies Layer;
const bed = { kind: "setting bed", name: "bed", bed: { from: "thickness", thickness: "1/2 in" }, backButter: "0 in", butteredShare: "0 %" } as const satisfies Layer;
const tight: Job = {
  measuredTo: "stoneFace",
  elevations: [{ name: "front", shape: { kind: "rectangle", width: "40 ft", height: "1 ft" }, openings: [], outsideCorners: [] }],
  layers: [ledger, bed, units],
  packs: { ledger: { length: "16 ft" }, bed: bag, flats: { pieces: 40 } },
  allowances: { ledger: { waste: "0 %" }, bed: { waste: "0 %" }, flats: { waste: "0 %" } },
};
const corners = { name: "corners", longLeg: "8 in", shortLeg: "4 in" };

/** The lines as `item: net, to order, packs`. */
function listOf(job: unknown): readonly string[] {
  const tried = takeOff.try(job);
  if (!tried.ok) return tried.problems.map(({ code, message }) => `${code} ${message}`);
  return tried.solution.answers.lines.map(({ item, net, toOrder, packs }) => [`${item}: ${net.toString()}`, toOrder.toString(), packs?.toString()].join(", "));
}

const assumed = (job: Job): string => takeOff.solve(job).assumptions.join("\n");
const door = (width: string, height: string, more: object = {}): object => ({ shape: { kind: "rectangle", width, height }, returnDepth: "0 in", returnUnits: "flat", toBase: true, ...more });
const front = (openings: readonly object[], width = "10 ft"): object => ({ name: "front", shape: { kind: "rectangle", width, height: "10 ft" }, openings, outsideCorners: [] });

describe("units laid tight", () => {
  it("are counted by their own size", () => {
    // 40 ft2 at 12 x 4 in = 1/3 ft2: 120, three packs of 40 and none begun. 40 ft2 * 1/24 ft = 1.6667 ft3 / 0.45 = 3.70.
    expect(listOf(tight)).toEqual(["ledger: 40 ft, 40 ft, 3", "bed: 1.666666667 ft3, 1.666666667 ft3, 4", "mixing water for bed: 20 qt, 24 qt, ", "flats: 120, 120, 3"]);
  });

  it("leave nothing for joint mortar to fill", () => {
    const joints: Layer = { kind: "joints", name: "joint mortar", squeezeOut: "0 in", tooling: { profile: "flush" } };
    const job = { ...tight, layers: [...tight.layers, joints], packs: { ...tight.packs, "joint mortar": bag }, allowances: { ...tight.allowances, "joint mortar": { waste: "10 %" } } };
    expect(listOf(job)).toEqual([["headJoint", "upright"], ["bedJoint", "level"]].map(([key, which]) =>
      `tooLow layers[2].${key ?? ""} (width of the ${which ?? ""} joints): is 0 in, but must be above 0, since joint mortar fills it; leave joint mortar out where units are laid tight`));
  });
});

describe("the foot of a wall", () => {
  it("is not narrower than the openings in it", () => {
    // Two doors of 6 ft are 12 ft; the other wall would have lent the 2 ft, and 18 ft of ledger would have been ordered for 20.
    const other = { name: "back", shape: { kind: "rectangle", width: "20 ft", height: "10 ft" }, openings: [], outsideCorners: [] };
    expect(listOf({ ...tight, elevations: [front([door("6 ft", "3 ft", { count: 2 })]), other] })).toEqual([
      "refused elevations[0].openings (openings in the wall): openings of 12 ft at the foot of the wall: front is 10 ft wide",
    ]);
    expect(listOf({ ...tight, elevations: [front([door("5 ft", "3 ft", { count: 2 })]), other] })[0]).toBe("ledger: 20 ft, 20 ft, 2");
    expect(listOf({ ...tight, elevations: [front([door("6 ft", "3 ft", { count: 2, toBase: false })]), other] })[0]).toBe("ledger: 30 ft, 30 ft, 2");
  });

  it("is nothing where a door takes it all: no ledger, and that is told", () => {
    const job = { ...tight, elevations: [front([door("10 ft", "8 ft")])] };
    expect(listOf(job)).toEqual(["refused layers[0]: 0 ft: openings take the whole foot of the walls; leave this layer out"]);
    // 100 - 80 = 20 ft2, 60 units.
    const [packs, allowances] = [{ bed: bag, flats: { pieces: 40 } }, { bed: { waste: "0 %" }, flats: { waste: "0 %" } }];
    expect(listOf({ ...job, layers: [bed, units], packs, allowances }).at(-1)).toBe("flats: 60, 60, 2");
  });

  it("is nothing in a row: the others have their ledger, that wall has none", async () => {
    const { layers, packs, allowances } = tight;
    const opening = { shape: { kind: "rectangle", width: { column: "door" }, height: "8 ft" }, returnDepth: "0 in", returnUnits: "flat", toBase: true } as const;
    const wall: WallPattern = { name: { column: "wall" }, shape: { kind: "rectangle", width: "10 ft", height: "10 ft" }, openings: [opening], outsideCorners: [] };
    const items: string[][] = [];
    const rows = ["10 ft", "6 ft", "11 ft"].map((width, index) => ({ wall: String(index), door: width }));
    for await (const row of takeOffRows(rows, { assembly: { measuredTo: "stoneFace", layers, packs, allowances }, wall })) {
      items.push(row.ok ? row.lines.map(({ item, net }) => `${item} ${net.toString()}`) : row.problems.map(({ code, path }) => `${code} ${path.join(".")}`));
    }
    expect(items.map(([first]) => first)).toEqual([expect.stringContaining("bed "), expect.stringContaining("ledger 4"), expect.stringContaining("refused ")]);
  });

  it("of a gable is taken for its own, and that is said", () => {
    const gable: Job["elevations"][number] = { name: "gable", shape: { kind: "gable", width: "24 ft", height: "5 ft" }, openings: [], outsideCorners: [] };
    expect(assumed(tight)).not.toContain("foot of its own");
    expect(assumed({ ...tight, elevations: [gable] })).toContain("ledger: a gable or a segment has a foot of its own");
    const screed: Layer = { kind: "trim", name: "ledger", along: ["base"], lap: "0 in" };
    const window = { shape: { kind: "rectangle", width: "2 ft", height: "2 ft" }, returnDepth: "0 in", returnUnits: "flat" } as const;
    const job: Job = { ...tight, elevations: [{ ...gable, openings: [window] }], layers: [screed, bed, units] };
    expect(assumed(job)).toContain("ledger: a gable or a segment has a foot of its own");
    expect(assumed(job)).toContain("ledger: openings of which toBase is not said stand above the foot of the wall");
  });
});

describe("corner units alone", () => {
  const pier = (width: string): object => ({
    ...tight, elevations: [], columns: [{ name: "pier", width, depth: "12 in", height: "8 ft" }], layers: [bed, { ...units, corners }],
    packs: { bed: bag, flats: { pieces: 40 }, corners: { pieces: 12 } }, allowances: { bed: { waste: "0 %" }, flats: { waste: "0 %" }, corners: { waste: "0 %" } },
  });

  it("cover a pier whose sides are as wide as a long and a short leg together", () => {
    // Four edges of 8 ft in courses of 4 in: 24 each. 4 * 8 ft * 12 in = 32 ft2 of 32 ft2.
    expect(listOf(pier("12 in")).slice(-2)).toEqual(["flats: 0, 0, 0", "corners: 96, 96, 8"]);
    expect(listOf(pier("11 in"))).toEqual([expect.stringMatching(/^tooLow layers\[1\]\.flatArea/)]);
  });
});

describe("a layer that takes the whole face", () => {
  it.each(["units", "setting bed", "studs", "masonry backing", "joints"])("is there once: %s", (kind) => {
    const studs: Layer = { kind: "studs", spacing: "16 in" };
    const joints: Layer = { kind: "joints", name: "joint mortar", squeezeOut: "0 in", tooling: { profile: "flush" } };
    const wide = { ...units, headJoint: "3/8 in", bedJoint: "3/8 in" } as const;
    const all: readonly Layer[] = [studs, { kind: "masonry backing" }, bed, wide, joints];
    const again = all.filter((one) => one.kind === kind).map((one) => ("name" in one ? { ...one, name: "another" } : one));
    const packs = { bed: bag, flats: { pieces: 40 }, "joint mortar": bag, ...(again.some((one) => "name" in one) ? { another: kind === "units" ? { pieces: 40 } : bag } : {}) };
    const job = { ...tight, layers: [...all, ...again], packs, allowances: Object.fromEntries(Object.keys(packs).map((name) => [name, { waste: "5 %" }])) };
    expect(listOf(job)).toEqual([`refused layers[5].kind: ${kind}: a wall has one such layer, and there is one before it; take a wall that is built with another off by itself`]);
  });
});
