// One wall computed by hand, and the same wall in metric sizes. Every round-up's argument stands as a fraction; those
// that are whole numbers are the ones that binary numbers or decimals get wrong.
//
// The wall is 41 ft by 10 ft, measured to the backing, with a door 4 by 7 ft and a window 5 by 6 ft, the face turned 9 in
// into both, corner units at their jambs, and two outside corners 10 ft high round which nothing is clad.
//
// walls 41 * 10 = 410 ft2; openings 28 + 30 = 58 ft2; backing 410 - 58 = 352 ft2
// stone stands 1 in (unit) + 1/2 in (bed) = 1-1/2 in = 1/8 ft before the backing
// return edges: door 7 + 4 + 7 = 18 ft (no sill), window 2 * (5 + 6) = 22 ft, together 40 ft; returns 40 * 3/4 = 30 ft2
// outside edges by clad faces: corners 20 * 1, returns 40 * 2 = 80, together 100 ft; growth 100 / 8 = 25/2 ft2
// corner units, legs 8 and 4 in: wall corners 20 ft * 1 ft = 20 ft2, half of it turned onto the bare face = 10 ft2;
// jambs 14 + 12 = 26 ft * (8 + min(4, 9)) in = 26 ft2; together 46 ft2 on 46 ft of edge
// stone face 410 - 58 + 30 + 10 + 25/2 = 809/2 ft2
import { describe, expect, it } from "vitest";
import { type Job, takeOff } from "../../src/takeoff/index.js";

/** Numerator and denominator of what is rounded up, and the whole number that comes out. */
type Rounded = readonly [above: number, below: number, up: number];

interface ByHand {
  readonly net: Rounded | string;
  readonly toOrder?: Rounded;
  readonly packs?: Rounded;
}

const byHand: Readonly<Record<string, ByHand>> = {
  // 352 / 32 = 11 boards, a whole number; with 10 %: 121/10
  sheathing: { net: [352, 32, 11], toOrder: [121, 10, 13], packs: [121, 10, 13] },
  // a board takes 4 lines of 13 = 52; 11 * 52 = 572; with 5 %: 3003/5
  "sheathing screws": { net: [572, 1, 572], toOrder: [3003, 5, 601], packs: [3003, 5000, 1] },
  // 352 / 15; with 12.5 %: 132/5
  "cement board": { net: [352, 15, 24], toOrder: [132, 5, 27], packs: [132, 5, 27] },
  // 24 placed, ceil(60/16) + 1 = 5 lines of ceil(35.25/8) + 1 = 6: 24 * 30 = 720; with 5 %: 756, a whole number
  "cement board screws": { net: [720, 1, 720], toOrder: [756, 1, 756], packs: [756, 250, 4] },
  // 24 * 3 ft = 72 ft in pieces of 12 ft: 6, a whole number
  "cement board edge backing": { net: [72, 1, 72], packs: [72, 12, 6] },
  // joints (352 * 16/15 - (102 + 22 + 22)) / 2 + 20 = 2021/15 ft; laps 30 * 1/6 = 5 ft; 2096/15, with 10 %: 11528/75
  "joint tape": { net: [2096, 15, 140], packs: [11528, 75 * 150, 2] },
  // area 352 + 44 * 3/4 = 385 ft2; 385 * 2 * 25 mil * 12/19250 gal/(ft2 mil) = 12 gal; / 0.80 = 15; / 5 = 3, a whole number
  barrier: { net: [12, 1, 12], packs: [15, 5, 3] },
  // 41 - 4 = 37 ft; with 5 %: 777/20 in pieces of 16 ft
  ledger: { net: [37, 1, 37], packs: [777, 320, 3] },
  // 809/2 * (1/2 + 1/8)/12 = 4045/192 ft3; with 20 %: 809/32; / 0.5
  "setting mortar": { net: [4045, 192, 22], packs: [809, 16, 51] },
  // face less cover 717/2 ft2 at 3 to the ft2 = 2151/2; with 8 %: 58077/50; in packs of 40
  "flat units": { net: [2151, 2, 1076], toOrder: [58077, 50, 1162], packs: [58077, 2000, 30] },
  // 46 ft in courses of 4 in = 138, a whole number; with 5 %: 1449/10; in packs of 12
  "corner units": { net: [138, 1, 138], toOrder: [1449, 10, 145], packs: [1449, 120, 13] },
  // 1076 + 138 = 1214 units, 2 each = 2428; 40 % of them new: 4856/5
  spacers: { net: [2428, 1, 2428], toOrder: [4856, 5, 972] },
};

