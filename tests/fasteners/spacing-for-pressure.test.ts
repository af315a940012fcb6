import { describe, expect, it } from "vitest";
import { spacingForPressure } from "../../src/fasteners/spacing-for-pressure.js";
import { vector } from "../support/vectors.js";

const line = { pressure: "30 psf", level: "allowable", studSpacing: "16 in", allowablePullOut: "72 lbf", allowableBoardPullThrough: "26 lbf", allowableScrewTension: "190 lbf" } as const;

describe("spacingForPressure", () => {
  it("names the least, whichever it is", () => {
    // 40 lb/ft, as worked out in the test of spacingFromPressure: 20 lb is 6 in.
    expect(spacingForPressure(line).governs).toBe("board pull through");
    expect(spacingForPressure({ ...line, allowablePullOut: "20 lbf" })).toMatchObject({ governs: "pull out" });
    expect(spacingForPressure({ ...line, allowableScrewTension: "20 lbf" })).toMatchObject({ governs: "screw tension" });
    expect(spacingForPressure({ ...line, greatestSpacing: "7 in" })).toMatchObject({ governs: "greatest spacing" });
    expect(spacingForPressure({ ...line, greatestSpacing: "7 in" }).spacing.toString()).toBe("7 in");
  });

  // The veneer tie example of STRUCTURE magazine: 0.6 * 32.7 = 19.62 psf; * 16/12 * 8/12 ft2 = 17.44 lb on a #8 screw in
  // 33 mil steel, which may carry 72 lb by AISI S100-07 to -16. Practice governs, not pull-out.
  it("in the published wind case practice governs, and a screw carries 17.4 lb of its 72 lb", () => {
    const printed = Number((vector("wind-structuremag-32p7").expected.p ?? "").replace(" psf", ""));
    const answers = spacingForPressure({ ...line, pressure: { value: (0.6 * printed).toFixed(2), unit: "psf" }, allowableBoardPullThrough: "72 lbf" });
    expect(answers.governs).toBe("greatest spacing");
    expect(answers.spacing.toString()).toBe("8 in");
    expect(answers.load.to("lbf").toFixed(2)).toBe("17.44");
  });

  it("says that 8 in is assumed, and that the code's tables are tighter", () => {
    const { assumptions, cautions } = spacingForPressure.solve(line);
    expect(assumptions.join(" ")).toContain("taken as 8 in");
    // IRC 2018, Table R702.3.6 note d, and IRC 2012, Table R602.3(1), as quoted.
    for (const figure of [vector("rule-irc-gypsum-7in-38").expected.maxSpacing, vector("rule-irc-gypsum-sheathing-7in").expected.spacing]) expect(cautions.join(" ")).toContain(`say ${figure ?? "nothing"}`);
    expect(cautions.join(" ")).toContain("first stud in");
    expect(cautions.join(" ")).toContain("licensed design professional decide");
  });

  it("refuses a pressure at strength level, and one of no level", () => {
    const strength = spacingForPressure.try({ ...line, level: "strength" });
    expect(strength).toMatchObject({ ok: false, problems: [{ code: "refused", path: ["level"] }] });
    const { level, ...open } = line;
    expect(level).toBe("allowable");
    expect(spacingForPressure.try(open)).toMatchObject({ ok: false, problems: [{ code: "missing", path: ["level"] }] });
  });

  it("asks for the board's pull-through and works none out", () => {
    const { allowableBoardPullThrough, ...without } = line;
    expect(allowableBoardPullThrough).toBe("26 lbf");
    const bare = spacingForPressure.try(without);
    expect(bare).toMatchObject({ ok: false, problems: [{ code: "missing", path: ["allowableBoardPullThrough"] }] });
    expect(bare.ok ? "" : bare.problems[0]?.message).toContain("a test value");
  });

  it("refuses strength level together with a spacing that comes to nothing", () => {
    const both = spacingForPressure.try({ ...line, level: "strength", allowablePullOut: "1 lbf" });
    expect(both.ok ? [] : both.problems.map(({ code, path }) => [code, ...path])).toEqual([["refused", "level"], ["tooLow", "spacing"]]);
  });
});
