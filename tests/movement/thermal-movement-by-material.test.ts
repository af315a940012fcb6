import { describe, expect, it } from "vitest";
import type { expansionTable } from "../../src/data/movement.js";
import { thermalMovementByMaterial } from "../../src/movement/thermal-movement-by-material.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector, vectors } from "../support/vectors.js";

type Material = keyof typeof expansionTable;

const twelveFeet = (material: Material): ReturnType<typeof thermalMovementByMaterial> => thermalMovementByMaterial({ material, length: "144 in", temperatureRange: "100 degF" });

describe("thermalMovementByMaterial", () => {
  it.each(vectors("cte-concrete-"))("$id has its coefficient and movement as printed", ({ id, inputs, expected }) => {
    const found = twelveFeet(id.replace("cte-concrete-", "concrete of ") as Material);
    expect(found.low.to("in").toString()).toBe(found.high.to("in").toString());
    expectPrinted(found.high.to("in"), expected.movement);
    expectPrinted(found.highExpansion.to("/degF"), inputs.alpha);
  });

  it("has mortar as Dooley prints it", () => {
    expectPrinted(twelveFeet("cement mortar").lowExpansion.to("/degF"), vector("cte-mortar-dooley").expected.perF);
  });

  it("has brick between the two coefficients that worked cases use", () => {
    const brick = twelveFeet("clay brick");
    expectPrinted(brick.low.to("in"), vector("joint-4x-movement").expected.movement);
    // 144 x 4e-6 x 100 = 0.0576
    expect(vector("brick-spacing-17ft4").inputs.thermal).toBe("0.000004/F * 100 F");
    expect(brick.high.to("in").toString()).toBe("0.0576");
    expect(Number.parseFloat(vector("sealant-width-cornell-2001").inputs.e ?? "")).toBe(brick.lowExpansion.toNumber("/degF"));
  });

  it("runs from the least to the most of the concretes where the aggregate is not known", () => {
    const concretes = (["concrete of basalt", "concrete of gravel", "concrete of sandstone"] as const).map((material) => twelveFeet(material).low.toNumber("in"));
    const found = twelveFeet("concrete, aggregate not known");
    expect([found.low.toNumber("in"), found.high.toNumber("in")]).toEqual([Math.min(...concretes), Math.max(...concretes)]);
  });

  it("has no material without being told", () => {
    expect(faults(thermalMovementByMaterial.try({ length: "0 ft", temperatureRange: "100 degF" }))).toEqual(["missing material", "tooLow length"]);
    expect(faults(thermalMovementByMaterial.try({ material: "zinc", length: "1 ft", temperatureRange: "100 degF" }))).toEqual(["notAChoice material"]);
  });
});