/** The 51 bags of setting mortar, at 5 to 6 qt: 255 and 306 qt. */
const water = { least: "255", most: "306" };

const us: Job = {
  measuredTo: "backing",
  elevations: [
    {
      name: "street side",
      shape: { kind: "rectangle", width: "41 ft", height: "10 ft" },
      openings: [
        { shape: { kind: "rectangle", width: "4 ft", height: "7 ft" }, returnDepth: "9 in", returnUnits: "corner", toBase: true },
        { shape: { kind: "rectangle", width: "5 ft", height: "6 ft" }, returnDepth: "9 in", returnUnits: "corner", toBase: false },
      ],
      outsideCorners: [{ height: "10 ft", otherFace: "unclad", count: 2 }],
    },
  ],
  layers: [
    { kind: "studs", spacing: "16 in" },
    { kind: "boards", name: "sheathing", acrossStuds: "4 ft", alongStuds: "8 ft", edgesBacked: false, screwSpacing: "8 in" },
    { kind: "boards", name: "cement board", acrossStuds: "5 ft", alongStuds: "3 ft", edgesBacked: true, screwSpacing: "8 in", edgeDistance: "3/8 in" },
    { kind: "joint tape", name: "joint tape", over: "cement board", overlaps: 30, overlap: "2 in" },
    { kind: "barrier", name: "barrier", wetFilm: "25 mil", coats: 2, deductFrom: "0 ft2" },
    { kind: "ledger", name: "ledger", lap: "0 in" },
    { kind: "setting bed", name: "setting mortar", bed: { from: "thickness", thickness: "1/2 in" }, backButter: "1/8 in", butteredShare: "100 %" },
    {
      kind: "units", name: "flat units", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", unitThickness: "1 in", headJoint: "3/8 in", bedJoint: "3/8 in",
      corners: { name: "corner units", longLeg: "8 in", shortLeg: "4 in" },
      spacers: { name: "spacers", perUnit: 2, reuseShare: "60 %" },
    },
    { kind: "joints", name: "joint mortar", squeezeOut: "1/4 in", tooling: { profile: "concave", toolRadius: "1/4 in" } },
  ],
  packs: {
    "sheathing screws": { pieces: 1000 },
    "cement board screws": { pieces: 250 },
    "cement board edge backing": { length: "12 ft" },
    "joint tape": { length: "150 ft" },
    barrier: { volume: "5 gal" },
    ledger: { length: "16 ft" },
    "setting mortar": { bag: "50 lb", yield: "0.5 ft3", waterLow: "5 qt", waterHigh: "6 qt" },
    "flat units": { pieces: 40 },
    "corner units": { pieces: 12 },
    "joint mortar": { bag: "50 lb", yield: "0.42 ft3", waterLow: "3.5 qt", waterHigh: "4.5 qt" },
  },
  allowances: {
    sheathing: { waste: "10 %" },
    "sheathing screws": { waste: "5 %" },
    "cement board": { waste: "12.5 %" },
    "cement board screws": { waste: "5 %" },
    "cement board edge backing": { waste: "0 %" },
    "joint tape": { waste: "10 %" },
    barrier: { lossShare: "20 %" },
    ledger: { waste: "5 %" },
    "setting mortar": { waste: "20 %" },
    "flat units": { waste: "8 %" },
    "corner units": { waste: "5 %" },
    "joint mortar": { waste: "10 %" },
  },
};

