import { describe, expect, it } from "vitest";
import { hollowFill } from "../../src/mortar/hollow-fill.js";
import { faults } from "../support/faults.js";

const wall = { area: "480 ft2", deepest: "3/8 in", meanHollow: "1/8 in", bagYield: "0.5 ft3" } as const;

describe("hollowFill", () => {
  it("is area times mean hollow, in bags", () => {
    // 480 x (1/8) / 12 = 5 ft3 = 10 bags to the bag.
    const extra = hollowFill(wall);
    expect(extra.volume.toString()).toBe("5 ft3");
    expect(extra.bags.toString()).toBe("10");
    expect(hollowFill({ ...wall, area: "480.1 ft2" }).bags.toString()).toBe("11");
  });

  it("sends a wall with hollows over 3/8 in to be flattened first", () => {
    const tried = hollowFill.try({ ...wall, deepest: "0.376 in" });
    expect(faults(tried)).toEqual(["tooHigh deepest"]);
    expect(tried.ok ? "" : tried.problems[0]?.message).toContain("over 3/8 in flatten the wall first");
  });

  it("refuses a mean deeper than the deepest", () => {
    expect(hollowFill.try({ ...wall, deepest: "1/8 in" }).ok).toBe(true);
    expect(faults(hollowFill.try({ ...wall, deepest: "1/10 in" }))).toEqual(["tooLow spare"]);
  });
});
