import { describe, expect, it } from "vitest";
import { repointingDepth } from "../../src/joints/repointing-depth.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("repointingDepth", () => {
  it("is 2 to 2-1/2 widths (Masonry Construction, Restoring mortar joints in historic buildings)", () => {
    const { expected } = vector("repoint-depth-2-to-2p5w");
    const rake = repointingDepth({ width: "3/8 in" });
    expectPrinted(rake.least.to("in"), expected.depth_low);
    expectPrinted(rake.most.to("in"), expected.depth_high);
  });

  it("refuses a joint without width", () => {
    expect(faults(repointingDepth.try({ width: "0 in" }))).toEqual(["tooLow width"]);
  });
});
