import { describe, expect, it } from "vitest";
import { deliveredThickness } from "../../src/fasteners/delivered-thickness.js";

describe("deliveredThickness", () => {
  // 0.95 * 0.04 in = 0.038 in; 0.95 * 1 mm = 0.95 mm.
  it("is 95 % of the design thickness", () => {
    expect(deliveredThickness({ designThickness: "0.04 in" }).leastDelivered.toString()).toBe("0.038 in");
    expect(deliveredThickness({ designThickness: "1 mm" }).leastDelivered.toString()).toBe("0.95 mm");
  });

  it("refuses no thickness", () => {
    expect(deliveredThickness.try({ designThickness: "0 in" })).toMatchObject({ ok: false, problems: [{ code: "tooLow", path: ["designThickness"] }] });
  });
});
