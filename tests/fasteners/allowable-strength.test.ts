import { describe, expect, it } from "vitest";
import { screwFactors } from "../../src/data/fasteners.js";
import { allowableStrength } from "../../src/fasteners/allowable-strength.js";
import { vector } from "../support/vectors.js";

const screw = { nominal: "300 lbf", safetyFactor: 3, screwStrength: "420 lbf", screwSafetyFactor: 3 } as const;

describe("allowableStrength", () => {
  // 300/3 = 100 lb against 420/3 = 140 lb.
  it("takes the lesser and names it", () => {
    const steel = allowableStrength.solve(screw);
    expect(steel.answers.allowable.toString()).toBe("100 lbf");
    expect(steel.steps.at(-1)?.governedBy).toBe("connection");
    // 600/3 = 200 lb against 140 lb.
    const own = allowableStrength.solve({ ...screw, nominal: "600 lbf" });
    expect(own.answers.allowable.toString()).toBe("140 lbf");
    expect(own.steps.at(-1)?.governedBy).toBe("screw");
  });

  // 300/2.5 = 120 lb, 420/3.5 = 120 lb: each by its own factor.
  it("divides each by its own factor", () => {
    const { connection, screw: own } = allowableStrength({ ...screw, safetyFactor: 2.5, screwSafetyFactor: 3.5 });
    expect([connection, own].map(String)).toEqual(["120 lbf", "120 lbf"]);
  });

  // AISI S100-16 w/S3-22, as coded: screw shear 3.00.
  it("the factor for the shear of the screw itself is on file", () => {
    const { safety, resistance } = screwFactors["AISI S100-16 w/S3-22"].screwShear;
    expect(`${safety} / ${resistance} / 0.40`).toBe(vector("aisi-s100-factors-2022").expected["screw shear"]);
  });

  it("cautions, and refuses a factor under 1", () => {
    expect(allowableStrength.solve(screw).cautions.join(" ")).toContain("licensed design professional decide");
    expect(allowableStrength.try({ ...screw, safetyFactor: 0.5, screwSafetyFactor: "50 %" })).toMatchObject({
      ok: false,
      problems: [{ code: "tooLow", path: ["safetyFactor"] }, { code: "tooLow", path: ["screwSafetyFactor"] }],
    });
  });
});
