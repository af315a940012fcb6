import { describe, expect, it } from "vitest";
import { screwDiameter } from "../../src/fasteners/screw-diameter.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("screwDiameter", () => {
  const { expected } = vector("screw-number-diameters");

  it.each(["#6", "#7", "#8", "#10", "#12"] as const)("%s as the AISI table prints it, and 0.060 in + 0.013 in a number", (size) => {
    const diameter = screwDiameter({ size }).diameter.to("in");
    expectPrinted(diameter, expected[size]);
    expect(diameter.times(1000).toNumber()).toBe(60 + 13 * Number(size.slice(1)));
  });

  it("1/4 in", () => {
    expectPrinted(screwDiameter({ size: "1/4 in" }).diameter.to("in"), expected["1/4"]);
  });

  it("refuses a size that is not on file", () => {
    expect(screwDiameter.try({ size: "#14" })).toMatchObject({ ok: false, problems: [{ code: "notAChoice", path: ["size"] }] });
  });
});
