import { expect, it } from "vitest";
import { unrestrainedStrain } from "../../src/movement/unrestrained-strain.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

it("unrestrainedStrain of brick: 0.0005 + 0.000004 x 100 is the 0.0009 of BIA Technical Note 18A", () => {
  const { inputs } = vector("brick-spacing-17ft4");
  expect([inputs.moisture, inputs.thermal]).toEqual(["0.0005", "0.000004/F * 100 F"]);
  const { strain } = unrestrainedStrain({ moistureStrain: inputs.moisture as "0.0005", expansion: "0.000004 /degF", temperatureRange: "100 F" });
  expect(`${strain.toString()} in/in`).toBe(vector("bia-18a-spacing-23ft2").inputs["unrestrained movement"]);
});

it("unrestrainedStrain of concrete masonry: shrinkage, carbonation and heat make the crack control coefficient of NCMA TEK 10-3", () => {
  const { inputs, expected } = vector("ncma-ccc");
  // 0.00045 + 0.00025 = 0.0007, and 0.000004 x 70 = 0.00028
  expect(inputs).toEqual({ shrinkage: "0.00045", carbonation: "0.00025", thermal: "0.000004*70 F" });
  const { strain } = unrestrainedStrain({ moistureStrain: 0.0007, expansion: "0.000004 /degF", temperatureRange: "70 F" });
  expect(`${strain.toString()} (~0.0010)`).toBe(expected.CCC);
});

it("unrestrainedStrain refuses what is below nought", () => {
  expect(faults(unrestrainedStrain.try({ moistureStrain: -0.1, expansion: "0 /degF", temperatureRange: "-1 degF" }))).toEqual(["tooLow moistureStrain", "tooLow expansion", "tooLow temperatureRange"]);
});
