import { expect, it } from "vitest";
import { intervalMaturity } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector } from "../support/vectors.js";

it.each([vector("maturity-saul-m10-T20-h24"), vector("maturity-saul-m10-T-10-h24")])("Saul's R = t (T + 10): $id", ({ inputs, expected }) => {
  const { maturity } = intervalMaturity({ lasts: inputs.t as "24 h", temperature: inputs.T as "20 degC", datumTemperature: "-10 degC" });
  expectPrinted(maturity.to("degC h"), expected.R);
});

it("below the datum counts for nothing, and the step says so", () => {
  const { steps, answers } = intervalMaturity.solve({ lasts: "24 h", temperature: "-12 degC", datumTemperature: "-10 degC" });
  expect([answers.overDatum.toString(), answers.counted.toString(), answers.maturity.toString()]).toEqual(["-2 degC", "0 degC", "0 degC h"]);
  expect(steps.find(({ name }) => name === "counted")?.governedBy).toBe("nothing");
});

it("the trade's datum of 14 degF is Saul's -10 degC", () => {
  // 24 h at 68 degF over 14 degF: 54 x 24 = 1296 degF h, which is 720 degC h
  const { maturity } = intervalMaturity({ lasts: "24 h", temperature: "68 degF", datumTemperature: "14 degF" });
  expect([maturity.toString(), maturity.to("degC h").toString(), maturity.to("degC d").toString()]).toEqual(["1296 degF h", "720", "30"]);
});

it("refuses a datum that is none", () => {
  expect(faults(intervalMaturity.try({ lasts: "24 h", temperature: "20 degC", datumTemperature: "20 degC" }))).toEqual(["tooHigh datumTemperature"]);
  expect(faults(intervalMaturity.try({ lasts: "24 h", temperature: "20 degC", datumTemperature: "-20 degC" }))).toEqual(["tooLow datumTemperature"]);
});
