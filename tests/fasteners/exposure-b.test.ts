import { describe, expect, it } from "vitest";
import { exposureB } from "../../src/fasteners/exposure-b.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("exposureB", () => {
  const { inputs, expected } = vector("asce7-kz-B");
  const heights = (inputs.z ?? "").replace(" ft", "").split(",");
  const printed = (expected.Kz ?? "").split(", ");
  const at = (height: string) => exposureB({ height: { value: height, unit: "ft" } }).coefficient.to();

  it("ASCE 7-98 to 7-16, Table 26.10-1, from 30 ft up", () => {
    const high = heights.flatMap((height, index) => (Number(height) >= 30 ? [[height, printed[index]] as const] : []));
    expect(high.map(([height]) => height)).toEqual(["30", "40", "50", "60"]);
    for (const [height, figure] of high) expectPrinted(at(height), figure);
  });

  it("below 30 ft cladding keeps the figure of 30 ft, where the table falls on", () => {
    const low = heights.filter((height) => Number(height) < 30);
    expect(low).toEqual(["15", "20", "25"]);
    for (const height of low) expectPrinted(at(height), printed[heights.indexOf("30")]);
    expect(exposureB.solve({ height: "29.9 ft" }).steps[0]?.governedBy).toBe("leastHeight");
  });

  it("refuses more than 60 ft, and no height", () => {
    expect(exposureB.try({ height: "60.01 ft" })).toMatchObject({ ok: false, problems: [{ code: "tooHigh", path: ["height"] }] });
    expect(exposureB.try({ height: "0 ft" })).toMatchObject({ ok: false, problems: [{ code: "tooLow", path: ["height"] }] });
    expect(exposureB.try({ height: "60 ft" }).ok).toBe(true);
  });
});
