import { describe, expect, it } from "vitest";
import { cornerZoneWidth } from "../../src/fasteners/corner-zone-width.js";

describe("cornerZoneWidth", () => {
  // The rule is from memory; this checks the arithmetic on it.
  it.each([
    // Tenth of 40 ft = 4 ft, 0.4 * 20 = 8 ft: 4 ft.
    ["40 ft", "20 ft", "4", "lesser"],
    // Tenth of 20 ft = 2 ft: the least of 3 ft.
    ["20 ft", "20 ft", "3", "leastZone"],
    // Tenth of 200 ft = 20 ft, 0.4 * 12 = 4.8 ft, 0.04 * 200 = 8 ft: 8 ft.
    ["200 ft", "12 ft", "8", "leastByWidth"],
    // Tenth of 100 ft = 10 ft, 0.4 * 15 = 6 ft, 0.04 * 100 = 4 ft: 6 ft.
    ["100 ft", "15 ft", "6", "lesser"],
  ] as const)("%s wide, %s high: %s ft", (leastWidth, height, feet, governs) => {
    const { answers, steps } = cornerZoneWidth.solve({ leastWidth, height });
    expect(answers.width.to("ft").toString()).toBe(feet);
    expect(steps.at(-1)?.governedBy).toBe(governs);
  });

  it("says that the rule is from memory, and refuses more than 60 ft", () => {
    expect(cornerZoneWidth.solve({ leastWidth: "40 ft", height: "20 ft" }).bases.map(({ kind }) => kind)).toEqual(["from memory"]);
    expect(cornerZoneWidth.try({ leastWidth: "40 ft", height: "61 ft" })).toMatchObject({ ok: false, problems: [{ code: "tooHigh", path: ["height"] }] });
  });
});
