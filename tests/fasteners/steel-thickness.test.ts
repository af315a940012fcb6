import { describe, expect, it } from "vitest";
import { steelDesignations } from "../../src/data/fasteners.js";
import { steelThickness } from "../../src/fasteners/steel-thickness.js";
import { vector, vectors } from "../support/vectors.js";

describe("steelThickness", () => {
  it.each(vectors("cfs-thickness-"))("$inputs.mils mil: at least $expected.minBaseThickness delivered (AISI S201 and S240, as quoted)", ({ inputs, expected }) => {
    const steel = `${inputs.mils ?? ""} mil` as "33 mil";
    const answers = steelThickness({ steel });
    expect(answers.designThickness.to("in").toString()).toBe((inputs.designThickness ?? "").replace(" in", ""));
    const printed = Number((expected.minBaseThickness ?? "").replace(" in", ""));
    expect(Math.abs(answers.leastDelivered.toNumber("in") - printed)).toBeLessThanOrEqual(0.0001);
  });

  it("43 mil is designed as in the AISI's guide D110-16 (as quoted by an open-source library's test)", () => {
    expect(steelThickness({ steel: "43 mil" }).designThickness.to("in").toString()).toBe((vector("aisi-d110-tilting-789").inputs.t2 ?? "").replace(" in", ""));
  });

  it("what is recalled says so, and the rest does not", () => {
    const recalled = steelDesignations.filter((steel) => steelThickness.solve({ steel }).bases.some(({ kind }) => kind === "from memory"));
    expect(recalled).toEqual(["30 mil", "68 mil", "118 mil"]);
  });

  it("thicker by its mils is thicker", () => {
    const thicknesses = steelDesignations.map((steel) => steelThickness({ steel }).designThickness.toNumber("in"));
    expect(thicknesses).toEqual([...thicknesses].sort((a, b) => a - b));
  });

  it.each(["20 ga", "20 gauge", "20", 20, "20 EQ", "0.0346 in"])("refuses %s with the reason", (steel) => {
    const bad = steelThickness.try({ steel });
    expect(bad).toMatchObject({ ok: false, problems: [{ code: "notAChoice", path: ["steel"] }] });
    expect(bad.ok ? "" : bad.problems[0]?.message).toContain("20 gauge may be 30 mil, 33 mil or less");
  });
});
