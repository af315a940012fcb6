import { describe, expect, it } from "vitest";
import { layerWeight } from "../../src/limits/layer-weight.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector, vectors } from "../support/vectors.js";

describe("layerWeight", () => {
  it.each(vectors("stone-density-"))("$id: an inch of stone at the least density of its ASTM standard", ({ inputs, expected }) => {
    const inch = layerWeight({ thickness: "1 in", density: inputs.density as "160 pcf", wetGain: "0 %" });
    expectPrinted(inch.dry.to("lb/ft2"), expected.weight1in);
  });

  it("is within the printed psf of the HUD guide's 7/8 in of stucco at the density that its table implies", () => {
    const { inputs, expected, tolerance } = vector("dl-hud-stucco");
    const stucco = layerWeight({ thickness: inputs.thickness as "7/8 in", density: expected.impliedDensity as "123 pcf", wetGain: "0 %" });
    expect(tolerance).toBe("±1 psf");
    // 123 x 7/96 = 8.96875
    expect(stucco.dry.toString()).toBe("8.96875 lb/ft2");
    expectPrinted(stucco.dry.to("lb/ft2"), expected.stucco);
  });

  it("adds what it takes up to the dry weight, once", () => {
    // 150 x 1.25/12 = 15.625; x 1.04 = 16.25
    const stone = layerWeight({ thickness: "1-1/4 in", density: "150 pcf", wetGain: "4 %" });
    expect([stone.dry.toString(), stone.wet.toString()]).toEqual(["15.625 lb/ft2", "16.25 lb/ft2"]);
    expect(layerWeight({ thickness: "1-1/4 in", density: "150 pcf", wetGain: "0 %" }).wet.toString()).toBe("15.625 lb/ft2");
  });

  it("is kilograms by metres in metric", () => {
    // 0.030 m x 2400 kg/m3 = 72 kg/m2
    expect(layerWeight({ thickness: "30 mm", density: "2400 kg/m3", wetGain: "0 %" }).dry.toString()).toBe("72 kg/m2");
  });

  it("wants a wet gain, and refuses no thickness and less than no water", () => {
    expect(faults(layerWeight.try({ thickness: "1 in", density: "150 pcf" }))).toEqual(["missing wetGain"]);
    expect(faults(layerWeight.try({ thickness: "0 in", density: "0 pcf", wetGain: "-1 %" }))).toEqual(["tooLow thickness", "tooLow density", "tooLow wetGain"]);
  });
});
