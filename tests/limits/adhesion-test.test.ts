import { describe, expect, it } from "vitest";
import { adhesionTest } from "../../src/limits/adhesion-test.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

/** The verdict on a load over an area of 1 mm2 or 1 in2, so that the number of the load is that of the stress. */
const verdict = (input: object): string => {
  const tried = adhesionTest.try(input);
  return tried.ok ? tried.solution.answers.check.verdict : faults(tried).join(", ");
};

describe("adhesionTest", () => {
  it("holds a test in tension to the classes of EN 12004: at, a hair under, a hair over", () => {
    const { expected } = vector("en12004-c1-c2");
    expect(expected).toEqual({ C1: "0.5 N/mm2", C2: "1.0 N/mm2" });
    const pull = (load: string, adhesionClass: string): string => verdict({ test: "tension", load, area: "1 mm2", adhesionClass });
    expect(["0.4999 N", "0.5 N", "0.5001 N"].map((load) => pull(load, "EN 12004 C1"))).toEqual(["under", "within", "within"]);
    expect(["0.9999 N", "1.0 N", "1.0001 N"].map((load) => pull(load, "EN 12004 C2"))).toEqual(["under", "within", "within"]);
  });

  it("holds a test in shear to the 50 psi of the 1970s code (NCMA TEK 79, 1976)", () => {
    expect(vector("limit-weight-15-bond-50-1976").expected.bond).toBe("50 psi");
    const shear = (load: string): string => verdict({ test: "shear", load, area: "1 in2", adhesionClass: "1970s code" });
    expect(["49.999 lbf", "50 lbf", "50.001 lbf"].map(shear)).toEqual(["under", "within", "within"]);
  });

  it("never compares shear with tension, whether the figure is the job's or on file", () => {
    const specimen = { load: "500 lbf", area: "4 in2" };
    expect(verdict({ ...specimen, test: "shear", adhesionClass: "EN 12004 C1" })).toBe("refused test");
    expect(verdict({ ...specimen, test: "tension", adhesionClass: "1970s code" })).toBe("refused test");
    expect(verdict({ ...specimen, test: "tension", required: "100 psi", requiredBy: "shear" })).toBe("refused test");
    expect(verdict({ ...specimen, test: "shear", required: "100 psi", requiredBy: "tension" })).toBe("refused test");
    const tried = adhesionTest.try({ ...specimen, test: "shear", adhesionClass: "EN 12004 C1" });
    expect(tried.ok ? "" : tried.problems[0]?.message).toContain("shear and tension are not compared");
  });

  it("holds to the figure of the job, exactly, in units of its own", () => {
    // 1.03 N/mm2: at, under and over
    const pull = (load: string): string => verdict({ test: "tension", load, area: "1 mm2", required: "1.03 MPa", requiredBy: "tension" });
    expect(["1.02999 N", "1.03 N", "1.03001 N"].map(pull)).toEqual(["under", "within", "within"]);
  });

  it("wants to know of a job's figure which of the two it is, and not to be told of a class", () => {
    expect(verdict({ test: "shear", load: "500 lbf", area: "4 in2", required: "100 psi" })).toBe("missing requiredBy");
    expect(verdict({ test: "shear", load: "500 lbf", area: "4 in2", adhesionClass: "1970s code", requiredBy: "shear" })).toBe("refused requiredBy");
    expect(verdict({ test: "shear", load: "500 lbf", area: "4 in2" })).toBe("either figure");
  });

  it.each(["ANSI A118.1", "ANSI A118.4", "ANSI A118.15"])("decides nothing by %s, which is from memory", (adhesionClass) => {
    expect(verdict({ test: "shear", load: "1 lbf", area: "4 in2", adhesionClass })).toBe("not on file");
    expect(verdict({ test: "shear", load: "9999 lbf", area: "4 in2", adhesionClass })).toBe("not on file");
  });
});
