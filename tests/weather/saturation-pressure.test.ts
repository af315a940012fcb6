import { describe, expect, it } from "vitest";
import { quantity } from "../../src/core/index.js";
import { saturationPressure } from "../../src/weather/index.js";
import { faults } from "../support/faults.js";
import { expectPrinted, printed, vector, vectors } from "../support/vectors.js";

const at = (text: string | undefined): ReturnType<typeof saturationPressure>["saturation"] => saturationPressure({ temperature: text as "20 degC" }).saturation;

describe("saturation pressure", () => {
  it("FAO Paper 56, Example 3", () => {
    const { inputs, expected } = vector("es-fao56-24p5");
    expectPrinted(at(inputs.air).to("kPa"), expected.es);
  });

  it.each([vector("es-ashrae-25c"), vector("es-ashrae-50c")])("is within 0.15 % of ASHRAE's own formula, which is another: $id", ({ inputs, expected }) => {
    const theirs = Number(printed(expected.es ?? "")?.number);
    expect(Math.abs(at(inputs.air).toNumber("Pa") / theirs - 1)).toBeLessThan(0.0015);
  });

  it.each(vectors("dp-c-").filter(({ inputs }) => !inputs.air?.startsWith("-")))("is within 0.12 % of PsychroLib: $id", ({ inputs, expected }) => {
    const theirs = Number(printed(expected.sat_vapour_pressure ?? "")?.number);
    expect(Math.abs(at(inputs.air).toNumber("Pa") / theirs - 1)).toBeLessThan(0.0012);
  });

  it.each([vector("es-nws-76f"), vector("es-nws-77f"), vector("es-nws-78f"), vector("es-nws-79f"), vector("es-nws-80f"), vector("es-nws-104f"), vector("es-nws-106f"), vector("es-nws-110f")])(
    "an old weather-service table is about 1 % lower: $id",
    ({ inputs, expected }) => {
      const theirs = quantity("pressure", expected.es as "0.9 inHg").toNumber("Pa");
      const off = theirs / at(inputs.air).toNumber("Pa") - 1;
      expect(off).toBeLessThan(-0.007);
      expect(off).toBeGreaterThan(-0.012);
    },
  );

  it("is told over water alone, from freezing to 140 degF", () => {
    expect(faults(saturationPressure.try({ temperature: "31.9 degF" }))).toEqual(["tooLow temperature"]);
    expect(faults(saturationPressure.try({ temperature: "100 degC" }))).toEqual(["tooHigh temperature"]);
  });
});
