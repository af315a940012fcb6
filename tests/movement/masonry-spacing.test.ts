import { describe, expect, it } from "vitest";
import { masonrySpacing } from "../../src/movement/masonry-spacing.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

describe("masonrySpacing", () => {
  it("has the limits of BIA Technical Note 18A as printed", () => {
    const { expected } = vector("bia-18a-limits");
    const wall = (wallKind: "without openings" | "with openings" | "parapet"): ReturnType<typeof masonrySpacing> => masonrySpacing({ rule: "BIA Technical Note 18A", wallKind });
    expect(wall("without openings").spacing.toString()).toBe(expected.noOpenings);
    expect(wall("with openings").spacing.toString()).toBe(expected.openings);
    expect(wall("parapet").spacing.toString()).toBe(expected.parapetExtra);
    expect(`within ${wall("parapet").fromCorner.toString()}, both sides sum <= straight-wall spacing`).toBe(expected.corner);
    expect(wall("parapet").underAngle?.to("in").toString()).toBe("0.25");
    expect(expected.underAngle).toBe("1/4 in");
  });

  it("has that of NCMA TEK 10-2B by height, without a gap under an angle", () => {
    const { inputs, expected } = vector("ncma-cj-8ft");
    const block = masonrySpacing({ rule: "NCMA TEK 10-2B", height: inputs.H as "8 ft" });
    expect(block.spacing.toString()).toBe(expected.spacing);
    expect(block.underAngle).toBeUndefined();
  });

  it("wants what its rule goes by, and nothing else", () => {
    expect(faults(masonrySpacing.try({ rule: "BIA Technical Note 18A", height: "8 ft" }))).toEqual(["refused height", "missing wallKind"]);
    expect(faults(masonrySpacing.try({ rule: "NCMA TEK 10-2B", wallKind: "parapet" }))).toEqual(["refused wallKind", "missing height"]);
    expect(faults(masonrySpacing.try({ wallKind: "parapet" }))).toEqual(["missing rule"]);
  });
});
