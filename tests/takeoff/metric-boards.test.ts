// A wall drawn in metres to the stone face, on studs at 600 and at 400 mm, all by hand.
//
// wall 12 * 3 = 36 m2; door 1 * 2.1 (no returns), two windows 1.5 * 1.2: openings 2.1 + 3.6 = 5.7 m2
// returns of the windows 2 * 5.4 m = 10.8 m * 0.15 m = 1.62 m2; jambs 4.8 m with corner units
// one corner 3 m, nothing clad round it; stone stands 25 + 10 = 35 mm before the backing
// faces that meet outside 3 + 2 * 10.8 = 24.6 m; growth 24.6 * 0.035 = 0.861 m2; backing 36 - 5.7 - 0.861 = 29.439 m2
// corner cover (legs 200 and 100 mm): 3 * 0.3 = 0.9 m2, 0.45 of it turned; jambs 4.8 * (0.2 + min(0.1, 0.15)) = 1.44 m2; 2.34 m2 on 7.8 m
// stone face 36 - 5.7 + 1.62 + 0.45 = 32.37 m2; flat 32.37 - 2.34 = 30.03 m2
import { describe, expect, it } from "vitest";
import { type Job, takeOff } from "../../src/takeoff/index.js";
import { type ByHand, expectAll, expectLine, isWhole, lineOf } from "./by-hand.js";

function wall(spacing: "600 mm" | "400 mm"): Job {
  return {
    measuredTo: "stoneFace",
    elevations: [
      {
        name: "yard side",
        shape: { kind: "rectangle", width: "12 m", height: "3 m" },
        openings: [
          { name: "door", shape: { kind: "rectangle", width: "1 m", height: "2.1 m" }, returnDepth: "0 mm", returnUnits: "flat", toBase: true },
          { name: "windows", shape: { kind: "rectangle", width: "1.5 m", height: "1.2 m" }, count: 2, returnDepth: "150 mm", returnUnits: "corner", toBase: false },
        ],
        outsideCorners: [{ height: "3 m", otherFace: "unclad" }],
      },
    ],
    layers: [
      { kind: "studs", spacing },
      { kind: "boards", name: "sheathing", acrossStuds: "1200 mm", alongStuds: "2400 mm", edgesBacked: false, screwSpacing: "200 mm", edgeDistance: "10 mm" },
      { kind: "boards", name: "cement board", acrossStuds: "1200 mm", alongStuds: "900 mm", edgesBacked: false, screwSpacing: "200 mm", edgeDistance: "10 mm" },
      { kind: "joint tape", name: "joint tape", over: "cement board", overlaps: 20, overlap: "50 mm" },
      { kind: "barrier", name: "barrier", wetFilm: "500 um", coats: 2, deductFrom: "0 m2" },
      { kind: "ledger", name: "ledger", lap: "0 mm" },
      { kind: "setting bed", name: "setting mortar", bed: { from: "thickness", thickness: "10 mm" }, backButter: "5 mm", butteredShare: "100 %" },
      {
        kind: "units", name: "flat units", unitLength: "290 mm", unitHeight: "90 mm", unitThickness: "25 mm", headJoint: "10 mm", bedJoint: "10 mm",
        corners: { name: "corner units", longLeg: "200 mm", shortLeg: "100 mm" },
      },
      { kind: "joints", name: "joint mortar", squeezeOut: "5 mm", tooling: { profile: "raked", profileDepth: "3 mm" } },
    ],
    packs: {
      "sheathing screws": { pieces: 250 },
      "cement board screws": { pieces: 100 },
      "joint tape": { length: "45 m" },
      barrier: { volume: "13.3 L" },
      ledger: { length: "2.75 m" },
      "setting mortar": { bag: "25 kg", yield: "14 L", waterLow: "3 L", waterHigh: "3.5 L" },
      "flat units": { pieces: 20 },
      "corner units": { pieces: 6 },
      "joint mortar": { bag: "25 kg", yield: "12 L", waterLow: "2.5 L", waterHigh: "3 L" },
    },
    allowances: {
      sheathing: { waste: "8 %" },
      "sheathing screws": { waste: "5 %" },
      "cement board": { waste: "10 %" },
      "cement board screws": { waste: "5 %" },
      "joint tape": { waste: "10 %" },
      barrier: { waste: "25 %" },
      ledger: { waste: "0 %" },
      "setting mortar": { waste: "20 %" },
      "flat units": { waste: "10 %" },
      "corner units": { waste: "5 %" },
      "joint mortar": { waste: "10 %" },
    },
  };
}

