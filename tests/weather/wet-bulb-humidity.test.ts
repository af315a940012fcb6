import psychrolib from "psychrolib";
import { describe, expect, it } from "vitest";
import { standardPressure, vapourByWetBulb, wetBulbHumidity } from "../../src/weather/index.js";
import { faults } from "../support/faults.js";
import { printed, type Vector, vector, vectors } from "../support/vectors.js";

const sea = "29.92 inHg";
const number = (text: string | undefined): number => Number(printed(text ?? "")?.number);
const read = ({ inputs }: Vector, barometer = sea): ReturnType<typeof wetBulbHumidity> => wetBulbHumidity({ dryBulb: inputs.dry as "60 degF", wetBulb: inputs.wet as "55 degF", barometer: barometer as "29.92 inHg" });
psychrolib.SetUnitSystem(psychrolib.SI);

describe("humidity from a psychrometer", () => {
  it.each(vectors("wb-ward-"))("dew points of Ward's table of 1899, to a degree: $id", (row) => {
    expect(Math.abs(read(row).dewPoint.toNumber("degF") - number(row.expected.dew_point))).toBeLessThan(1);
  });

  it("the Army's 71 %", () => {
    const row = vector("wb-army-68-62");
    expect(Math.abs(read(row).humidity.toNumber("%") - number(row.expected.rh))).toBeLessThan(1);
  });

  it("at 750 ft: a nomogram of the geophysicists", () => {
    const row = vector("wb-seg-95-80");
    const { barometer } = standardPressure({ altitude: row.inputs.elevation as "750 ft" });
    const found = wetBulbHumidity({ dryBulb: row.inputs.dry as "95 degF", wetBulb: row.inputs.wet as "80 degF", barometer });
    expect(Math.abs(found.dewPoint.toNumber("degF") - number(row.expected.dew_point))).toBeLessThan(0.6);
    expect(Math.abs(found.humidity.toNumber("%") - number(row.expected.rh))).toBeLessThan(0.5);
    expect(Math.abs(found.vapourPressure.toNumber("inHg") - number(row.expected.vapour_pressure))).toBeLessThan(0.01);
  });

  it("ASHRAE's Example 1, read from a chart: 14 % and 7 degC, and a warning of dry air", () => {
    const row = vector("ashrae-ex1");
    const { answers, cautions } = wetBulbHumidity.solve({ dryBulb: row.inputs.dry as "40 degC", wetBulb: row.inputs.wet as "20 degC", barometer: "101.325 kPa" });
    expect(Math.abs(answers.humidity.toNumber("%") - number(row.expected.rh))).toBeLessThan(1);
    expect(Math.abs(answers.dewPoint.toNumber("degC") - number(row.expected.dew_point))).toBeLessThan(0.5);
    expect(cautions.some((text) => text.startsWith("In air so dry"))).toBe(true);
  });

  it("where it is very dry the sources are degrees apart, and we warn", () => {
    const { inputs, expected } = vector("wb-nws-23in-80-33p0");
    // 80 degF less a depression of 33 degF
    const { answers, cautions } = wetBulbHumidity.solve({ dryBulb: inputs.air as "80 degF", wetBulb: "47 degF", barometer: inputs.pressure as "23.00 inHg" });
    expect(Math.abs(answers.dewPoint.toNumber("degF") - number(expected.dew_point?.replace("+", "")))).toBeLessThan(12);
    expect(cautions.some((text) => text.startsWith("In air so dry"))).toBe(true);
  });

  it("is within 1.5 points of humidity of PsychroLib, whose equation is another, where the air is not very dry", () => {
    let worst = 0;
    for (let dry = 5; dry <= 45; dry += 5) {
      for (let wet = Math.max(1, dry - 12); wet <= dry; wet += 1) {
        const theirs = psychrolib.GetRelHumFromTWetBulb(dry, wet, 101_325) * 100;
        if (theirs < 15) continue;
        worst = Math.max(worst, Math.abs(wetBulbHumidity({ dryBulb: `${dry} degC`, wetBulb: `${wet} degC`, barometer: "101.325 kPa" }).humidity.toNumber("%") - theirs));
      }
    }
    expect(worst).toBeLessThan(1.5);
  });

  it("of a bulb that is not drier is full", () => {
    expect(wetBulbHumidity({ dryBulb: "60 degF", wetBulb: "60 degF", barometer: sea }).humidity.to("%").toFixed(9)).toBe("100.000000000");
  });

  it("warns of air drier than 15 %, and of no other", () => {
    const warned = (wetBulb: "20 degC"): readonly [boolean, boolean] => {
      const { answers, cautions } = wetBulbHumidity.solve({ dryBulb: "40 degC", wetBulb, barometer: "101.325 kPa" });
      return [answers.humidity.toNumber("%") < 15, cautions.some((text) => text.startsWith("In air so dry"))];
    };
    const told = ["20 degC", "20.2 degC", "20.4 degC", "20.6 degC", "20.8 degC", "21 degC"].map((wetBulb) => warned(wetBulb as "20 degC"));
    expect(told.filter(([dry, is]) => dry !== is)).toEqual([]);
    expect(new Set(told.map(([dry]) => dry)).size).toBe(2);
  });

  it("by hand, with round pressures: the coefficient at a wet bulb of 20 degC, and its edges", () => {
    // 0.00066 x (1 + 0.00115 x 20) = 0.00067518; 10 degrees under the dry bulb at 100 kPa take 0.67518 kPa off.
    const air = { dryBulb: "30 degC", wetBulb: "20 degC", barometer: "100 kPa" } as const;
    const found = vapourByWetBulb({ ...air, drySaturation: "4 kPa", wetSaturation: "2.67518 kPa" });
    expect([found.coefficient.toString(), found.vapourPressure.to("kPa").toString(), found.humidity.toString()]).toEqual(["0.00067518", "2", "50 %"]);
    expect(vapourByWetBulb({ ...air, drySaturation: "2 kPa", wetSaturation: "2.67518 kPa" }).humidity.toString()).toBe("100 %");
    expect(faults(vapourByWetBulb.try({ ...air, drySaturation: "1.99 kPa", wetSaturation: "2.67518 kPa" }))).toEqual(["tooHigh humidity"]);
    expect(faults(vapourByWetBulb.try({ ...air, drySaturation: "4 kPa", wetSaturation: "0.67518 kPa" }))).toEqual(["tooLow vapourPressure"]);
  });

  it("refuses a wet bulb above the dry one, one under ice, and one so low that there is no vapour left", () => {
    expect(faults(wetBulbHumidity.try({ dryBulb: "60 degF", wetBulb: "61 degF", barometer: sea }))).toEqual(["tooLow depression"]);
    expect(faults(wetBulbHumidity.try({ dryBulb: "35 degF", wetBulb: "31 degF", barometer: sea }))).toEqual(["tooLow wetBulb"]);
    expect(faults(wetBulbHumidity.try({ dryBulb: "100 degF", wetBulb: "40 degF", barometer: sea }))).toEqual(["tooLow vapourPressure"]);
  });
});
