// Heights of courses and lengths of runs, as the trade's tables print them.
import { describe, expect, it } from "vitest";
import { quantity, type QuantityText } from "../../src/core/read-quantity.js";
import { subtract, times } from "../../src/core/quantity-arithmetic.js";
import { runOfUnits } from "../../src/layout/run-of-units.js";
import { rodMark } from "../../src/layout/story-rod.js";
import { faults } from "../support/faults.js";
import { vector, vectors } from "../support/vectors.js";

const length = (text: string | undefined) => quantity("length", text as QuantityText<"length">);

/** `22'-2 11/16"` as the rod reads it. */
const asRead = (text: string | undefined): string => {
  const [, feet = "", inches = "", fraction] = /^(\d+)'-(\d+)(?: (\d+\/\d+))?"$/.exec(text ?? "") ?? [];
  return `${feet === "0" ? "" : `${feet} ft `}${inches}${fraction === undefined ? "" : `-${fraction}`} in`;
};

describe("runOfUnits", () => {
  // A course of the table is a unit and a joint; 2.6667 in stands for three courses in 8 in, 3.2000 in for five in 16 in.
  const exact: Readonly<Record<string, string>> = { "2.6667 in": "8/3 in", "3.2000 in": "16/5 in", "4.0000 in": "4 in", "2.0000 in": "2 in" };

  it.each(vectors("bia-coursing-"))("reads what the coursing table prints: $id (Technical Notes 10B, Table 3)", ({ inputs, expected }) => {
    const courses = Number(inputs.courses);
    const course = length(exact[inputs.module ?? ""]);
    expect(course.to("in").toFixed(4)).toBe(inputs.module?.replace(" in", ""));
    // The table does not say what of a course is joint; the accumulated height does not depend on it.
    for (const joint of ["0 in", "3/8 in", "1/2 in"] as const) {
      const unitsTotal = subtract(times(course, courses), times(length(joint), courses));
      expect(rodMark(runOfUnits({ unitsTotal, units: courses, joint }).bedToBed, "1/16 in").reads).toBe(asRead(expected.height));
    }
  });

  it("reads the modular courses of Technical Notes 10B of 1971: three in 16 in, five in 16 in", () => {
    for (const { inputs, expected } of [vector("scpi-double-brick-coursing"), vector("scpi-engineer-brick-coursing")]) {
      const courses = Number(inputs.courses);
      // The nominal height has its joint in it.
      const run = runOfUnits({ unitsTotal: times(length(inputs.nominal_height), courses), units: courses, joint: "0 in" });
      expect(`${run.bedToBed.to("in").toString()} in`).toBe(expected.height);
    }
  });

  it("reads the gauge of the UK resource sheet: four courses of 65 mm with joints of 10 mm in 300 mm", () => {
    const { inputs, expected } = vector("uk-gauge-4-courses-300");
    const run = runOfUnits({ unitsTotal: times(length(inputs.unit_height), Number(inputs.courses)), units: Number(inputs.courses), joint: length(inputs.joint) });
    expect(run.bedToBed.toString()).toBe(expected.height);
  });

  it("gives a pier, a run with one return and an opening their lengths (US Navy, NAVEDTRA 14045)", () => {
    const { inputs, expected } = vector("wall-length-n-units");
    const run = runOfUnits({ unitsTotal: times(length(inputs.unit_length), Number(inputs.n)), units: Number(inputs.n), joint: length(inputs.joint) });
    expect([run.unitToUnit, run.bedToBed, run.inOpening].map(String)).toEqual([expected.pier, expected.one_return, expected.opening]);
  });

  it("makes a wall of whole block a joint shorter than its nominal length (US Navy, NAVEDTRA 14045)", () => {
    const { inputs, expected } = vector("navy-actual-wall-length");
    expect(expected.actual_length).toBe("nominal - 3/8 in");
    for (const units of [1, 2, 7, 30]) {
      const run = runOfUnits({ unitsTotal: times(length("15-5/8 in"), units), units, joint: length(inputs.joint) });
      expect(run.unitToUnit.to("in").toString()).toBe(String(units * 16 - 0.375));
    }
  });

  it("is a joint apart from one to the next, and refuses less than a unit", () => {
    const run = runOfUnits({ unitsTotal: "7-5/8 in", units: 1, joint: "3/8 in" });
    expect([run.unitToUnit, run.bedToBed, run.inOpening].map(String)).toEqual(["7.625 in", "8 in", "8.375 in"]);
    expect(faults(runOfUnits.try({ unitsTotal: "0 in", units: 0, joint: "-1 in" }))).toEqual(["tooLow unitsTotal", "tooLow units", "tooLow joint"]);
  });
});
