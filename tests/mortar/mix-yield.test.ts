import { describe, expect, it } from "vitest";
import { mixYield } from "../../src/mortar/mix-yield.js";
import { faults } from "../support/faults.js";

describe("mixYield", () => {
  it("puts the air on top of the parts, as a share of the mortar", () => {
    // 90 L of parts with 10 % air are 100 L of mortar, not 99.
    const mix = mixYield({ partsVolume: "90 L", partsMass: "180 kg", air: "10 %" });
    expect(mix.volume.toString()).toBe("100 L");
    expect(mix.density.toString()).toBe("1.8 kg/L");
    expect(mixYield({ partsVolume: "90 L", partsMass: "180 kg", air: 0 }).volume.toString()).toBe("90 L");
  });

  it("refuses air without its sign of percent, and half air", () => {
    expect(faults(mixYield.try({ partsVolume: "90 L", partsMass: "180 kg", air: 10 }))).toEqual(["tooHigh air"]);
    expect(faults(mixYield.try({ partsVolume: "90 L", partsMass: "180 kg", air: "50 %" }))).toEqual(["tooHigh air"]);
  });
});
