import { expect, it } from "vitest";
import { layerWeight } from "../../src/limits/layer-weight.js";
import { thicknessAtWeight } from "../../src/limits/thickness-at-weight.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vectors } from "../support/vectors.js";

it.each(vectors("stone-density-"))("thicknessAtWeight at 15 psf, $id", ({ inputs, expected }) => {
  const { thickness } = thicknessAtWeight({ weight: "15 psf", density: inputs.density as "160 pcf" });
  expectPrinted(thickness.to("in"), expected.thicknessAt15psf);
  // and back: a layer so thick weighs that
  expect(layerWeight({ thickness, density: inputs.density as "160 pcf", wetGain: 0 }).dry.toString()).toBe("15 lb/ft2");
});

it("thicknessAtWeight refuses no weight and no density", () => {
  expect(faults(thicknessAtWeight.try({ weight: "0 psf", density: "0 pcf" }))).toEqual(["tooLow weight", "tooLow density"]);
});
