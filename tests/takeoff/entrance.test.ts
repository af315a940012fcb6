// Three elevations, two columns, a soffit, an inside corner, sills, caps and prices, all by hand; and in metric sizes.
//
// set-off of the stone: 1 in (unit) + 1/2 in (bed) = 1-1/2 in = 1/8 ft
// walls 40 * 10 + 16 * 10 + 12 * 10 = 680 ft2; columns 2 * 2 * (2 + 3/2) * 8 = 112 ft2; together 792 ft2
// openings 48 + 2 * 20 + 12 = 100 ft2; soffit 8 * 3 = 24 ft2
// return edges: door 8 + 6 + 8 = 22 ft (no sill), windows 2 * 18 = 36 ft: 58 ft; returns 58 * 1/2 = 29 ft2
// corners: front and side 10 ft, columns 2 * 4 * 8 = 64 ft, unclad 10 ft, inside 10 ft
// faces that meet outside: 2 * 74 + 10 + 2 * 58 = 274 ft; growth 274 / 8 = 137/4 ft2; inside 2 * 10 = 20 ft; loss 20 / 8 = 5/2 ft2
// backing 792 - 100 + 24 = 716 ft2
// corner cover (legs 8 and 4 in, 1 ft together): 74 + 10 ft2, 5 of it turned; jambs 16 + 20 = 36 ft * (8 + min(4, 6)) in = 36 ft2: 120 ft2 on 120 ft
// stone face 792 - 100 + 24 + 29 + 5 + 137/4 - 5/2 = 3127/4 ft2; flat 3127/4 - 120 = 2647/4 ft2
import { describe, expect, it } from "vitest";
import { quantity, sum } from "../../src/core/index.js";
import { takeOff } from "../../src/takeoff/index.js";
import { type ByHand, expectAll, expectLine, isWhole, lineOf, type Rounded } from "./by-hand.js";
import { entranceInFeet, entranceInMetres } from "./entrance-job.js";

const byHand: Readonly<Record<string, ByHand>> = {
  // 716 / 32; with 10 %: 1969/80
  sheathing: { net: [179, 8], pieces: [1969, 80, 25], packs: [1969, 80, 25] },
  // 23 placed (179/8), 4 lines of 13 = 52: 1196; with 5 %: 6279/5
  "sheathing screws": { net: [1196, 1], pieces: [6279, 5, 1256], packs: [6279, 5000, 2] },
  // 716 / 15; with 12.5 %: 537/10
  "cement board": { net: [716, 15], pieces: [537, 10, 54], packs: [537, 10, 54] },
  // 48 placed, ceil(60/16) + 1 = 5 lines of ceil(35.25/8) + 1 = 6: 48 * 30 = 1440; with 5 %: 1512, a whole number
  "cement board screws": { net: [1440, 1], pieces: [1512, 1, 1512], packs: [1512, 500, 4] },
  // 48 * 3 ft = 144 ft in pieces of 12 ft: 12, a whole number
  "cement board edge backing": { net: [144, 1], unit: "ft", packs: [144, 12, 12] },
  // outlines: front 100 + 28 + 36 + 22 = 186, side 52 + 14 = 66, bay 44, columns 2 * (2 * 7 + 2 * 32) = 156: 452 ft
  // (716 * 16/15 - 452) / 2 + 84 outside corners = 3598/15 ft; laps 30 * 1/6 = 5 ft: 3673/15; with 10 %: 40403/150
  "joint tape": { net: [3673, 15], unit: "ft", packs: [40403, 22500, 2] },
  // 792 + 24 - 100 + (28 + 36) * 1/2, the threshold with it, = 748 ft2; * 36 mil * 12/19250 gal/(ft2 mil) = 14688/875 gal; / 0.8 = 3672/175 gal; / 5
  barrier: { net: [14688, 875], unit: "gal", packs: [3672, 875, 5] },
  // front 40 - 6, side 16, bay 12, columns 2 * 7: 76 ft; with 5 %: 399/5; / 16
  ledger: { net: [76, 1], unit: "ft", packs: [399, 80, 5] },
  // 6 + 2 * 4 + 3 = 17 ft and 8 ends of 1/3 ft: 59/3 ft; with 5 %: 413/20; (413/20 - 1/3) / (10 - 1/3) = 1219/580
  "head flashing": { net: [59, 3], unit: "ft", packs: [1219, 580, 3] },
  // 2 * 4 + 3 = 11 ft and 6 ends of 1/6 ft: 12 ft in pieces of 3 ft: 4, a whole number
  sills: { net: [12, 1], unit: "ft", packs: [12, 3, 4] },
  // 40 ft; with 5 %: 42; / 4
  caps: { net: [40, 1], unit: "ft", packs: [42, 4, 11] },
  // 3127/4 * (1/2 + 1/8)/12 = 15635/384 ft3; with 15 %: 71921/1536; / 0.45 = 359605/3456
  "setting mortar": { net: [15635, 384], unit: "ft3", packs: [359605, 3456, 105] },
  // 120 ft in courses of 4 in: 360; with 5 %: 378, a whole number; / 12
  "corner units": { net: [360, 1], pieces: [378, 1, 378], packs: [378, 12, 32] },
  // ceil(7941/4) + 360 = 2346 units, 2 each: 4692; 40 % of them new: 9384/5
  spacers: { net: [4692, 1], pieces: [9384, 5, 1877] },
  // joints 1 - 3 * 11.625 * 3.625/144 = 125/1024; depth 1 + 1/2 - 1/4 = 5/4 in = 5/48 ft; 3/16 of 5/4 in raked out: 17/20 left
  // 3127/4 * 125/1024 * 5/48 * 17/20 = 6644875/786432 ft3; with 10 % and / 0.42: 6644875 * 1100 / (786432 * 420)
  "joint mortar": { net: [6644875, 786432], unit: "ft3", packs: [6644875 * 110, 786432 * 42, 23] },
  // 67 + 10 = 77 ft * 3/8 in * 1/4 in = 693/8 in3 = 48 fl oz; with 25 %: 60; / 10: 6, a whole number
  sealant: { net: [48, 1], unit: "floz", packs: [60, 10, 6] },
  "backer rod": { net: [77, 1], unit: "ft", packs: [77, 100, 1] },
  // 2 % of 7941/4 = 7941/200; / 40
  "flat units spare": { net: [7941, 200], pieces: [7941, 200, 40], packs: [7941, 8000, 1] },
  // each elevation by itself: see below
  "flat units": { net: [7941, 4] },
};

