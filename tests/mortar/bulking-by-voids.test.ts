import { describe, expect, it } from "vitest";
import { bulkingByVoids } from "../../src/mortar/bulking-by-voids.js";
import { faults } from "../support/faults.js";
import { roundTo, type Vector, vector } from "../support/vectors.js";

/** Barrels of cement in a cubic yard: what one barrel with its sand gives goes into 27 ft3. */
function barrelsPerYard(barrel: number, sandPart: number): number {
  const { mortar } = bulkingByVoids({ cementVolume: { value: barrel, unit: "ft3" }, pasteVolume: "3.4 ft3", sandPart, voids: "45 %" });
  return 27 / mortar.toNumber("ft3");
}

/** How far our figures are from those printed, by the parts of sand. */
function offBy({ inputs, expected }: Vector): ReadonlyMap<string, number> {
  const parts = (inputs.mix ?? "").split(", ").map((mix) => mix.slice(2));
  const barrel = Number.parseFloat(inputs.barrel ?? "");
  const printed = (expected.barrels ?? "").split(", ").map(Number);
  return new Map(parts.map((part, index) => [part, Math.abs(barrelsPerYard(barrel, Number(part)) / (printed[index] ?? 0) - 1)]));
}

describe("bulkingByVoids", () => {
  it("gives the barrels of Gillette & Hill's table of 1908 to 1.3 %, where the table follows their own formula", () => {
    const follows = [
      [vector("gillette-hill-bbl-per-yd3-3p5"), ["1", "1.5", "2", "2.5", "3", "4"]],
      [vector("gillette-hill-bbl-per-yd3-3p8"), ["2", "3", "4"]],
      [vector("gillette-hill-bbl-per-yd3-4p4"), ["1.5", "3", "4"]],
    ] as const;
    for (const [row, parts] of follows) {
      const off = offBy(row);
      for (const part of parts) expect(off.get(part), `${row.id}, 1 : ${part}`).toBeLessThan(0.013);
    }
  });

  it("joins rich and lean mortar where the paste just fills the voids", () => {
    // 0.9 x n x 0.45 = 1 at n = 1 / 0.405 = 200/81: both branches give 1.1 n = 220/81.
    const foot = { cementVolume: "1 ft3", pasteVolume: "1 ft3", voids: "45 %" } as const;
    const edge = bulkingByVoids({ ...foot, sandPart: "200/81" });
    expect(edge.rich.toJSON()).toEqual(edge.lean.toJSON());
    expect(edge.mortar.toJSON()).toEqual({ value: "220/81", unit: "ft3" });
    const governedBy = (sandPart: number): string | undefined => bulkingByVoids.solve({ ...foot, sandPart }).steps.find(({ name }) => name === "mortar")?.governedBy;
    expect(governedBy(2)).toBe("rich");
    expect(governedBy(3)).toBe("lean");
  });

  it("counts cement and sand as they lie, before they are wet", () => {
    // 1 ft3 of cement, 2 of sand: 1 + 2 x (1.1 - 0.9 x 0.4) = 2.48 ft3 of mortar, so 3 / 2.48.
    expect(bulkingByVoids({ cementVolume: "1 ft3", pasteVolume: "1 ft3", sandPart: 2, voids: "40 %" }).bulkingFactor.toNumber()).toBeCloseTo(3 / 2.48, 12);
  });

  it("lies between the tests of L. C. Sabin and the rule of thumb for 1 : 3", () => {
    // Sabin, 1905: 2.06 barrels of 3.65 ft3 in a yard of 1 : 3 are 2.06 x 3.65 x 4 / 27 = 1.114; 1 : 1 with 4.17 is 1.127.
    const measured = (barrels: string | undefined, parts: number): string => roundTo((Number(barrels) * 3.65 * parts) / 27, 3);
    expect(measured(vector("sabin-test-1-3").expected.barrels, 4)).toBe("1.114");
    expect(measured(vector("sabin-test-1-1").expected.barrels, 2)).toBe("1.127");
    const { bulkingFactor } = bulkingByVoids({ cementVolume: "3.65 ft3", pasteVolume: "3.4 ft3", sandPart: 3, voids: "45 %" });
    expect(bulkingFactor.toNumber()).toBeGreaterThan(1.114);
    expect(bulkingFactor.toNumber()).toBeLessThan(38 / 27);
  });

  it("refuses voids without their sign of percent", () => {
    expect(faults(bulkingByVoids.try({ cementVolume: "1 ft3", pasteVolume: "1 ft3", sandPart: 3, voids: 45 }))).toEqual(["tooHigh voids"]);
  });
});
