import { expect, it } from "vitest";
import { standardPressure } from "../../src/weather/index.js";
import { faults } from "../support/faults.js";
import { printed, vectors } from "../support/vectors.js";

it.each(vectors("atm-ashrae-"))("ASHRAE, chapter 1, Table 1: $id", ({ inputs, expected }) => {
  const found = standardPressure({ altitude: inputs.altitude as "500 m" }).barometer.toNumber("Pa");
  expect(Math.abs(found - Number(printed(expected.pressure ?? "")?.number))).toBeLessThanOrEqual(1);
});

it("falls with the altitude, and has a top", () => {
  expect(standardPressure({ altitude: "-100 ft" }).barometer.toNumber("Pa")).toBeGreaterThan(101_325);
  expect(faults(standardPressure.try({ altitude: "5 km" }))).toEqual(["unknownUnit altitude"]);
  expect(faults(standardPressure.try({ altitude: "15001 ft" }))).toEqual(["tooHigh altitude"]);
});
