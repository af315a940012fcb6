// The joint that closes a run, with one joint fewer than units, as many, or one more.
import { describe, expect, it } from "vitest";
import { times } from "../../src/core/quantity-arithmetic.js";
import { quantity, type QuantityText } from "../../src/core/read-quantity.js";
import { jointBedToBed } from "../../src/layout/joint-bed-to-bed.js";
import { jointInOpening } from "../../src/layout/joint-in-opening.js";
import { jointUnitToUnit } from "../../src/layout/joint-unit-to-unit.js";
import { runOfUnits } from "../../src/layout/run-of-units.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

const length = (text: string | undefined) => quantity("length", text as QuantityText<"length">);

describe("jointBedToBed", () => {
  it("is 5/12 in, not 3/8 in, for modular brick that courses three in 8 in (Masonry Construction)", () => {
    const { inputs, expected } = vector("modular-brick-bed-joint");
    const { joint } = jointBedToBed({ run: length(inputs.height), unitsTotal: times(length(inputs.unit_height), Number(inputs.courses)), units: Number(inputs.courses) });
    const { value, unit } = joint.toJSON();
    expect(`${value} ${unit} (${joint.to("in").toFixed(4)})`).toBe(expected.bed_joint);
  });

  it("is 10.5 mm for DF and 12 mm for 2DF brick in 250 mm (DIN 4172, as quoted)", () => {
    // (250 - 4 x 52) / 4 = 10.5; (250 - 2 x 113) / 2 = 12.
    const joints = [vector("din-coursing-df"), vector("din-coursing-2df")].map(({ inputs, expected, note }) => {
      const { joint } = jointBedToBed({ run: length(expected.height), unitsTotal: times(length(inputs.unit_height), Number(inputs.courses)), units: Number(inputs.courses) });
      expect(note).toContain("10.5 / 12.33 / 12.0 mm");
      return joint.toString();
    });
    expect(joints).toEqual(["10.5 mm", "12 mm"]);
  });

  it("refuses units that are more than the run, and units of nothing", () => {
    expect(faults(jointBedToBed.try({ run: "8 in", unitsTotal: "8-1/16 in", units: 3 }))).toEqual(["tooLow joint"]);
    expect(faults(jointBedToBed.try({ run: "8 in", unitsTotal: "0 in", units: 0 }))).toEqual(["tooLow unitsTotal", "tooLow units"]);
    expect(jointBedToBed({ run: "8 in", unitsTotal: "8 in", units: 3 }).joint.toString()).toBe("0 in");
  });
});

describe("jointUnitToUnit and jointInOpening", () => {
  it("by hand: 100 in filled by 8 units of 12 in", () => {
    // 4 in over 7 joints, over 8, over 9.
    const filled = { run: "100 in", unitsTotal: "96 in", units: 8 } as const;
    expect([jointUnitToUnit(filled), jointBedToBed(filled), jointInOpening(filled)].map(({ joint }) => joint.toJSON().value)).toEqual(["4/7", "1/2", "4/9"]);
  });

  it("one unit alone has no joint to close", () => {
    expect(faults(jointUnitToUnit.try({ run: "8 in", unitsTotal: "7 in", units: 1 }))).toEqual(["tooLow units"]);
    expect(jointInOpening({ run: "8 in", unitsTotal: "7 in", units: 1 }).joint.toString()).toBe("0.5 in");
  });

  it("refuses units that are more than the run, whatever the ends", () => {
    const more = { run: "8 in", unitsTotal: "8-1/16 in", units: 3 } as const;
    expect([jointUnitToUnit, jointInOpening].map((joint) => faults(joint.try(more)))).toEqual([["tooLow joint"], ["tooLow joint"]]);
  });

  it("undoes the run of units, exactly", () => {
    for (const units of [2, 3, 7, 41, 100]) {
      for (const joint of ["0 in", "3/8 in", "5/12 in", "10 mm"] as const) {
        const unitsTotal = times(length("2-1/4 in"), units);
        const { unitToUnit, bedToBed, inOpening } = runOfUnits({ unitsTotal, units, joint });
        const back = [jointUnitToUnit({ run: unitToUnit, unitsTotal, units }), jointBedToBed({ run: bedToBed, unitsTotal, units }), jointInOpening({ run: inOpening, unitsTotal, units })];
        for (const one of back) expect(one.joint.to("mm").toString()).toBe(length(joint).to("mm").toString());
      }
    }
  });
});
