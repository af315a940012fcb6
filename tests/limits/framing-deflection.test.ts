import { describe, expect, it } from "vitest";
import { framingDeflection } from "../../src/limits/framing-deflection.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

const verdict = (deflectionLimit: string, deflection: string): string => {
  const tried = framingDeflection.try({ span: "9 ft", deflectionLimit, deflection });
  return tried.ok ? (tried.solution.answers.verdict ?? "none") : faults(tried).join(", ");
};

describe("framingDeflection", () => {
  it("has L/360 behind thin brick (BIA Technical Note 28C, 2014): 108/360 = 0.3 in, at, under and over", () => {
    const limit = vector("bia-tn28c-plane").expected["stud deflection"] ?? "";
    expect(limit).toBe("L/360");
    expect(["0.2999 in", "0.3 in", "0.3001 in"].map((deflection) => verdict(limit, deflection))).toEqual(["within", "within", "over"]);
    const { bases } = framingDeflection.solve({ span: "9 ft", deflectionLimit: "L/360" });
    expect(bases.some((basis) => basis.kind === "published" && basis.title.includes("28C"))).toBe(true);
  });

  it("L/600 and L/720 by hand: 108/600 = 0.18 in, 108/720 = 0.15 in; both stand on memory, and the job picks them", () => {
    expect(["0.1799 in", "0.18 in", "0.1801 in"].map((deflection) => verdict("L/600", deflection))).toEqual(["within", "within", "over"]);
    expect(["0.1499 in", "0.15 in", "0.1501 in"].map((deflection) => verdict("L/720", deflection))).toEqual(["within", "within", "over"]);
    for (const deflectionLimit of ["L/600", "L/720"] as const) expect(framingDeflection.solve({ span: "9 ft", deflectionLimit }).bases.some(({ kind }) => kind === "from memory")).toBe(true);
  });

  it("judges nothing where no deflection is given, and has no limit of its own", () => {
    expect(framingDeflection({ span: "9 ft", deflectionLimit: "L/360" }).verdict).toBeUndefined();
    expect(faults(framingDeflection.try({ span: "9 ft" }))).toEqual(["missing deflectionLimit"]);
    expect(verdict("L/240", "0.1 in")).toBe("notAChoice deflectionLimit");
  });

  it("sends to a licensed designer, and warns of tables for L/240", () => {
    const { cautions } = framingDeflection.solve({ span: "9 ft", deflectionLimit: "L/360" });
    expect(cautions.join(" ")).toMatch(/licensed design professional.*L\/240/);
    expect(cautions.join(" ")).not.toMatch(/\b(safe|compliant|approved)\b/i);
  });
});