/**
 * Flat faces: front 400 - 88 + 24 + 29 + 5 turned + (10 + 10 + 116)/8 - 10/8 = 1543/4, less cover 5 + 10 + 36 = 51: 1339/4 ft2;
 * side 148 + 10/8 - 5 = 577/4; bay 120 - 10/8 = 475/4; columns 112 + 128/8 - 64 = 64. Three a ft2, with 8 %, in packs of 40.
 */
const lots: Readonly<Record<string, Rounded>> = {
  front: [1339 * 3 * 108, 4 * 100 * 40, 28],
  side: [577 * 3 * 108, 4 * 100 * 40, 12],
  bay: [475 * 3 * 108, 4 * 100 * 40, 10],
  columns: [64 * 3 * 108, 100 * 40, 6],
};

describe.each([
  ["in feet and inches", entranceInFeet],
  ["in metric sizes", entranceInMetres],
])("the entrance %s", (_, job) => {
  const list = takeOff(job);

  it("has these lines and no others", () => {
    expectAll(list.lines, byHand, ["mixing water for setting mortar", "mixing water for joint mortar"]);
  });

  it.each(Object.entries(byHand))("%s", (item, hand) => {
    expectLine(lineOf(list.lines, item), hand);
  });

  it("faces: areas close, and the corner cover is taken once", () => {
    const { face, flats, cornerCover, backing, cornerEdges } = list.faces;
    expect([face, flats, cornerCover, backing].map((area) => area.to("ft2").toString())).toEqual(["781.75", "661.75", "120", "716"]);
    expect(cornerEdges.to("ft").toString()).toBe("120");
    expect(sum([flats, cornerCover]).to("ft2").eq(face.to("ft2"))).toBe(true);
  });

  it("lots: 28 + 12 + 10 + 6 = 56 packs by elevation, where 54 would do together", () => {
    const line = lineOf(list.lines, "flat units");
    const found = (line.solution.answers as { readonly lots: readonly { readonly name: string; readonly packs: { toString(): string } }[] }).lots;
    expect(Object.fromEntries(found.map(({ name, packs }) => [name, Number(packs.toString())]))).toEqual(Object.fromEntries(Object.entries(lots).map(([name, [, , up]]) => [name, up])));
    for (const [above, below, up] of Object.values(lots)) expect(Math.ceil(above / below)).toBe(up);
    expect(line.packs?.toString()).toBe("56");
    const layers = job.layers.map((layer) => (layer.kind === "units" ? { ...layer, lots: "together" as const } : layer));
    // 7941/4 * 27/25 / 40 = 214407/4000
    expect(lineOf(takeOff({ ...job, layers }).lines, "flat units").packs?.toString()).toBe(String(Math.ceil(214407 / 4000)));
  });

  it("clean water: 105 * 5 + 23 * 3.5 = 605.5 to 105 * 6 + 23 * 4.5 = 733.5 qt", () => {
    expect([list.water?.least, list.water?.most].map((water) => water?.to("qt").toString())).toEqual(["605.5", "733.5"]);
  });

  it("weights: 57 * 150 + 105 * 51 + 25 * 70 = 15,655 lb; whole packs a trip", () => {
    expect(list.deliveredWeight?.to("lb").toString()).toBe("15655");
    // 1000 lb lift 6 packs of 150, 19 of 51, 14 of 70; the spare pack goes up by itself
    const trips = { sheathing: [25, 14], "setting mortar": [105, 19], "flat units": [56, 6], "flat units spare": [1, 6] } as const;
    expect(Object.fromEntries((list.weights ?? []).map(({ item, trips: some }) => [item, some?.toString()]))).toEqual(
      Object.fromEntries(Object.entries(trips).map(([item, [packs, each]]) => [item, String(Math.ceil(packs / each))])),
    );
  });

  it("hours: 20 * 781.75/100 + 0.2 * 1.25 * 120 + 1440/180 = 194.35 at the tool, / 0.80 paid", () => {
    expect([list.hours?.toolHours, list.hours?.paidHours].map((hours) => hours?.to("h").toString())).toEqual(["194.35", "242.9375"]);
  });

  it("prices: each line rounded once, then added", () => {
    // sheathing 25 * 31.15 * 1.10 = 856.625 -> 856.63; setting mortar 105 * 27.85 * 1.125 = 3289.78125 -> 3289.78
    // flat units 56 * 142.35 * 1.10 = 8768.76; spare 142.35 * 1.10 = 156.585 -> 156.59; subtotal 13071.76
    // allowance 2.5 % = 326.794 -> 326.79; tax 8.25 % of 856.63 + 3289.78 + 326.79 = 4473.20: 369.039 -> 369.04; total 13767.59
    expect(list.prices?.map(({ item, price }) => [item, price])).toEqual([
      ["sheathing", "856.63 USD"], ["setting mortar", "3289.78 USD"], ["flat units", "8768.76 USD"], ["flat units spare", "156.59 USD"],
    ]);
    expect([list.cost?.subtotal, list.cost?.allowance, list.cost?.tax, list.cost?.total]).toEqual(["13071.76 USD", "326.79 USD", "369.04 USD", "13767.59 USD"]);
    expect(list.cost?.amounts.total.toFixed(2)).toBe("13767.59");
    expect(list.cost?.unpriced).toContain("barrier");
  });

  it("checks are findings against the limits that were given", () => {
    expect(list.checks?.map(({ check, finding }) => [check, finding])).toEqual([["wet film of a coat of barrier", "within"]]);
  });

  it("elevations tell flats, corners, sills, soffits and caps apart", () => {
    const [front] = list.elevations;
    expect([front?.walls, front?.openings, front?.returns, front?.soffits].map((area) => area?.to("ft2").toString())).toEqual(["400", "88", "29", "24"]);
    expect([front?.outsideCorners, front?.insideCorners, front?.sills, front?.heads, front?.caps].map((length) => length?.to("ft").toString())).toEqual(["20", "10", "8", "14", "40"]);
  });
});

