import { describe, expect, it } from "vitest";
import { exposureD } from "../../src/fasteners/exposure-d.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("exposureD", () => {
  const { inputs, expected } = vector("asce7-kz-D");
  const heights = (inputs.z ?? "").replace(" ft", "").split(",");
  const printed = (expected.Kz ?? "").split(", ");

  it("ASCE 7-98 to 7-16, Table 26.10-1, but for 25 ft", () => {
    expect(heights).toEqual(["15", "20", "25", "30", "40", "50", "60"]);
    for (const [index, height] of heights.entries()) if (height !== "25") expectPrinted(exposureD({ height: { value: height, unit: "ft" } }).coefficient.to(), printed[index]);
  });

  // 2.01 * (25/700)^(2/11.5) = 1.12594: the table's 1.12 is not its rounding. The formula is kept.
  it("at 25 ft the table prints 1.12, and the formula gives 1.126", () => {
    expect(printed[heights.indexOf("25")]).toBe("1.12");
    expect(exposureD({ height: "25 ft" }).coefficient.toNumber()).toBeCloseTo(2.01 * (25 / 700) ** (2 / 11.5), 12);
    expect(exposureD({ height: "25 ft" }).coefficient.to().toFixed(3)).toBe("1.126");
  });

  it("does not fall below 15 ft", () => {
    expect(exposureD({ height: "1 ft" }).coefficient.to().eq(exposureD({ height: "15 ft" }).coefficient.to())).toBe(true);
  });

  it("refuses more than 60 ft", () => {
    expect(exposureD.try({ height: "61 ft" })).toMatchObject({ ok: false, problems: [{ code: "tooHigh", path: ["height"] }] });
  });
});
