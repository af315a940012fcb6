// A gable end of masonry with a door under a half-round arch, clad over foam, mat, lath and scratch coat; by hand.
//
// outline (0,0) (24,0) (24,9) (12,14) (0,9) ft: 24 * 9 + 24 * 5/2 = 276 ft2; round it 24 + 9 + 13 + 13 + 9 = 68 ft, since 5-12-13 is a right triangle
// door 6 ft wide, jambs 6 ft, rise 3 ft, a half circle: 36 + 9 pi/2 ft2; its edges without the sill 12 + 3 pi ft
// returns (12 + 3 pi) * 4/12 = 4 + pi ft2; two corners 9 ft high, nothing clad round them
// stone stands 1-1/2 + 1/2 = 2 in = 1/6 ft out; faces that meet 18 + 2 (12 + 3 pi) = 42 + 6 pi ft; growth 7 + pi ft2
// corner cover (8 and 4 in): 18 ft2, 9 of it turned; jambs 12 ft * (8 + min(4, 4)) in = 12 ft2; 30 ft2 on 30 ft
// backing 276 - 36 - 9 pi/2 = 240 - 4.5 pi; stone face 240 - 4.5 pi + (4 + pi) + 9 + (7 + pi) = 260 - 2.5 pi; flat 230 - 2.5 pi ft2
import { describe, expect, it } from "vitest";
import { type Job, takeOff } from "../../src/takeoff/index.js";
import { expectAll, lineOf } from "./by-hand.js";

const job: Job = {
  measuredTo: "backing",
  elevations: [
    {
      name: "gable end",
      shape: { kind: "polygon", points: [{ x: "0 ft", y: "0 ft" }, { x: "24 ft", y: "0 ft" }, { x: "24 ft", y: "9 ft" }, { x: "12 ft", y: "14 ft" }, { x: "0 ft", y: "9 ft" }] },
      openings: [{ name: "door", shape: { kind: "arched", width: "6 ft", height: "6 ft", rise: "3 ft" }, returnDepth: "4 in", returnUnits: "corner", toBase: true }],
      outsideCorners: [{ height: "9 ft", otherFace: "unclad", count: 2 }],
    },
  ],
  layers: [
    { kind: "masonry backing" },
    { kind: "foam board", name: "foam", boardWidth: "4 ft", boardHeight: "8 ft" },
    { kind: "sheet goods", name: "drainage mat", sheetWidth: "39 in", sideLap: "3 in", endLap: "4 in", fastenersPerArea: "1.5 /ft2" },
    { kind: "lath", name: "lath", sheetWidth: "27 in", sheetLength: "8 ft", sideLap: "1 in", endLap: "2 in" },
    { kind: "scratch coat", name: "scratch coat", thickness: "3/8 in" },
    { kind: "trim", name: "weep screed", along: ["base"], lap: "1 in" },
    { kind: "trim", name: "arch bead", along: ["heads"], beyond: "6 in", lap: "0 in" },
    { kind: "trim", name: "jamb bead", along: ["jambs"], lap: "0 in" },
    { kind: "setting bed", name: "setting mortar", bed: { from: "thickness", thickness: "1/2 in" }, backButter: "1/8 in", butteredShare: "100 %" },
    {
      kind: "units", name: "flat units", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", unitThickness: "1-1/2 in", headJoint: "3/8 in", bedJoint: "3/8 in",
      corners: { name: "corner units", longLeg: "8 in", shortLeg: "4 in" },
    },
    { kind: "joints", name: "joint mortar", squeezeOut: "1/2 in", tooling: { profile: "raked", profileDepth: "3/16 in" } },
  ],
  packs: {
    "drainage mat": { length: "50 ft" },
    "drainage mat fasteners": { pieces: 100 },
    "scratch coat": { bag: "80 lb", yield: "0.5 ft3", waterLow: "5 qt", waterHigh: "6 qt" },
    "weep screed": { length: "10 ft" },
    "arch bead": { length: "2 ft" },
    "jamb bead": { length: "4 ft" },
    "setting mortar": { bag: "50 lb", yield: "0.45 ft3", waterLow: "5 qt", waterHigh: "6 qt" },
    "flat units": { pieces: 25 },
    "corner units": { pieces: 9 },
    "joint mortar": { bag: "50 lb", yield: "0.42 ft3", waterLow: "3.5 qt", waterHigh: "4.5 qt" },
  },
  allowances: {
    foam: { waste: "10 %" },
    "drainage mat": { waste: "5 %" },
    "drainage mat fasteners": { waste: "5 %" },
    lath: { waste: "5 %" },
    "scratch coat": { waste: "10 %" },
    "weep screed": { waste: "0 %" },
    "arch bead": { waste: "0 %" },
    "jamb bead": { waste: "0 %" },
    "setting mortar": { waste: "15 %" },
    "flat units": { waste: "8 %" },
    "corner units": { waste: "10 %" },
    "joint mortar": { waste: "10 %" },
  },
};