it("six of the round-ups land on a whole number", () => {
  const rounded = Object.values(byHand).flatMap(({ pieces, packs }) => [pieces, packs]).filter((one) => one !== undefined);
  expect(rounded.filter(isWhole).length).toBeGreaterThanOrEqual(5);
  expect(rounded.length).toBeGreaterThan(20);
});

it("the same stone face whichever face was measured, once the walls are redrawn to the stone", () => {
  // A plain wall 20 ft long to the backing, clad round both ends: to the stone face it is drawn 20 ft + 2 * 1/8 ft long.
  const corners = (height: string): { height: string; otherFace: "elevation"; count: number }[] => [{ height, otherFace: "elevation", count: 2 }];
  const wall = (width: string): (typeof entranceInFeet)["elevations"] => [
    { name: "a", shape: { kind: "rectangle", width, height: "10 ft" }, openings: [], outsideCorners: corners("10 ft") },
    { name: "b", shape: { kind: "rectangle", width, height: "10 ft" }, openings: [], outsideCorners: [] },
  ];
  const layers = entranceInFeet.layers.filter(({ kind }) => kind === "studs" || kind === "units").map((layer) => (layer.kind === "units" ? { ...layer, lots: "together" as const } : layer));
  const packs = { "flat units": { pieces: 40 }, "corner units": { pieces: 12 } };
  const allowances = { "flat units": { waste: "8 %" }, "corner units": { waste: "5 %" } };
  const bed = entranceInFeet.layers.filter(({ kind }) => kind === "setting bed");
  const all = { layers: [...layers, ...bed], packs: { ...packs, "setting mortar": entranceInFeet.packs["setting mortar"] ?? {} }, allowances: { ...allowances, "setting mortar": { waste: "15 %" } } };
  const toBacking = takeOff({ ...all, measuredTo: "backing", elevations: wall("20 ft") });
  const toStone = takeOff({ ...all, measuredTo: "stoneFace", elevations: wall("20.25 ft") });
  expect(toStone.faces.face.to("ft2").toString()).toBe(toBacking.faces.face.to("ft2").toString());
  expect(toStone.faces.backing.to("ft2").toString()).toBe(quantity("area", "400 ft2").to("ft2").toString());
});
