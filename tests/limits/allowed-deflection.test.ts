import { expect, it } from "vitest";
import { allowedDeflection } from "../../src/limits/allowed-deflection.js";
import { faults } from "../support/faults.js";

it("allowedDeflection is the span over its divisor: 108/360 = 0.3 in, 3000/600 = 5 mm", () => {
  expect(allowedDeflection({ span: "9 ft", divisor: 360 }).allowed.toString()).toBe("0.3 in");
  expect(allowedDeflection({ span: "3 m", divisor: 600 }).allowed.toString()).toBe("5 mm");
  expect(allowedDeflection({ span: "9 ft", divisor: 720 }).allowed.toString()).toBe("0.15 in");
});

it("allowedDeflection refuses no span and no divisor", () => {
  expect(faults(allowedDeflection.try({ span: "0 ft", divisor: 0 }))).toEqual(["tooLow span", "tooLow divisor"]);
});
