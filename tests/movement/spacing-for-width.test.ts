import { describe, expect, it } from "vitest";
import { spacingForWidth } from "../../src/movement/spacing-for-width.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("spacingForWidth", () => {
  it("is the 23 ft 2 in of BIA Technical Note 18A, to the half inch", () => {
    const { inputs, expected, tolerance } = vector("bia-18a-spacing-23ft2");
    expect([expected.Se, tolerance]).toEqual(["23 ft 2 in (7.06 m)", "±1/2 in"]);
    const { spacing } = spacingForWidth({ width: inputs.wj as "1/2 in", sealantCapability: inputs.ej as "50 %", strain: 0.0009 });
    // 0.25/0.0009 = 277.78 in; 23 ft 2 in is 278
    expect(spacing.to("in").sub(278).abs().toNumber()).toBeLessThan(0.5);
    expectPrinted(spacing.to("m"), "7.06");
  });

  it("is the 208 in of a consultant's note (Conspectus, 2011), 17 ft 4 in", () => {
    const { inputs, expected } = vector("brick-spacing-17ft4");
    const { spacing } = spacingForWidth({ width: inputs.wj as "3/8 in", sealantCapability: inputs.ej as "50 %", strain: 0.0009 });
    // 0.1875/0.0009 = 208.33
    expect(`${spacing.to("in").toFixed(0)} in (17 ft 4 in)`).toBe(expected.spacing);
  });

  it("refuses no width, no give and no strain", () => {
    expect(faults(spacingForWidth.try({ width: "0 in", sealantCapability: "0 %", strain: 0 }))).toEqual(["tooLow width", "tooLow sealantCapability", "tooLow strain"]);
  });
});
