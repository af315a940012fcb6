import { describe, expect, it } from "vitest";
import { sandPart } from "../../src/mortar/sand-part.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

describe("sandPart", () => {
  it("gives the sand of the US Army's Type N and Type O (EN5157), three times cement and lime", () => {
    for (const { inputs, expected } of [vector("army-mortar-type-n"), vector("army-mortar-type-o")]) {
      expect(expected.sand_to_cementitious).toMatch(/^3\.0 /);
      expect(inputs.cement).toBe("1");
      expect(sandPart({ limePart: inputs.lime as "1", sandRatio: 3 }).sandPart.toString()).toBe(inputs.sand);
    }
  });

  it("refuses no sand", () => {
    expect(faults(sandPart.try({ limePart: -1, sandRatio: 0 }))).toEqual(["tooLow limePart", "tooLow sandRatio"]);
  });
});
