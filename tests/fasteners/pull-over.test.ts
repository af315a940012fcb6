import { describe, expect, it } from "vitest";
import { pullOver } from "../../src/fasteners/pull-over.js";
import { expectPrinted, vector, vectors } from "../support/vectors.js";

const sheet = { underHead: "steel", steel: "54 mil", headDiameter: "0.4 in", ultimateStress: "65 ksi" } as const;
const before = "AISI S100-07 to S100-16";
const lowered = "AISI S100-16 w/S3-22, coefficient 0.90";
const kept = "AISI S100-16 w/S3-22, coefficient 1.5";

describe("pullOver by edition", () => {
  it("0.90 and 1.5 are both offered for the later edition, and each says that sources disagree", () => {
    // 0.90 * 0.0566 * 0.4 * 65,000 = 1324.44 lb; 1.5 in its place 2207.4 lb.
    expect(pullOver({ ...sheet, edition: lowered }).nominal.to("lbf").toString()).toBe("1324.44");
    expect(pullOver({ ...sheet, edition: kept }).nominal.to("lbf").toString()).toBe("2207.4");
    expect(pullOver({ ...sheet, edition: before }).nominal.to("lbf").toString()).toBe("2207.4");
    const says = [before, lowered, kept].map((edition) => pullOver.solve({ ...sheet, edition: edition as typeof kept }).cautions.some((text) => text.startsWith("Sources disagree")));
    expect(says).toEqual([false, true, true]);
  });

  it("the factors go with the coefficient", () => {
    const factors = (edition: typeof before | typeof lowered | typeof kept): string => {
      const { safetyFactor, resistanceFactor } = pullOver({ ...sheet, edition });
      return `${safetyFactor.to().toFixed(2)} / ${resistanceFactor.to().toFixed(2)} / 0.40`;
    };
    // The third figure is that of Canada, which is not offered.
    expect(factors(lowered)).toBe(vector("aisi-s100-factors-2022").expected["pull-over"]);
    expect(factors(before)).toBe("3.00 / 0.50 / 0.40");
    expect(factors(kept)).toBe(factors(before));
  });

  it.each([...vectors("screw-6-18mil"), ...vectors("screw-8-18mil"), ...vectors("screw-10-18mil"), ...vectors("screw-12-18mil"), ...vectors("screw-8-27mil"), ...vectors("screw-12-27mil")])(
    "$id (SSMA, Product Technical Guide)",
    ({ inputs, expected }) => {
      const screw = { underHead: "steel", designThickness: inputs["t1=t2=tc"] as "0.0188 in", headDiameter: inputs["head dw"] as "0.272 in", ultimateStress: inputs.Fu as "33 ksi" } as const;
      const { nominal, safetyFactor } = pullOver({ ...screw, edition: before });
      expectPrinted(nominal.to("lbf").div(safetyFactor.to()), expected.pullOver);
    },
  );
});

describe("pullOver says and refuses", () => {
  it("warns of a head under 5/16 in, not of one at it", () => {
    const warns = (headDiameter: "0.3124 in" | "5/16 in"): boolean => pullOver.solve({ ...sheet, headDiameter, edition: before }).cautions.some((text) => text.includes("5/16 in"));
    expect(warns("0.3124 in")).toBe(true);
    expect(warns("5/16 in")).toBe(false);
  });

  it("refuses a board under the head with the reason", () => {
    const board = pullOver.try({ ...sheet, underHead: "board", edition: before });
    expect(board).toMatchObject({ ok: false, problems: [{ code: "refused", path: ["underHead"] }] });
    expect(board.ok ? "" : board.problems[0]?.message).toContain("is a test value");
  });

  it("refuses to pick an edition, and 'AISI S100-16 w/S3-22' without its coefficient", () => {
    expect(pullOver.try(sheet)).toMatchObject({ ok: false, problems: [{ code: "missing", path: ["edition"] }] });
    expect(pullOver.try({ ...sheet, edition: "AISI S100-16 w/S3-22" })).toMatchObject({ ok: false, problems: [{ code: "notAChoice", path: ["edition"] }] });
  });
});
