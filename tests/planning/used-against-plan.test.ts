import { describe, expect, it } from "vitest";
import { bedFromUsage, usedAgainstPlan, wasteFromUsage, waterFromUsage } from "../../src/planning/index.js";
import { faults } from "../support/faults.js";

const bed = { of: "bed", name: "bed", bagsUsed: 40, bagYield: "0.5 ft3", lossShare: "0 %", area: "480 ft2", plannedBed: "1/2 in", tolerance: "10 %" } as const;
const film = { of: "film", name: "barrier", volumeUsed: "40 gal", area: "1540 ft2", lossShare: "10 %", volumeSolids: "60 %", coats: 2, specified: "24 mil", tolerance: "5 %" } as const;
const water = { of: "water", name: "water", bagsUsed: 12, water: "66 qt", waterLow: "5 qt", waterHigh: "6 qt" } as const;
const waste = { of: "waste", name: "units", bought: 66, leftOver: 3, netPacks: 60, waste: "5 %", tolerance: "2 %" } as const;
const one = (item: object): ReturnType<typeof usedAgainstPlan>["items"][number] => {
  const [row] = usedAgainstPlan({ items: [item as never] }).items;
  if (row === undefined) throw new Error("there is no row");
  return row;
};

describe("by hand", () => {
  it("40 bags of 0.5 ft3 on 480 ft2 are 20 ft3, 1/24 ft, 1/2 in", () => {
    const { onWall, meanBed, ofPlanned } = bedFromUsage({ bagsUsed: 40, bagYield: "0.5 ft3", lossShare: "0 %", area: "480 ft2", plannedBed: "1/2 in" });
    expect([onWall, meanBed, ofPlanned].map(String)).toEqual(["20 ft3", "0.5 in", "100 %"]);
  });

  it("66 qt in 12 bags are 5.5 qt: half over the low figure, half under the high one", () => {
    const { waterPerBag, overLow, overHigh } = waterFromUsage({ bagsUsed: 12, water: "66 qt", waterLow: "5 qt", waterHigh: "6 qt" });
    expect([waterPerBag, overLow, overHigh].map(String)).toEqual(["5.5 qt", "0.5 qt", "-0.5 qt"]);
    expect(faults(waterFromUsage.try({ bagsUsed: 12, water: "66 qt", waterLow: "6 qt", waterHigh: "5 qt" }))).toEqual(["tooLow range"]);
  });

  it("66 bought, 3 left, 60 net: 63 used, 5 % over the net", () => {
    expect([wasteFromUsage(pick(waste)).packsUsed, wasteFromUsage(pick(waste)).actualWaste, wasteFromUsage(pick(waste)).overPlanned].map(String)).toEqual(["63", "5 %", "0 %"]);
    expect(wasteFromUsage({ ...pick(waste), leftOver: 9 }).actualWaste.toString()).toBe("-5 %");
    expect(faults(wasteFromUsage.try({ ...pick(waste), leftOver: 67 }))).toEqual(["tooLow packsUsed"]);
  });
});

function pick({ bought, leftOver, netPacks, waste: planned }: typeof waste): { readonly bought: number; readonly leftOver: number; readonly netPacks: number; readonly waste: "5 %" } {
  return { bought, leftOver, netPacks, waste: planned };
}

describe("usedAgainstPlan", () => {
  it("the film: 36 gal on 1,540 ft2 at 60 % solids", () => {
    // 36 gal = 8316 in3; / 221,760 in2 = 37.5 mil wet; x 0.6 = 22.5 mil dry of 24, 6.25 % under
    expect(one(film)).toMatchObject({ is: "less than planned", says: expect.stringContaining("thinner") as string });
    expect([one(film).planned, one(film).actual].map(String)).toEqual(["24 mil", "22.5 mil"]);
    expect(one({ ...film, tolerance: "6.25 %" })).toMatchObject({ is: "as planned", says: "as planned, within what was given" });
  });

  it("the bed, at the edges of what counts as planned", () => {
    expect([36, 35.99, 44, 44.01].map((bagsUsed) => one({ ...bed, bagsUsed }).is)).toEqual(["as planned", "less than planned", "as planned", "more than planned"]);
  });

  it("the water, by what stands on the bag", () => {
    expect(["60 qt", "59.9 qt", "72 qt", "72.1 qt"].map((used) => one({ ...water, water: used }).is)).toEqual(["as planned", "less than planned", "as planned", "more than planned"]);
    expect([one(water).planned, one(water).most, one(water).actual].map(String)).toEqual(["5 qt", "6 qt", "5.5 qt"]);
  });

  it("the waste: planned 5 %, 2 % of the net either way", () => {
    // 63 used is 5 %; 1.2 packs are 2 % of 60
    expect([3, 4.2, 4.21, 1.8, 1.79].map((leftOver) => one({ ...waste, leftOver }).is)).toEqual(["as planned", "as planned", "less than planned", "as planned", "more than planned"]);
  });

  it("all items in one go, each with its solution", () => {
    const { answers, parts } = usedAgainstPlan.solve({ items: [film, bed, water, waste] });
    expect(answers.items.map(({ name }) => name)).toEqual(["barrier", "bed", "water", "units"]);
    expect(parts.map(({ id }) => id)).toEqual(["film.film-from-usage", "planning.bed-from-usage", "planning.water-from-usage", "planning.waste-from-usage"]);
  });

  it("refuses nothing used, no tolerance, and an item that is none", () => {
    expect(faults(usedAgainstPlan.try({ items: [{ ...bed, bagsUsed: 0, tolerance: undefined }, { ...water, of: "mortar" }] }))).toEqual(["tooLow items.0.bagsUsed", "missing items.0.tolerance", "notAChoice items.1.of"]);
    expect(faults(usedAgainstPlan.try({ items: [] }))).toEqual(["refused items"]);
    expect(faults(usedAgainstPlan.try({ items: [{ ...waste, leftOver: 67 }] }))).toEqual(["tooLow items.0.packsUsed"]);
  });
});
