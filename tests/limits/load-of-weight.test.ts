import { expect, it } from "vitest";
import { loadOfWeight } from "../../src/limits/load-of-weight.js";
import { faults } from "../support/faults.js";

it("loadOfWeight: a pound weighs a pound-force, a kilogram 9.80665 N (standard gravity)", () => {
  expect(loadOfWeight({ weight: "15 psf" }).load.toString()).toBe("15 psf");
  expect(loadOfWeight({ weight: "1 kg/m2" }).load.to("Pa").toString()).toBe("9.80665");
  // 0.17 kN/m2 is 17.3352 kg/m2: 170 / 9.80665
  expect(loadOfWeight({ weight: "17.3352 kg/m2" }).load.to("kPa").toFixed(4)).toBe("0.1700");
});

it("loadOfWeight refuses no weight", () => {
  expect(faults(loadOfWeight.try({ weight: "0 kg/m2" }))).toEqual(["tooLow weight"]);
});