interface Worked {
  readonly net: number;
  readonly unit?: string;
  /** What is rounded up to packs, and the whole number. */
  readonly packs: readonly [argument: number, up: number];
}

const backing = 240 - 4.5 * Math.PI;
const face = 260 - 2.5 * Math.PI;
const withReturns = backing + 4 + Math.PI;

const byHand: Readonly<Record<string, Worked>> = {
  foam: { net: backing / 32, packs: [(backing / 32) * 1.1, 8] },
  // (14 ft - 3 in) / 36 in = 4.58: 5 courses of 24 ft = 120 ft; with 5 %: 126; (126 - 1/3) / (50 - 1/3) = 377/149
  "drainage mat": { net: 120, unit: "ft", packs: [377 / 149, 3] },
  "drainage mat fasteners": { net: backing * 1.5, packs: [(backing * 1.5 * 1.05) / 100, 4] },
  // a sheet covers 26/12 * 94/12 = 611/36 ft2 between its laps
  lath: { net: withReturns / (611 / 36), packs: [(withReturns / (611 / 36)) * 1.05, 15] },
  // 3/8 in = 1/32 ft
  "scratch coat": { net: withReturns / 32, unit: "ft3", packs: [(withReturns / 32) * 1.1 / 0.5, 17] },
  // 24 - 6 = 18 ft; (18 - 1/12) / (10 - 1/12) = 215/119
  "weep screed": { net: 18, unit: "ft", packs: [215 / 119, 2] },
  // arch 3 pi, and 6 in at each end
  "arch bead": { net: 3 * Math.PI + 1, unit: "ft", packs: [(3 * Math.PI + 1) / 2, 6] },
  // 12 ft in pieces of 4 ft: 3, a whole number
  "jamb bead": { net: 12, unit: "ft", packs: [3, 3] },
  // (1/2 + 1/8) in = 5/96 ft
  "setting mortar": { net: (face * 5) / 96, unit: "ft3", packs: [(face * 5 * 1.15) / 96 / 0.45, 34] },
  "flat units": { net: (face - 30) * 3, packs: [((face - 30) * 3 * 1.08) / 25, 29] },
  // 30 ft in courses of 4 in = 90, with 10 % 99, / 9 = 11: whole numbers all
  "corner units": { net: 90, packs: [11, 11] },
  // joints 125/1024; depth 1-1/2 in = 1/8 ft, 3/16 of 1-1/2 in raked out: 7/8 left
  "joint mortar": { net: (face * 125 * 7) / (1024 * 8 * 8), unit: "ft3", packs: [(face * 125 * 7 * 1.1) / (1024 * 8 * 8) / 0.42, 9] },
};

describe("the gable end", () => {
  const list = takeOff(job);

  it("has these lines and no others", () => {
    expectAll(list.lines, byHand, ["mixing water for scratch coat", "mixing water for setting mortar", "mixing water for joint mortar"]);
  });

  it.each(Object.entries(byHand))("%s", (item, { net, unit, packs: [argument, up] }) => {
    const line = lineOf(list.lines, item);
    expect(line.net.toNumber(unit as never)).toBeCloseTo(net, 9);
    // No argument lies so near a whole number that plain numbers could not tell, but those that are whole themselves.
    expect(Number.isInteger(argument) || Math.abs(argument - Math.round(argument)) > 1e-6).toBe(true);
    expect(Math.ceil(argument)).toBe(up);
    expect(line.packs?.toNumber()).toBe(up);
  });

  it("faces", () => {
    expect(list.faces.face.toNumber("ft2")).toBeCloseTo(face, 9);
    expect(list.faces.flats.toNumber("ft2")).toBeCloseTo(face - 30, 9);
    expect(list.faces.backing.toNumber("ft2")).toBeCloseTo(backing, 9);
  });

  it("boards want studs, which masonry has not", () => {
    const boards = { kind: "boards" as const, name: "board", acrossStuds: "4 ft", alongStuds: "8 ft", edgesBacked: false, screwSpacing: "8 in" };
    const tried = takeOff.try({ ...job, layers: [...job.layers, boards] });
    expect(tried.ok ? "" : tried.problems[0]?.message).toContain("board is screwed to studs");
  });
});
