import { describe, expect, it } from "vitest";
import { ageForStrength, hyperbolicStrength } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";

const curve = { ultimate: "40 MPa", rateConstant: "0.5 /d", delay: "6 h" } as const;

describe("strength along a hyperbola", () => {
  it("by hand: S = Su k (t - t0) / (1 + k (t - t0))", () => {
    // t - t0 = 2.25 d - 0.25 d = 2 d; k (t - t0) = 1; share 1/2; 20 MPa
    const strength = hyperbolicStrength({ ...curve, age: "2.25 d" });
    expect([strength.growing.to("d").toString(), strength.growth.toString(), strength.strengthShare.to("ratio").toString(), strength.strength.toString()]).toEqual(["2", "1", "0.5", "20 MPa"]);
    // t - t0 = 6 d; k (t - t0) = 3; share 3/4; 30 MPa
    expect(hyperbolicStrength({ ...curve, age: "6.25 d" }).strength.toString()).toBe("30 MPa");
  });

  it("begins at the delay, and grows", () => {
    expect(hyperbolicStrength({ ...curve, age: "6 h" }).strength.toString()).toBe("0 MPa");
    const strengths = [7, 12, 24, 72, 672].map((hours) => hyperbolicStrength({ ...curve, age: `${hours} h` as "7 h" }).strength.toNumber("MPa"));
    expect(strengths.every((one, index) => index === 0 || one > (strengths[index - 1] ?? 0))).toBe(true);
    expect(strengths.at(-1)).toBeLessThan(40);
  });

  it("has no strength before the delay", () => {
    expect(faults(hyperbolicStrength.try({ ...curve, age: "5.9 h" }))).toEqual(["tooLow growing"]);
  });

  it("and back: the age for a strength", () => {
    // x = 30/40; t = 6 h + x / (k (1 - x)) = 0.25 d + 0.75 / (0.5 x 0.25) = 6.25 d
    expect(ageForStrength({ ...curve, strength: "30 MPa" }).age.to("d").toString()).toBe("6.25");
    expect(ageForStrength({ ...curve, strength: "0 MPa" }).age.toString()).toBe("6 h");
  });

  it("the ultimate strength is never reached", () => {
    expect(faults(ageForStrength.try({ ...curve, strength: "40 MPa" }))).toEqual(["tooHigh strengthShare"]);
    expect(faults(ageForStrength.try({ ...curve, strength: "39.99 MPa" }))).toEqual([]);
  });
});