const onBoth: Readonly<Record<string, ByHand>> = {
  // 29.439 / 2.88 = 29439/2880; with 8 %: 29439 * 108 / 288000
  sheathing: { net: [29439, 2880], pieces: [29439 * 108, 288000, 12], packs: [29439 * 108, 288000, 12] },
  // 29.439 / 1.08 = 3271/120; with 10 %: 35981/1200 = 29.98…
  "cement board": { net: [3271, 120], pieces: [35981, 1200, 30], packs: [35981, 1200, 30] },
  // outline 30 + 6.2 + 10.8 = 47 m; (29.439 * 4.2/1.08 - 47)/2 + 3 = (114.485 - 47)/2 + 3 = 36.7425; laps 1 m: 37.7425; with 10 %: 41.51675
  "joint tape": { net: [377425, 10000], unit: "m", packs: [4151675, 4500000, 1] },
  // 36 - 5.7 + 1.62 = 31.92 m2 * 2 * 0.5 mm = 31.92 L; with 25 %: 39.9; / 13.3: 3, a whole number
  barrier: { net: [3192, 100], unit: "L", packs: [399, 133, 3] },
  // 12 - 1 = 11 m in pieces of 2.75 m: 4, a whole number
  ledger: { net: [11, 1], unit: "m", packs: [1100, 275, 4] },
  // 32.37 * 15 mm = 485.55 L; with 20 %: 582.66; / 14
  "setting mortar": { net: [48555, 100], unit: "L", packs: [58266, 1400, 42] },
  // 30.03 / 0.03 = 1001, a whole number; with 10 %: 11011/10; / 20
  "flat units": { net: [1001, 1], pieces: [11011, 10, 1102], packs: [11011, 200, 56] },
  // 7.8 / 0.1 = 78; with 5 %: 819/10; / 6
  "corner units": { net: [78, 1], pieces: [819, 10, 82], packs: [819, 60, 14] },
  // joints 1 - 0.29 * 0.09/0.03 = 0.13; depth 25 + 10 - 5 = 30 mm, 3 of it raked out: 32.37 * 0.13 * 27 mm = 113.6187 L; with 10 %: 124.98057; / 12
  "joint mortar": { net: [1136187, 10000], unit: "L", packs: [12498057, 1200000, 11] },
};

const byHand: Readonly<Record<"600 mm" | "400 mm", Readonly<Record<string, ByHand>>>> = {
  "600 mm": {
    ...onBoth,
    // 11 placed, 3 lines of ceil(2380/200) + 1 = 13: 11 * 39 = 429; with 5 %: 9009/20
    "sheathing screws": { net: [429, 1], pieces: [9009, 20, 451], packs: [9009, 5000, 2] },
    // 28 placed, 3 lines of ceil(880/200) + 1 = 6: 28 * 18 = 504; with 5 %: 2646/5
    "cement board screws": { net: [504, 1], pieces: [2646, 5, 530], packs: [2646, 500, 6] },
  },
  "400 mm": {
    ...onBoth,
    // 4 lines of 13: 11 * 52 = 572; with 5 %: 3003/5
    "sheathing screws": { net: [572, 1], pieces: [3003, 5, 601], packs: [3003, 1250, 3] },
    // 4 lines of 6: 28 * 24 = 672; with 5 %: 3528/5
    "cement board screws": { net: [672, 1], pieces: [3528, 5, 706], packs: [3528, 500, 8] },
  },
};

describe.each(["600 mm", "400 mm"] as const)("studs at %s", (spacing) => {
  const list = takeOff(wall(spacing));

  it("has these lines and no others", () => {
    expectAll(list.lines, byHand[spacing], ["mixing water for setting mortar", "mixing water for joint mortar"]);
  });

  it.each(Object.entries(byHand[spacing]))("%s", (item, hand) => {
    expectLine(lineOf(list.lines, item), hand);
  });

  it("water: 42 * 3 to 42 * 3.5 L, and 11 * 2.5 to 11 * 3 L: 153.5 to 180 L", () => {
    expect([list.water?.least.to("L").toString(), list.water?.most.to("L").toString()]).toEqual(["153.5", "180"]);
  });

  it("faces", () => {
    const { face, flats, cornerCover, backing } = list.faces;
    expect([face, flats, cornerCover, backing].map((area) => area.to("m2").toString())).toEqual(["32.37", "30.03", "2.34", "29.439"]);
  });
});

it("answers of metric jobs are shown in metric units", () => {
  const { lines } = takeOff(wall("600 mm"));
  expect(lineOf(lines, "setting mortar").net.toString()).toBe("485.55 L");
  expect(lineOf(lines, "barrier").net.toString()).toBe("31.92 L");
});

it("boards 1200 mm wide do not meet studs at 500 mm", () => {
  const job = wall("600 mm");
  const tried = takeOff.try({ ...job, layers: [{ kind: "studs", spacing: "500 mm" }, ...job.layers.slice(1)] });
  expect(tried.ok ? [] : tried.problems.map(({ path }) => path.join("."))).toEqual(expect.arrayContaining(["layers.1.edgesBacked", "layers.2.edgesBacked"]));
});

it("whole round-ups are among them", () => {
  const rounded = Object.values(onBoth).flatMap(({ pieces, packs }) => [pieces, packs]).filter((one) => one !== undefined);
  expect(rounded.filter(isWhole)).toHaveLength(2);
  expect(onBoth["flat units"]?.net[1]).toBe(1);
  expect(onBoth["corner units"]?.net[1]).toBe(1);
});
