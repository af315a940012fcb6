import { describe, expect, it } from "vitest";
import { windVelocityPressure } from "../../src/fasteners/wind-velocity-pressure.js";

const site = { edition: "ASCE 7-10", speed: "115 mph", speedLevel: "strength", exposure: "B", height: "30 ft", topography: 1, directionality: 0.85 } as const;

describe("windVelocityPressure", () => {
  // Kz = 2.01 * (30/1200)^(2/7) = 2.01 * 0.025^0.285714 = 0.70060; 0.00256 * 0.70060 * 0.85 * 115^2 = 20.162 psf.
  it("7-10 in exposure B by hand", () => {
    const answers = windVelocityPressure(site);
    expect(answers.exposureCoefficient.to().toFixed(3)).toBe("0.701");
    expect(answers.velocityPressure.toNumber("psf")).toBeCloseTo(0.00256 * 2.01 * 0.025 ** (2 / 7) * 0.85 * 115 ** 2, 9);
    expect(answers.level).toBe("strength");
  });

  // (h/900)^(2/9.5) and (h/700)^(2/11.5) in place of it.
  it("picks the exposure", () => {
    expect(windVelocityPressure({ ...site, exposure: "C" }).exposureCoefficient.toNumber()).toBeCloseTo(2.01 * (30 / 900) ** (2 / 9.5), 12);
    expect(windVelocityPressure({ ...site, exposure: "D" }).exposureCoefficient.toNumber()).toBeCloseTo(2.01 * (30 / 700) ** (2 / 11.5), 12);
  });

  it("takes each edition's own factor", () => {
    const plain = windVelocityPressure(site).velocityPressure.to("psf");
    const high = windVelocityPressure({ ...site, edition: "ASCE 7-16", elevationFactor: 0.9 });
    const important = windVelocityPressure({ ...site, edition: "ASCE 7-05", speedLevel: "allowable", importance: 1.15 });
    expect(high.velocityPressure.to("psf").div(plain).toFixed(12)).toBe("0.900000000000");
    expect(important.velocityPressure.to("psf").div(plain).toFixed(12)).toBe("1.150000000000");
    expect([high.level, important.level]).toEqual(["strength", "allowable"]);
  });
});

describe("windVelocityPressure refuses", () => {
  const codes = (input: object): unknown => {
    const tried = windVelocityPressure.try({ ...site, ...input });
    return tried.ok ? [] : tried.problems.map(({ code, path }) => [code, ...path]);
  };

  it("the speed of one edition in another", () => {
    expect(codes({ speedLevel: "allowable" })).toEqual([["refused", "speedLevel"]]);
    expect(codes({ edition: "ASCE 7-05", importance: 1 })).toEqual([["refused", "speedLevel"]]);
    expect(codes({ edition: "ASCE 7-05", speedLevel: "allowable", importance: 1 })).toEqual([]);
  });

  it("the factor of another edition, and to take one as 1", () => {
    expect(codes({ elevationFactor: 1 })).toEqual([["refused", "elevationFactor"]]);
    expect(codes({ importance: 1 })).toEqual([["refused", "importance"]]);
    expect(codes({ edition: "ASCE 7-16" })).toEqual([["missing", "elevationFactor"]]);
    expect(codes({ edition: "ASCE 7-16", importance: 1.15 })).toEqual([["refused", "importance"], ["missing", "elevationFactor"]]);
    expect(codes({ edition: "ASCE 7-05", elevationFactor: 1 })).toEqual([["refused", "speedLevel"], ["refused", "elevationFactor"], ["missing", "importance"]]);
  });

  it("an edition that is not on file, and none", () => {
    expect(codes({ edition: "ASCE 7-22" })).toEqual([["notAChoice", "edition"]]);
    expect(codes({ edition: undefined })).toEqual([["missing", "edition"]]);
  });

  it("to assume level, exposure, topography or directionality", () => {
    expect(codes({ speedLevel: undefined, exposure: undefined, topography: undefined, directionality: undefined })).toEqual(
      ["speedLevel", "exposure", "topography", "directionality"].map((name) => ["missing", name]),
    );
  });
});