/** The same wall, every size converted: 1 in = 25.4 mm, 1 gal = 3.785411784 L, 1 ft3 = 28.316846592 L, 1 lb = 0.45359237 kg. */
const si: Job = {
  measuredTo: "backing",
  elevations: [
    {
      name: "street side",
      shape: { kind: "rectangle", width: "12496.8 mm", height: "3.048 m" },
      openings: [
        { shape: { kind: "rectangle", width: "1219.2 mm", height: "2133.6 mm" }, returnDepth: "228.6 mm", returnUnits: "corner", toBase: true },
        { shape: { kind: "rectangle", width: "1524 mm", height: "1828.8 mm" }, returnDepth: "228.6 mm", returnUnits: "corner", toBase: false },
      ],
      outsideCorners: [{ height: "3048 mm", otherFace: "unclad", count: 2 }],
    },
  ],
  layers: [
    { kind: "studs", spacing: "406.4 mm" },
    { kind: "boards", name: "sheathing", acrossStuds: "1219.2 mm", alongStuds: "2438.4 mm", edgesBacked: false, screwSpacing: "203.2 mm" },
    { kind: "boards", name: "cement board", acrossStuds: "1524 mm", alongStuds: "914.4 mm", edgesBacked: true, screwSpacing: "203.2 mm", edgeDistance: "9.525 mm" },
    { kind: "joint tape", name: "joint tape", over: "cement board", overlaps: 30, overlap: "50.8 mm" },
    { kind: "barrier", name: "barrier", wetFilm: "635 um", coats: 2, deductFrom: "0 m2" },
    { kind: "ledger", name: "ledger", lap: "0 mm" },
    { kind: "setting bed", name: "setting mortar", bed: { from: "thickness", thickness: "12.7 mm" }, backButter: "3.175 mm", butteredShare: "100 %" },
    {
      kind: "units", name: "flat units", unitLength: "295.275 mm", unitHeight: "92.075 mm", unitThickness: "25.4 mm", headJoint: "9.525 mm", bedJoint: "9.525 mm",
      corners: { name: "corner units", longLeg: "203.2 mm", shortLeg: "101.6 mm" },
      spacers: { name: "spacers", perUnit: 2, reuseShare: "60 %" },
    },
    { kind: "joints", name: "joint mortar", squeezeOut: "6.35 mm", tooling: { profile: "concave", toolRadius: "6.35 mm" } },
  ],
  packs: {
    "sheathing screws": { pieces: 1000 },
    "cement board screws": { pieces: 250 },
    "cement board edge backing": { length: "3657.6 mm" },
    "joint tape": { length: "45.72 m" },
    barrier: { volume: "18.92705892 L" },
    ledger: { length: "4876.8 mm" },
    "setting mortar": { bag: "22.6796185 kg", yield: "14.158423296 L", waterLow: "4.73176473 L", waterHigh: "5.678117676 L" },
    "flat units": { pieces: 40 },
    "corner units": { pieces: 12 },
    "joint mortar": { bag: "22.6796185 kg", yield: "11.89307556864 L", waterLow: "3.312235311 L", waterHigh: "4.258588257 L" },
  },
  allowances: us.allowances,
};

/** In which unit the hand calculation counts a net that is no number of pieces. */
const handUnit: Readonly<Record<string, string>> = { "cement board edge backing": "ft", "joint tape": "ft", barrier: "gal", ledger: "ft", "setting mortar": "ft3" };

