import { describe, expect, it } from "vitest";
import { pullOut } from "../../src/fasteners/pull-out.js";
import { screwDiameter } from "../../src/fasteners/screw-diameter.js";
import { expectPrinted, vector, vectors } from "../support/vectors.js";

const before = "AISI S100-07 to S100-16";
const since = "AISI S100-16 w/S3-22";

describe("pullOut by edition", () => {
  it.each(vectors("pullout-old-vs-new-8-"))("$id, divided by the safety factor", ({ inputs, expected }) => {
    const screw = { designThickness: inputs.tc as "0.0188 in", screwDiameter: inputs.d as "0.164 in", ultimateStress: inputs.Fu2 as "33 ksi" };
    for (const [edition, column] of [[before, "S100-07..16"], [since, "S100-16 w/S3-22"]] as const) {
      const { nominal, safetyFactor } = pullOut({ ...screw, edition });
      const printed = Number((expected[column] ?? "").replace(" lb", ""));
      expect(Math.abs(nominal.to("lbf").div(safetyFactor.to()).toNumber() - printed)).toBeLessThanOrEqual(0.1);
    }
  });

  it("the resistance factor times the nominal strength, AISI S100-07 to -16, E4 and J4", () => {
    const { expected, inputs } = vector("screw-8-33mil-lrfd");
    const { nominal, safetyFactor, resistanceFactor } = pullOut({ steel: "33 mil", screwDiameter: "0.164 in", ultimateStress: "45 ksi", edition: before });
    expect(Math.abs(nominal.to("lbf").times(resistanceFactor.to()).toNumber() - Number((expected.phiPnot ?? "").replace(" lb", "")))).toBeLessThanOrEqual(0.5);
    expect(safetyFactor.to().toFixed(1)).toBe(inputs.omega);
    expect(resistanceFactor.to().toFixed(1)).toBe(inputs.phi);
  });

  it("the factors of 2022", () => {
    const { safetyFactor, resistanceFactor } = pullOut({ steel: "33 mil", screwDiameter: "0.164 in", ultimateStress: "45 ksi", edition: since });
    // Allowable strength / load and resistance factor design / limit states design of Canada, which is not offered.
    expect(`${safetyFactor.to().toFixed(2)} / ${resistanceFactor.to().toFixed(2)} / 0.45`).toBe(vector("aisi-s100-factors-2022").expected["pull-out"]);
  });

  // Equal where 1.63 t^0.18 / 2.80 = 1 / 3.00: t = (2.80 / (3.00 * 1.63))^(1/0.18) = 0.5726^5.556 = 0.0451 in.
  it("what may be allowed is less by the later edition below 0.045 in, and more above", () => {
    const allowed = (designThickness: "0.044 in" | "0.046 in", edition: typeof before | typeof since): number => {
      const { nominal, safetyFactor } = pullOut({ designThickness, screwDiameter: "0.164 in", ultimateStress: "45 ksi", edition });
      return nominal.toNumber("lbf") / safetyFactor.toNumber();
    };
    expect(allowed("0.044 in", since)).toBeLessThan(allowed("0.044 in", before));
    expect(allowed("0.046 in", since)).toBeGreaterThan(allowed("0.046 in", before));
  });
});

describe("pullOut by the screw table of a steel-stud association", () => {
  it.each([...vectors("screw-6-18mil"), ...vectors("screw-8-18mil"), ...vectors("screw-10-18mil"), ...vectors("screw-12-18mil"), ...vectors("screw-8-27mil"), ...vectors("screw-12-27mil")])(
    "$id (SSMA, Product Technical Guide)",
    ({ id, inputs, expected }) => {
      const [, number, mils] = /^screw-(\d+)-(\d+)mil/.exec(id) ?? [];
      const { diameter } = screwDiameter({ size: `#${number ?? ""}` as "#8" });
      expect(diameter.toString()).toBe(inputs.d);
      const { nominal, safetyFactor } = pullOut({ steel: `${mils ?? ""} mil` as "18 mil", screwDiameter: diameter, ultimateStress: inputs.Fu as "33 ksi", edition: before });
      expectPrinted(nominal.to("lbf").div(safetyFactor.to()), expected.pullOut);
    },
  );
});

describe("pullOut says and refuses", () => {
  const screw = { screwDiameter: "0.164 in", ultimateStress: "45 ksi", edition: since } as const;

  it("cautions, and one more for steel thinner than 33 mil", () => {
    const cautions = (steel: "30 mil" | "33 mil"): string => pullOut.solve({ ...screw, steel }).cautions.join(" ");
    expect(cautions("33 mil")).toContain("licensed design professional decide");
    expect(cautions("33 mil")).toContain("pull-through");
    expect(cautions("33 mil")).not.toContain("thinner than 33 mil");
    expect(cautions("30 mil")).toContain("thinner than 33 mil");
  });

  it("a thickness from memory is shown in what it stands on", () => {
    expect(pullOut.solve({ ...screw, steel: "30 mil" }).bases.some(({ kind }) => kind === "from memory")).toBe(true);
    expect(pullOut.solve({ ...screw, designThickness: "0.0312 in" }).bases.some(({ kind }) => kind === "from memory")).toBe(false);
  });

  it("refuses both a designation and a thickness, and neither", () => {
    expect(pullOut.try({ ...screw, steel: "33 mil", designThickness: "0.0346 in" })).toMatchObject({ ok: false, problems: [{ code: "either", path: ["thickness"] }] });
    expect(pullOut.try(screw)).toMatchObject({ ok: false, problems: [{ code: "either", path: ["thickness"] }] });
  });

  it("refuses a gauge with the reason, an edition not on file, and to pick an edition, all at once", () => {
    const bad = pullOut.try({ ...screw, steel: "20 ga", edition: "AISI S100-24" });
    expect(bad.ok ? [] : bad.problems.map(({ code, path }) => [code, ...path])).toEqual([["notAChoice", "steel"], ["notAChoice", "edition"]]);
    expect(bad.ok ? "" : bad.problems[0]?.message).toContain("20 gauge may be 30 mil, 33 mil or less");
    expect(bad.ok ? "" : bad.problems[1]?.message).toContain("no other is on file");
    const open = pullOut.try({ screwDiameter: "0.164 in", ultimateStress: "45 ksi", steel: "33 mil" });
    expect(open).toMatchObject({ ok: false, problems: [{ code: "missing", path: ["edition"] }] });
  });
});
