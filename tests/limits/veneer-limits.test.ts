import { describe, expect, it } from "vitest";
import type { Verdict } from "../../src/limits/judge.js";
import { veneerLimits } from "../../src/limits/veneer-limits.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

type Unit = Parameters<typeof veneerLimits>[0];

const unit: Unit = { edition: "1970s code", unitWeight: "12 psf", thickness: "1 in", unitLength: "12 in", unitHeight: "8 in" };

/** The verdict on one figure of a unit. */
const verdict = (of: string, change: object): Verdict | undefined => {
  const tried = veneerLimits.try({ ...unit, ...change });
  return tried.ok ? tried.solution.answers.checks.find((check) => check.of === of)?.verdict : undefined;
};

describe("veneerLimits", () => {
  it("holds the unit to the 15 psf of the 1970s code: at it, a hair under and a hair over (NCMA TEK 79, 1976)", () => {
    const { expected } = vector("limit-weight-15-bond-50-1976");
    expect(expected.weight).toBe("15 psf");
    expect(verdict("load of the unit alone", { unitWeight: expected.weight })).toBe("within");
    expect(verdict("load of the unit alone", { unitWeight: "14.9999 psf" })).toBe("within");
    expect(verdict("load of the unit alone", { unitWeight: "15.0001 psf" })).toBe("over");
  });

  it("says of what that code has no figure on file that it is not on file", () => {
    const { outside, notOnFile, checks } = veneerLimits(unit);
    expect(outside).toEqual([]);
    expect(notOnFile).toHaveLength(4);
    expect(checks.filter(({ limit }) => limit !== undefined).map(({ of }) => of)).toEqual(["load of the unit alone"]);
  });

  it("has the least thickness of the adapted code: 6.35 mm, which is 1/4 in exactly", () => {
    expect(vector("limit-min-thickness-adhered").expected.min).toBe("6.35 mm (1/4 in)");
    const at = (thickness: string): Verdict | undefined => verdict("least thickness", { edition: "SBC 201", thickness });
    expect([at("6.35 mm"), at("1/4 in"), at("6.3501 mm")]).toEqual(["within", "within", "within"]);
    expect(at("6.3499 mm")).toBe("under");
  });

  it("holds light porcelain to 1800 mm and 1.6 m2, at, under and over each (SBC 201 digest, 1404.10.2)", () => {
    const { expected } = vector("limit-porcelain-light");
    expect([expected.maxDim, expected.maxArea]).toEqual(["1800 mm", "1.6 m2"]);
    const light = { edition: "SBC 201, porcelain tile", unitWeight: "17 kg/m2", thickness: "6 mm" };
    const side = (unitLength: string): Verdict | undefined => verdict("longest side", { ...light, unitLength, unitHeight: "100 mm" });
    expect([side("1799.9 mm"), side("1800 mm"), side("1800.1 mm")]).toEqual(["within", "within", "over"]);
    // The longer side counts, whichever it is.
    expect(verdict("longest side", { ...light, unitLength: "100 mm", unitHeight: "1800.1 mm" })).toBe("over");
    // 1600 x 1000 mm = 1.6 m2
    const face = (unitLength: string): Verdict | undefined => verdict("face", { ...light, unitLength, unitHeight: "1000 mm" });
    expect([face("1599.9 mm"), face("1600 mm"), face("1600.1 mm")]).toEqual(["within", "within", "over"]);
  });

  it("takes the class of porcelain by its load: to 0.17 kN/m2 the large one, beyond it 1200 mm, beyond 0.30 kN/m2 over", () => {
    // 0.17 kN/m2 is 170/9.80665 = 17.33517... kg/m2, 0.30 is 30.59148...
    const at = (unitWeight: unknown): (string | undefined)[] => {
      const tried = veneerLimits.try({ ...unit, edition: "SBC 201, porcelain tile", unitWeight, unitLength: "1500 mm", unitHeight: "300 mm" });
      const of = (name: string): string | undefined => (tried.ok ? tried.solution.answers.checks.find((check) => check.of === name)?.verdict : undefined);
      return [of("load of the unit alone"), of("longest side")];
    };
    expect(at("17.335 kg/m2")).toEqual(["within", "within"]);
    expect(at({ value: "17000000/980665", unit: "kg/m2" })).toEqual(["within", "within"]);
    expect(at("17.336 kg/m2")).toEqual(["within", "over"]);
    expect(at("30.591 kg/m2")).toEqual(["within", "over"]);
    expect(at("30.592 kg/m2")).toEqual(["over", "over"]);
  });

  it.each(["TMS 402-13/16", "TMS 402-22", "IBC, porcelain tile"] as const)("decides nothing by %s, which is from memory, and says so", (edition) => {
    const heavy = { ...unit, edition, unitWeight: "99 psf", thickness: "9 in", unitLength: "99 in", unitHeight: "99 in" } as const;
    const { answers, cautions, bases } = veneerLimits.solve(heavy);
    expect(answers.outside).toEqual([]);
    expect(answers.checks.every((check) => check.verdict === "not on file" && check.limit === undefined)).toBe(true);
    expect(answers.notOnFile[0]).toMatch(/from memory it is .* would be over/);
    expect(cautions.some((text) => text.includes("from memory"))).toBe(true);
    expect(bases.some(({ kind }) => kind === "from memory")).toBe(true);
  });

  it("has no edition without being told, nor one that is not on file", () => {
    expect(faults(veneerLimits.try({ ...unit, edition: undefined }))).toEqual(["missing edition"]);
    expect(faults(veneerLimits.try({ ...unit, edition: "TMS 402-30", unitWeight: "0 psf", unitHeight: "0 in" }))).toEqual(["notAChoice edition", "tooLow unitWeight", "tooLow unitHeight"]);
  });

  it("calls nothing safe, compliant or approved, and sends to the code and a licensed designer", () => {
    const { cautions, answers } = veneerLimits.solve(unit);
    expect([...cautions, ...answers.checks.map(({ says }) => says)].join(" ")).not.toMatch(/\b(safe|compliant|approved)\b/i);
    expect(cautions.join(" ")).toMatch(/licensed design professional/);
  });
});
