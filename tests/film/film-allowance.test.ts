import { describe, expect, it } from "vitest";
import { filmAllowance } from "../../src/film/film-allowance.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("filmAllowance", () => {
  it("75 % of 40 mil and 125 % of 60 mil (SSPC-PA 9 level 3, as quoted on study cards)", () => {
    const row = vector("pa9-level3");
    expectPrinted(filmAllowance({ specified: row.inputs.spec_min as "40 mil", share: "75 %" }).allowed.to("mil"), row.expected.spot_min);
    expectPrinted(filmAllowance({ specified: row.inputs.spec_max as "60 mil", share: "125 %" }).allowed.to("mil"), row.expected.spot_max);
  });

  it("refuses a share of nought, and 80 for 80 %", () => {
    expect(filmAllowance.try({ specified: "8 mil", share: 0 })).toMatchObject({ ok: false, problems: [{ code: "tooLow" }] });
    expect(filmAllowance.try({ specified: "8 mil", share: 80 })).toMatchObject({ ok: false, problems: [{ code: "tooHigh" }] });
  });
});
