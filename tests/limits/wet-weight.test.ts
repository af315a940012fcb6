import { expect, it } from "vitest";
import { wetWeight } from "../../src/limits/wet-weight.js";
import { faults } from "../support/faults.js";

it("wetWeight adds what is taken up, by hand 13 x 1.1 and 60 x 1.075", () => {
  expect(wetWeight({ weight: "13 psf", wetGain: "10 %" }).wet.toString()).toBe("14.3 lb/ft2");
  expect(wetWeight({ weight: "60 kg/m2", wetGain: "7.5 %" }).wet.toString()).toBe("64.5 kg/m2");
  expect(wetWeight({ weight: "13 psf", wetGain: 0 }).wet.toString()).toBe("13 lb/ft2");
});

it("wetWeight refuses no weight and less than no water", () => {
  expect(faults(wetWeight.try({ weight: "0 psf", wetGain: "-0.1 %" }))).toEqual(["tooLow weight", "tooLow wetGain"]);
});