describe.each([
  ["in feet and inches", us],
  ["in metric sizes", si],
])("the wall %s", (_, job) => {
  const { lines } = takeOff(job);
  const lineOf = (item: string): (typeof lines)[number] => {
    const line = lines.find((one) => one.item === item);
    if (line === undefined) throw new Error(`no line of ${item}`);
    return line;
  };

  it.each(Object.entries(byHand))("%s", (item, { net, toOrder, packs }) => {
    const line = lineOf(item);
    if (typeof net !== "string") {
      const [above, below, up] = net;
      expect(Math.ceil(above / below - 1e-9)).toBe(up);
      // The net is the fraction itself; both sides at 30 digits.
      const unit = handUnit[item];
      const own = line.net.to(unit as never);
      expect(own.times(below).toSignificantDigits(30).toString()).toBe(String(above));
    }
    if (toOrder !== undefined) expect([line.toOrder.to().toString(), toOrder[0] / toOrder[1] <= toOrder[2], toOrder[0] / toOrder[1] > toOrder[2] - 1]).toEqual([String(toOrder[2]), true, true]);
    if (packs !== undefined) expect([line.packs?.to().toString(), packs[0] / packs[1] <= packs[2], packs[0] / packs[1] > packs[2] - 1]).toEqual([String(packs[2]), true, true]);
  });

  it("water for the setting mortar", () => {
    const { net, toOrder } = lineOf("mixing water for setting mortar");
    expect([net.to("qt").toString(), toOrder.to("qt").toString()]).toEqual([water.least, water.most]);
  });

  it("joint mortar", () => {
    // share of joints 1 - 3 * 11.625 * 3.625 / 144 = 0.1220703125; depth 1 + 1/2 - 1/4 = 1.25 in
    // filled 404.5 * 0.1220703125 * 1.25/12 = 5.14348… ft3
    const filled = (404.5 * 0.1220703125 * 1.25) / 12;
    // a concave joint 3/8 in wide by a 1/4 in radius loses r^2 asin(w / 2r) - w/2 sqrt(r^2 - w^2/4) = 0.0219990… in2 of 0.46875 in2
    const removed = 0.0625 * Math.asin(0.75) - 0.1875 * Math.sqrt(0.0625 - 0.03515625);
    const net = filled * (1 - removed / 0.46875);
    const line = lineOf("joint mortar");
    expect(line.net.toNumber("ft3")).toBeCloseTo(net, 10);
    // with 10 %: 5.39…; / 0.42 = 12.8…, so 13 bags
    expect((net * 1.1) / 0.42).toBeGreaterThan(12.5);
    expect((net * 1.1) / 0.42).toBeLessThan(13);
    expect(line.packs?.to().toString()).toBe("13");
  });

  it("has these lines and no others, in the order of the layers", () => {
    expect(lines.map(({ item }) => item)).toEqual([
      "sheathing", "sheathing screws", "cement board", "cement board screws", "cement board edge backing", "joint tape", "barrier", "ledger",
      "setting mortar", "mixing water for setting mortar", "flat units", "corner units", "spacers", "joint mortar", "mixing water for joint mortar",
    ]);
  });
});

it("five of the round-ups land on a whole number", () => {
  const arguments_ = Object.values(byHand).flatMap(({ net, toOrder, packs }) => [typeof net === "string" ? undefined : net, toOrder, packs]);
  const rounded = [byHand.sheathing?.net, byHand["cement board screws"]?.toOrder, byHand["cement board edge backing"]?.packs, byHand.barrier?.packs, byHand["corner units"]?.net];
  expect(arguments_.length).toBeGreaterThan(30);
  expect(rounded.every((one) => Array.isArray(one) && Number(one[0]) % Number(one[1]) === 0)).toBe(true);
});

it("a wall measured to the stone face has as much less backing as the stone stands before it", () => {
  const toStone = takeOff({ ...us, measuredTo: "stoneFace" });
  const sheathing = toStone.lines.find(({ item }) => item === "sheathing");
  // 352 - 25/2 = 679/2 ft2; / 32 = 679/64
  expect(sheathing?.net.to().times(64).toString()).toBe("679");
});
