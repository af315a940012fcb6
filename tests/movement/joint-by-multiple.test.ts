import { describe, expect, it } from "vitest";
import { jointByMultiple } from "../../src/movement/joint-by-multiple.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("jointByMultiple", () => {
  it("is 2 to 4 times the movement, and not less than 3/8 in (trade press on stone)", () => {
    const { inputs, expected } = vector("stone-joint-2to4x");
    const movement = inputs.movement as "0.05184 in";
    const [two, four] = [2, 4].map((multiple) => jointByMultiple({ movement, multiple, leastWidth: "3/8 in" }));
    expectPrinted(two?.byMovement.to("in") ?? "", expected["2x"]);
    expectPrinted(four?.byMovement.to("in") ?? "", expected["4x"]);
    expectPrinted(four?.width.to("in") ?? "", expected.governing);
  });

  it("is 4 times the movement (Merritt and Ricketts), as a sealant of 25 % would ask", () => {
    const { expected } = vector("joint-4x-movement");
    const { width } = jointByMultiple({ movement: expected.movement as "0.05184 in", multiple: 4, leastWidth: "0 in" });
    expectPrinted(width.to("in"), expected.width);
  });

  it("says which of the two governs, at the least width and either side of it", () => {
    // 4 x 0.09375 = 0.375
    const governs = (movement: "0.0937 in" | "0.0938 in"): string | undefined => jointByMultiple.solve({ movement, multiple: 4, leastWidth: "3/8 in" }).steps.at(-1)?.governedBy;
    expect([governs("0.0937 in"), governs("0.0938 in")]).toEqual(["leastWidth", "byMovement"]);
    expect(jointByMultiple({ movement: "0.09375 in", multiple: 4, leastWidth: "3/8 in" }).width.toString()).toBe("0.375 in");
  });

  it("refuses no movement and less than once", () => {
    expect(faults(jointByMultiple.try({ movement: "0 in", multiple: 0.99, leastWidth: "-1 in" }))).toEqual(["tooLow movement", "tooLow multiple", "tooLow leastWidth"]);
  });
});
