import { describe, expect, it } from "vitest";
import { evaporation, evaporationMenzel, evaporationUnoSi, evaporationUnoUs } from "../../src/weather/index.js";
import { faults } from "../support/faults.js";
import { expectPrinted, printed, type Vector, vector, vectors } from "../support/vectors.js";

const weatherOf = ({ inputs }: Vector): { mortarTemperature: "70 degF"; airTemperature: "70 degF"; humidity: "50 %"; wind: "10 mph" } =>
  ({ mortarTemperature: inputs.concrete, airTemperature: inputs.air, humidity: inputs.rh, wind: inputs.wind }) as ReturnType<typeof weatherOf>;
const number = (text: string | undefined): number => Number(printed(text ?? "")?.number);

describe("the forms", () => {
  it.each(vectors("evap-menzel-"))("Menzel, to 0.5 % for the saturation pressure: $id", (row) => {
    const { parts, answers } = evaporation.solve({ ...weatherOf(row), form: "Menzel" });
    const rate = (parts.at(-1)?.answers as ReturnType<typeof evaporationMenzel>).rate;
    expect(Math.abs(rate.toNumber("lb/ft2/h") / number(row.expected.rate) - 1)).toBeLessThan(0.005);
    expect(Math.abs(rate.toNumber("kg/m2/h") / number(row.expected.rate_si) - 1)).toBeLessThan(0.005);
    expect(answers.rate.to("lb/ft2/h").toString()).toBe(String(Number(rate.toNumber("lb/ft2/h").toPrecision(2))));
  });

  it.each(vectors("evap-uno-si-"))("Uno, metric: $id", (row) => {
    const { mortarTemperature, airTemperature, humidity, wind } = weatherOf(row) as unknown as Parameters<typeof evaporationUnoSi>[0];
    expectPrinted(evaporationUnoSi({ mortarTemperature, airTemperature, humidity, wind }).rate.to("kg/m2/h"), row.expected.rate);
  });

  it.each(vectors("evap-uno-us-"))("Uno, United States: $id", (row) => {
    expectPrinted(evaporationUnoUs(weatherOf(row)).rate.to("lb/ft2/h"), row.expected.rate);
  });

  it("Uno's two forms differ by about 4 % at one point, since both are rounded", () => {
    const weather = weatherOf(vector("evap-uno-us-70-70-70-10"));
    const [us, si] = [evaporationUnoUs(weather).rate.toNumber("kg/m2/h"), evaporationUnoSi(weather).rate.toNumber("kg/m2/h")];
    expect(Math.abs(us / si - 1)).toBeGreaterThan(0.03);
    expect(Math.abs(us / si - 1)).toBeLessThan(0.05);
  });

  it("Menzel by hand: 0.44 x (0.6 - 0.5 x 0.5) x (0.253 + 0.96)", () => {
    // 0.44 x 0.35 x 1.213 = 0.186802
    expect(evaporationMenzel({ mortarSaturation: "0.6 psi", airSaturation: "0.5 psi", humidity: "50 %", wind: "10 mph" }).rate.toString()).toBe("0.186802 lb/ft2/h");
  });
});

