import psychrolib from "psychrolib";
import { describe, expect, it } from "vitest";
import { dewPoint, frostPoint } from "../../src/weather/index.js";
import { faults } from "../support/faults.js";
import { printed, vector, vectors } from "../support/vectors.js";
import { overWater } from "./over-water.js";

const number = (text: string | undefined): number => Number(printed(text ?? "")?.number);
psychrolib.SetUnitSystem(psychrolib.SI);

describe("dew point over water", () => {
  const aboveFreezing = [...vectors("dp-c-"), ...vectors("dp-f-")].filter(({ expected }) => number(expected.dew_point) > (expected.dew_point?.endsWith("degF") === true ? 32 : 0));

  it.each(aboveFreezing)("is within 0.05 degC (0.1 degF) of PsychroLib 1.1.1: $id", ({ inputs, expected }) => {
    const found = dewPoint({ airTemperature: inputs.air as "5 degC", humidity: inputs.rh as "85 %" }).dewPoint;
    const fahrenheit = expected.dew_point?.endsWith("degF") === true;
    const off = found.toNumber(fahrenheit ? "degF" : "degC") - number(expected.dew_point);
    expect(Math.abs(off)).toBeLessThan(fahrenheit ? 0.1 : 0.05);
  });

  it("is within 0.05 degC of PsychroLib over the whole range above freezing", () => {
    let [worst, count] = [0, 0];
    for (let celsius = 0; celsius <= 50; celsius += 2) {
      for (let percent = 5; percent <= 100; percent += 5) {
        const theirs = psychrolib.GetTDewPointFromRelHum(celsius, percent / 100);
        if (theirs <= 0.01) continue;
        const ours = dewPoint({ airTemperature: `${celsius} degC`, humidity: `${percent} %` }).dewPoint.toNumber("degC");
        [worst, count] = [Math.max(worst, Math.abs(ours - theirs)), count + 1];
      }
    }
    expect(count).toBeGreaterThan(300);
    expect(worst).toBeLessThan(0.05);
  });

  it.each(vectors("dp-lawrence-"))("is about a degree (1.1) from Lawrence's rule of thumb: $id", ({ inputs, expected }) => {
    const found = dewPoint({ airTemperature: inputs.air as "20 degC", humidity: inputs.rh as "80 %" }).dewPoint.toNumber("degC");
    expect(Math.abs(found - number(expected.dew_point))).toBeLessThan(1.1);
  });

  it("of full air is the temperature itself", () => {
    for (const airTemperature of ["-4 degF", "32 degF", "70 degF", "140 degF"] as const) {
      const { dewPoint: found } = dewPoint({ airTemperature, humidity: "100 %" });
      expect(found.to("degF").toFixed(20)).toBe(`${airTemperature.replace(" degF", "")}.${"0".repeat(20)}`);
    }
  });

  it("rises with the air and with its humidity", () => {
    const at = (air: number, percent: number): number => dewPoint({ airTemperature: `${air} degF`, humidity: `${percent} %` }).dewPoint.toNumber("degF");
    for (let percent = 10; percent < 100; percent += 10) expect(at(70, percent)).toBeLessThan(at(70, percent + 10));
    for (let air = 20; air < 120; air += 10) expect(at(air, 50)).toBeLessThan(at(air + 10, 50));
  });

  it("refuses a humidity of nought or above 100 %, and air outside the range of its constants", () => {
    expect(faults(dewPoint.try({ airTemperature: "70 degF", humidity: "0 %" }))).toEqual(["tooLow humidity"]);
    expect(faults(dewPoint.try({ airTemperature: "70 degF", humidity: "100.1 %" }))).toEqual(["tooHigh humidity"]);
    expect(faults(dewPoint.try({ airTemperature: "70 degF", humidity: 65 }))).toEqual(["tooHigh humidity"]);
    expect(faults(dewPoint.try({ airTemperature: "141 degF", humidity: "50 %" }))).toEqual(["tooHigh airTemperature"]);
    expect(faults(dewPoint.try({ airTemperature: "-4.1 degF", humidity: "50 %" }))).toEqual(["tooLow airTemperature"]);
  });
});

describe("frost point", () => {
  it.each([vector("dp-c-10-40"), vector("dp-c-0-80"), vector("dp-c-m5-80")])("is within 0.05 degC of PsychroLib, which tells it below freezing: $id", (row) => {
    const { inputs, expected } = row;
    const dew = dewPoint({ airTemperature: inputs.air as "10 degC", humidity: overWater(row) as "40 %" }).dewPoint;
    const frost = frostPoint({ dewPoint: dew }).frostPoint.toNumber("degC");
    expect(Math.abs(frost - number(expected.dew_point))).toBeLessThan(0.05);
    // Over water it is lower than over ice: by 0.3 to 0.6 degC around -3 degC, and more the colder it is.
    expect(frost - dew.toNumber("degC")).toBeGreaterThan(0.25);
    expect(frost - dew.toNumber("degC")).toBeLessThan(1);
  });

  it("over the range where air above freezing has its dew point below it", () => {
    let [worst, count] = [0, 0];
    for (let celsius = 1; celsius <= 15; celsius += 1) {
      for (let percent = 10; percent <= 95; percent += 5) {
        const theirs = psychrolib.GetTDewPointFromRelHum(celsius, percent / 100);
        if (theirs > -0.01) continue;
        const dew = dewPoint({ airTemperature: `${celsius} degC`, humidity: `${percent} %` }).dewPoint;
        const ours = frostPoint({ dewPoint: dew }).frostPoint.toNumber("degC");
        [worst, count] = [Math.max(worst, Math.abs(ours - theirs)), count + 1];
      }
    }
    expect(count).toBeGreaterThan(100);
    expect(worst).toBeLessThan(0.05);
  });

  it("is the dew point at freezing, and there is none above", () => {
    expect(frostPoint({ dewPoint: "0 degC" }).frostPoint.to("degC").toString()).toBe("0");
    expect(faults(frostPoint.try({ dewPoint: "0.1 degC" }))).toEqual(["tooHigh dewPoint"]);
  });
});
