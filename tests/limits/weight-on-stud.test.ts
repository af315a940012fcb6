import { expect, it } from "vitest";
import { weightOnStud } from "../../src/limits/weight-on-stud.js";
import { faults } from "../support/faults.js";

it("weightOnStud gives each stud the width of its spacing, by hand 30 x 16/12 = 40 and 100 x 0.4 = 40", () => {
  expect(weightOnStud({ weight: "30 psf", studSpacing: "16 in" }).onStud.toString()).toBe("40 lb/ft");
  expect(weightOnStud({ weight: "30 psf", studSpacing: "24 in" }).onStud.toString()).toBe("60 lb/ft");
  expect(weightOnStud({ weight: "100 kg/m2", studSpacing: "400 mm" }).onStud.toString()).toBe("40 kg/m");
});

it("weightOnStud refuses no weight and no spacing", () => {
  expect(faults(weightOnStud.try({ weight: "0 psf", studSpacing: "0 in" }))).toEqual(["tooLow weight", "tooLow studSpacing"]);
});