describe("evaporation", () => {
  const weather = { mortarTemperature: "87 degF", airTemperature: "80 degF", humidity: "50 %", wind: "12 mph" } as const;

  it("is told to two figures, against the limit of its own units", () => {
    const { expected } = vector("evap-thr-02");
    const [us, si] = [evaporation({ ...weather, form: "Uno US" }), evaporation({ ...weather, form: "Uno SI" })];
    expect([us.rate.toString(), us.limit.toString(), us.aboveLimit]).toEqual(["0.24 lb/ft2/h", expected.threshold, true]);
    expect([si.limit.toString(), si.rate.unit]).toEqual([expected.threshold_si, "kg/m2/h"]);
  });

  it("the limit is judged on the unrounded figure", () => {
    // by Uno US at 0.1996 and 0.2005 lb/ft2/h, both of which round to 0.20
    const rates = [72, 73, 74, 75, 76, 77, 78, 79, 80, 81, 82, 83, 84].map((degrees) => {
      const { parts, answers } = evaporation.solve({ mortarTemperature: `${degrees} degF`, airTemperature: "60 degF", humidity: "50 %", wind: "12 mph", form: "Uno US" });
      return [(parts[0]?.answers as ReturnType<typeof evaporationUnoUs>).rate.toNumber("lb/ft2/h") > 0.2, answers.aboveLimit];
    });
    expect(rates.every(([above, told]) => above === told)).toBe(true);
    expect(new Set(rates.map(([above]) => above)).size).toBe(2);
  });

  it("at the limit is not above it", () => {
    // Uno: 100 ^ 2.5 = 100,000; dry air, (100,000 - 0) x (1 + 0.4 x 2.5) / 1,000,000 = 0.2 lb/ft2/h.
    const dry = { mortarTemperature: "100 degF", airTemperature: "100 degF", humidity: "0 %", form: "Uno US" } as const;
    const [at, over] = ["2.5 mph", "2.51 mph"].map((wind) => evaporation({ ...dry, wind: wind as "1 mph" }));
    expect([at?.rate.toString(), at?.aboveLimit, over?.aboveLimit]).toEqual(["0.2 lb/ft2/h", false, true]);
  });

  it.each(vectors("evap-uno-si-"))("is worked by the form that is asked for: $id", (row) => {
    const exact = evaporationUnoSi(weatherOf(row)).rate.to("kg/m2/h");
    expect(evaporation({ ...weatherOf(row), form: "Uno SI" }).rate.toString()).toBe(`${exact.toSignificantDigits(2).toString()} kg/m2/h`);
  });

  it("of air and mortar alike in steam is nought, and called evaporation", () => {
    const still = { mortarTemperature: "70 degF", airTemperature: "70 degF", humidity: "100 %", wind: "0 mph" } as const;
    for (const form of ["Menzel", "Uno US"] as const) expect(evaporation({ ...still, form })).toMatchObject({ is: "evaporation", aboveLimit: false });
    expect(evaporation({ ...weather, form: "Menzel" }).is).toBe("evaporation");
  });

  it("below nought is condensation, and says so", () => {
    const damp = evaporation({ mortarTemperature: "50 degF", airTemperature: "80 degF", humidity: "95 %", wind: "5 mph", form: "Menzel" });
    expect([damp.is, damp.rate.toNumber() < 0, damp.aboveLimit]).toEqual(["condensation", true, false]);
  });

  it("warns that it is off by 40 % and made for slabs", () => {
    expect(vector("evap-uncertainty").expected.uncertainty).toContain("40 %");
    const { cautions } = evaporation.solve({ ...weather, form: "Menzel" });
    expect(cautions.some((text) => text.includes("40 %") && text.includes("level concrete"))).toBe(true);
  });

  it("more wind, drier air and warmer mortar never dry less", () => {
    const rate = (change: object): number => evaporationUnoUs({ ...weather, ...change }).rate.toNumber();
    expect(rate({ wind: "20 mph" })).toBeGreaterThan(rate({}));
    expect(rate({ humidity: "20 %" })).toBeGreaterThan(rate({}));
    expect(rate({ mortarTemperature: "95 degF" })).toBeGreaterThan(rate({}));
  });

  it("refuses what is outside its range, and asks for its form", () => {
    expect(faults(evaporation.try({ ...weather, humidity: "101 %", form: "Menzel" }))).toEqual(["tooHigh humidity"]);
    expect(faults(evaporation.try({ ...weather, wind: "-1 mph", form: "Menzel" }))).toEqual(["tooLow wind"]);
    expect(faults(evaporation.try({ ...weather, airTemperature: "31 degF", form: "Menzel" }))).toEqual(["tooLow airTemperature"]);
    expect(faults(evaporation.try(weather))).toEqual(["missing form"]);
  });
});
