import { describe, expect, it } from "vitest";
import { exposureB } from "../../src/fasteners/exposure-b.js";
import { exposureC } from "../../src/fasteners/exposure-c.js";
import { exposureD } from "../../src/fasteners/exposure-d.js";
import { vector } from "../support/vectors.js";

describe("exposureC", () => {
  it("at 5 m, as an open-source verification test has it", () => {
    const { inputs, expected } = vector("wind-xc-kz-5m");
    const { coefficient } = exposureC({ height: inputs.z as "5 m" });
    expect(Math.abs(coefficient.toNumber() / Number(expected.Kz) - 1)).toBeLessThanOrEqual(1e-4);
  });

  it("does not fall below 15 ft", () => {
    expect(exposureC({ height: "5 ft" }).coefficient.to().eq(exposureC({ height: "15 ft" }).coefficient.to())).toBe(true);
    expect(exposureC({ height: "15.1 ft" }).coefficient.to().gt(exposureC({ height: "15 ft" }).coefficient.to())).toBe(true);
  });

  it("lies between town and water at every height", () => {
    for (let feet = 1; feet <= 60; feet += 1) {
      const [b, c, d] = [exposureB, exposureC, exposureD].map((exposure) => exposure({ height: { value: feet, unit: "ft" } }).coefficient.toNumber());
      expect([b, c, d]).toEqual([b, c, d].sort((one, other) => (one ?? 0) - (other ?? 0)));
    }
  });

  it("refuses more than 60 ft", () => {
    expect(exposureC.try({ height: "18.3 m" })).toMatchObject({ ok: false, problems: [{ code: "tooHigh", path: ["height"] }] });
  });
});
