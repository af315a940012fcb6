import { describe, expect, it } from "vitest";
import { spacerCount } from "../../src/joints/spacer-count.js";
import { faults } from "../support/faults.js";

describe("spacerCount", () => {
  it("is units times spacers less what is set again", () => {
    // 936 x 4 = 3744; half of them used again: 1872. A third used again: 2496, exactly.
    expect(spacerCount({ units: 936, spacersPerUnit: 4, reuseShare: "50 %" }).spacers.toString()).toBe("1872");
    expect(spacerCount({ units: 936, spacersPerUnit: 4, reuseShare: "1/3" }).spacers.toString()).toBe("2496");
    expect(spacerCount({ units: 937, spacersPerUnit: 4, reuseShare: "1/3" }).spacers.toString()).toBe("2499");
    expect(spacerCount({ units: 936, spacersPerUnit: 4, reuseShare: 0 }).spacers.toString()).toBe("3744");
  });

  it("asks how many a unit takes, and refuses that all are used again", () => {
    expect(faults(spacerCount.try({ units: 936, reuseShare: 1 }))).toEqual(["missing spacersPerUnit", "tooHigh reuseShare"]);
  });
});
