import { describe, expect, it } from "vitest";
import { quantity } from "../../src/core/read-quantity.js";
import { bedMortar } from "../../src/mortar/bed-mortar.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector, vectors } from "../support/vectors.js";

const bare = { backButter: "0 in", butteredShare: 0 } as const;
const face = { area: "480 ft2", bed: "3/8 in", backButter: "1/8 in", butteredShare: "100 %", waste: "10 %", bagYield: "0.5 ft3" } as const;

/** A printed quantity of a rounding case, its `/bag` left off: the yield is per bag. */
const area = (text: string | undefined) => quantity("area", text as "1 ft2");
const length = (text: string | undefined) => quantity("length", text as "1 in");
const volume = (text: string | undefined) => quantity("volume", (text ?? "").replace("/bag", "") as "1 ft3");
const ratio = (text: string | undefined) => quantity("ratio", text as "1 %");

describe("bedMortar", () => {
  it("is area times thickness: half an inch over 480 ft2 is 20 ft3", () => {
    // (3/8 + 1/8) in = 1/24 ft; 480 / 24 = 20; x 1.1 = 22; / 0.5 = 44 bags to the bag.
    const order = bedMortar(face);
    expect(order.thickness.toString()).toBe("0.5 in");
    expect(order.net.toString()).toBe("20 ft3");
    expect(order.toOrder.toString()).toBe("22 ft3");
    expect(order.bags.toString()).toBe("44");
  });

  it("takes the back-butter over the unit backs alone where told so", () => {
    // 3/4 of the face is unit back: 3/8 + 3/4 x 1/8 = 15/32 in; 480 x 15/32 / 12 = 18.75 ft3.
    expect(bedMortar({ ...face, butteredShare: "75 %" }).net.toString()).toBe("18.75 ft3");
  });

  it("orders exact bags where floats order one more (rounding cases)", () => {
    const cases = vectors("bed-mortar-bags-");
    expect(cases).toHaveLength(4);
    for (const { inputs, expected } of cases) {
      const order = bedMortar({ area: area(inputs.area), bed: length(inputs.bed), ...bare, waste: ratio(inputs.waste), bagYield: volume(inputs.yld) });
      expectPrinted(order.bags.to(), expected.bags);
    }
    const { inputs, expected } = vector("dec-bed-per-bag-2");
    const order = bedMortar({ area: area(inputs.area), bed: length(inputs.bed), ...bare, waste: ratio(inputs.waste), bagYield: volume(inputs.yld) });
    expectPrinted(order.bags.to(), expected.bags);
  });

  it("orders exact bags from the area that one bag covers (rounding cases)", () => {
    // A bag of 1 ft3 covers `cover` ft2 at a bed of 1 ft3 / cover: 12 / cover inches.
    const cases = [...vectors("bags-waste-per-cover-"), ...vectors("bags-waste-multiplier-")];
    expect(cases).toHaveLength(7);
    for (const { inputs, expected } of cases) {
      const cover = Number.parseInt(inputs.cover ?? "", 10);
      const waste = inputs.waste ?? "10 %";
      expect(inputs.mult ?? "1.1").toBe("1.1");
      const order = bedMortar({ area: area(inputs.area), bed: quantity("length", `12/${cover} in`), ...bare, waste: ratio(waste), bagYield: "1 ft3" });
      expectPrinted(order.bags.to(), expected.bags);
    }
  });

  it("never orders less for more waste, bed or back-butter", () => {
    const bags = (change: object): number => {
      const tried = bedMortar.try({ ...face, ...change });
      return tried.ok ? tried.solution.answers.bags.toNumber() : Number.NaN;
    };
    const wastes = ["0 %", "5 %", "10 %", "10.01 %", "20 %", "99 %"].map((waste) => bags({ waste }));
    expect(wastes).toEqual([40, 42, 44, 45, 48, 80]);
    expect(bags({ bed: "13/32 in" })).toBeGreaterThanOrEqual(bags({}));
    expect(bags({ backButter: "5/32 in" })).toBeGreaterThanOrEqual(bags({}));
  });

  it("orders the same for the same job in metric", () => {
    // 480 ft2 = 44.5934592 m2, 3/8 in = 9.525 mm, 1/8 in = 3.175 mm, 0.5 ft3 = 14.158423296 L.
    const order = bedMortar({ ...face, area: "44.5934592 m2", bed: "9.525 mm", backButter: "3.175 mm", bagYield: "14.158423296 L" });
    expect(order.bags.toString()).toBe("44");
    expect(order.net.toString()).toBe("566.3369318 L");
  });

  it("asks for the buttered share, and refuses nonsense", () => {
    expect(faults(bedMortar.try({ ...face, butteredShare: undefined }))).toEqual(["missing butteredShare"]);
    expect(faults(bedMortar.try({ ...face, butteredShare: 1.01 }))).toEqual(["tooHigh butteredShare"]);
    expect(faults(bedMortar.try({ ...face, waste: 10 }))).toEqual(["tooHigh waste"]);
    expect(faults(bedMortar.try({ ...face, bed: "0 in", bagYield: "0 ft3", waste: "-1 %" }))).toEqual(["tooLow bed", "tooLow waste", "tooLow bagYield"]);
  });
});
