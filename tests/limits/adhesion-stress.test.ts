import { expect, it } from "vitest";
import { adhesionStress } from "../../src/limits/adhesion-stress.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

it("adhesionStress is load over area: 628 / 4 = 157 psi, 1250 N over 50 x 50 mm = 0.5 N/mm2", () => {
  expect(adhesionStress({ load: "628 lbf", area: "4 in2" }).stress.toString()).toBe("157 psi");
  expect(adhesionStress({ load: "1250 N", area: "2500 mm2" }).stress.toString()).toBe("0.5 MPa");
});

it("adhesionStress of a unit's own weight is 1/480 of the shear that the 1970s code asks for (NCMA TEK 79, 1976)", () => {
  const { expected, note } = vector("limit-weight-15-bond-50-1976");
  expect(note).toContain("480");
  const stress = adhesionStress({ load: "15 lbf", area: "1 ft2" }).stress.to("psi");
  expect(Number.parseFloat(expected.bond ?? "") / stress.toNumber()).toBeCloseTo(480, 9);
});

it("adhesionStress refuses no load and no area", () => {
  expect(faults(adhesionStress.try({ load: "0 lbf", area: "0 in2" }))).toEqual(["tooLow load", "tooLow area"]);
});
