import { describe, expect, it } from "vitest";
import { ageFactorByArrhenius, ageFactorByDoubling } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

describe("ageFactorByArrhenius", () => {
  it("is exp(Q (1/Tr - 1/T)) in kelvins, worked out here in plain numbers", () => {
    for (const [celsius, q] of [[5, 5000], [12, 4000], [20, 5000], [35, 4811]] as const) {
      const { ageFactor } = ageFactorByArrhenius({ temperature: `${celsius} degC`, reference: "20 degC", activation: `${q} K` });
      expect(ageFactor.toNumber()).toBeCloseTo(Math.exp(q * (1 / 293.15 - 1 / (273.15 + celsius))), 12);
    }
  });

  it("is 1 at the reference, with the constants of CEB-FIP MC90 as quoted", () => {
    const { expected } = vector("ceb-mc90-arrhenius-constant");
    const { ageFactor } = ageFactorByArrhenius({ temperature: expected.Tref as "293 K", reference: expected.Tref as "293 K", activation: expected["Ea/R"] as "4000 K" });
    expect(ageFactor.to().toString()).toBe("1");
  });

  it("doubles over 10 degC at about 6160 K alone; at 5000 K it is 1.755", () => {
    // From 20 to 30 degC: ln 2 / (1/293.15 - 1/303.15) = 6160 K.
    const ten = (activation: `${number} K`): string => ageFactorByArrhenius({ temperature: "30 degC", reference: "20 degC", activation }).ageFactor.to().toFixed(3);
    expect([ten("6160 K"), ten("5000 K")]).toEqual(["2.000", "1.755"]);
    expect(ageFactorByDoubling({ temperature: "30 degC", reference: "20 degC" }).ageFactor.to().toFixed(3)).toBe("2.000");
  });

  it("refuses an activation energy in the wrong unit, and temperatures outside its range", () => {
    expect(faults(ageFactorByArrhenius.try({ temperature: "20 degC", reference: "20 degC", activation: "41.6 K" }))).toEqual(["tooLow activation"]);
    expect(faults(ageFactorByArrhenius.try({ temperature: "-0.1 degC", reference: "20 degC", activation: "5000 K" }))).toEqual(["tooLow temperature"]);
    expect(faults(ageFactorByArrhenius.try({ temperature: "49 degC", reference: "20 degC", activation: "5000 K" }))).toEqual(["tooHigh temperature"]);
  });
});
