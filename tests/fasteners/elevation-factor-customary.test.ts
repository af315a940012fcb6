import { describe, expect, it } from "vitest";
import { elevationFactorCustomary } from "../../src/fasteners/elevation-factor-customary.js";

describe("elevationFactorCustomary", () => {
  // e^-0.0362 = 1 - 0.0362 + 0.00065522 - 0.0000079063 + 0.00000007155 = 0.96444738
  it("at 1,000 ft by its series", () => {
    expect(elevationFactorCustomary({ elevation: "1000 ft" }).elevationFactor.to().toFixed(7)).toBe("0.9644474");
  });

  it("is 1 at sea level and more below it", () => {
    expect(elevationFactorCustomary({ elevation: "0 ft" }).elevationFactor.to().toString()).toBe("1");
    expect(elevationFactorCustomary({ elevation: "-100 ft" }).elevationFactor.to().gt(1)).toBe(true);
  });
});
