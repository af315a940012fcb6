import { describe, expect, it } from "vitest";
import { quantity } from "../../src/core/read-quantity.js";
import { sum } from "../../src/core/quantity-arithmetic.js";
import { baseClearances } from "../../src/limits/base-clearances.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

const names = { aboveEarth: "aboveEarth", abovePaving: "abovePaved", aboveWalkingSurface: "aboveWalkingSameFoundation" } as const;
const cases = [
  { edition: "IRC 2018", row: vector("limit-clearance-irc") },
  { edition: "SBC 201 (metric)", row: vector("limit-clearance-ibc-metric") },
] as const;

describe.each(cases)("baseClearances by $edition", ({ edition, row: { expected } }) => {
  it.each(Object.entries(names))("%s: at it, a hair under and a hair over", (name, printedAs) => {
    const least = quantity("length", expected[printedAs] as "4 in");
    const verdict = (by: "0.001 mm" | "-0.001 mm" | "0 mm"): string | undefined => {
      const tried = baseClearances.try({ edition, [name]: sum([least, quantity("length", by)]) });
      return tried.ok ? tried.solution.answers.checks[0]?.verdict : undefined;
    };
    expect([verdict("-0.001 mm"), verdict("0 mm"), verdict("0.001 mm")]).toEqual(["under", "within", "within"]);
  });
});

describe("baseClearances", () => {
  it("does not take 100 mm for 4 in, which is 101.6 mm", () => {
    expect(baseClearances({ edition: "IRC 2018", aboveEarth: "100 mm" }).short).toHaveLength(1);
    expect(baseClearances({ edition: "SBC 201 (metric)", aboveEarth: "100 mm" }).short).toEqual([]);
  });

  it("judges only what is given, and names what is short", () => {
    const { checks, short } = baseClearances({ edition: "IRC 2018", abovePaving: "1-1/2 in", aboveWalkingSurface: "1/2 in" });
    expect(checks.map(({ of, verdict }) => `${of} ${verdict}`)).toEqual(["above paving under", "above a walking surface within"]);
    expect(short).toEqual(["above paving: 1.5 in is under 2 in"]);
  });

  it("wants an edition and one clearance at least", () => {
    expect(faults(baseClearances.try({ edition: "IRC 2018" }))).toEqual(["refused "]);
    expect(faults(baseClearances.try({ aboveEarth: "-1 in" }))).toEqual(["missing edition", "tooLow aboveEarth"]);
  });

  it("sends to the code and a licensed designer", () => {
    const { cautions } = baseClearances.solve({ edition: "IRC 2018", aboveEarth: "4 in" });
    expect(cautions.join(" ")).toMatch(/code in force .* licensed design professional/);
    expect(cautions.join(" ")).not.toMatch(/\b(safe|compliant|approved)\b/i);
  });
});
