import { describe, expect, it } from "vitest";
import { surfaceMargin, surfaceOverDewPoint } from "../../src/weather/index.js";
import { faults } from "../support/faults.js";
import { printed, vector, vectors } from "../support/vectors.js";
import { overWater } from "./over-water.js";

const number = (text: string | undefined): number => Number(printed(text ?? "")?.number);

describe("surfaceMargin", () => {
  it.each(vectors("dp-f-"))("the least surface 5 degF over the dew point: $id", ({ inputs, expected }) => {
    const least = number(expected.min_surface_5F);
    const decision = (surface: number): string => surfaceMargin({ surfaceTemperature: `${surface} degF`, airTemperature: inputs.air as "70 degF", humidity: inputs.rh as "50 %", rule: "5 degF" }).decision;
    expect([decision(least - 0.1), decision(least + 0.1)]).toEqual(["wait", "go"]);
  });

  it.each(vectors("dp-c-"))("the least surface 3 degC over the dew or frost point: $id", (row) => {
    const { inputs, expected } = row;
    const least = number(expected.min_surface_3C);
    const decision = (surface: number): string => surfaceMargin({ surfaceTemperature: `${surface.toFixed(3)} degC` as "5 degC", airTemperature: inputs.air as "20 degC", humidity: overWater(row) as "50 %", rule: "3 degC" }).decision;
    expect([decision(least - 0.05), decision(least + 0.05)]).toEqual(["wait", "go"]);
  });

  it("5 degF is not 3 degC: a surface 5.2 degF over passes one and not the other", () => {
    // the dew point at 70 degF and 65 % is 57.7 degF
    const at = { surfaceTemperature: "62.9 degF", airTemperature: "70 degF", humidity: "65 %" } as const;
    const us = surfaceMargin({ ...at, rule: "5 degF" });
    expect(us.over.to("degF").toFixed(1)).toBe("5.2");
    expect([us.decision, surfaceMargin({ ...at, rule: "3 degC" }).decision]).toEqual(["go", "wait"]);
  });

  it("below freezing the frost point holds, and is told", () => {
    const cold = surfaceMargin({ surfaceTemperature: "36 degF", airTemperature: "36 degF", humidity: "60 %", rule: "5 degF" });
    expect(cold.frostPoint?.toNumber("degF")).toBeGreaterThan(cold.dewPoint.toNumber("degF"));
    expect(cold.over.toNumber("degF")).toBeCloseTo(36 - (cold.frostPoint?.toNumber("degF") ?? 0), 9);
    expect(surfaceMargin({ surfaceTemperature: "60 degF", airTemperature: "70 degF", humidity: "50 %", rule: "5 degF" })).not.toHaveProperty("frostPoint");
  });

  it("goes where the margin is just met: in full air the dew point is that of the air", () => {
    const full = { airTemperature: "60 degF", humidity: "100 %", rule: "5 degF" } as const;
    const decision = (surfaceTemperature: "65 degF"): string => surfaceMargin({ ...full, surfaceTemperature }).decision;
    expect(surfaceMargin({ ...full, surfaceTemperature: "65 degF" }).marginLeft.to("degF").toFixed(12)).toMatch(/^-?0\.0{12}$/);
    expect([decision("65 degF"), decision("64.999999 degF" as "65 degF")]).toEqual(["go", "wait"]);
  });

  it("has a frost point as soon as the dew point is under 32 degF, and none at it", () => {
    const at = (airTemperature: "32 degF"): ReturnType<typeof surfaceMargin> => surfaceMargin({ surfaceTemperature: "60 degF", airTemperature, humidity: "100 %", rule: "5 degF" });
    expect(at("32 degF")).not.toHaveProperty("frostPoint");
    expect(at("31 degF" as "32 degF")).toHaveProperty("frostPoint");
  });

  it("tells what a published rule for paint asks besides, as printed", () => {
    const { cautions, bases } = surfaceMargin.solve({ surfaceTemperature: "60 degF", airTemperature: "70 degF", humidity: "50 %", rule: "5 degF" });
    const { expected: window } = vector("hdbk1110-temp");
    const { expected: readings } = vector("hdbk1110-readings");
    const all = cautions.join(" ");
    expect([window["ambient and surface"], window["not if falling below before dry"], readings.every?.replace("about ", "")].map((text) => all.includes(text ?? "-"))).toEqual([true, true, true]);
    expect(bases.some((basis) => basis.kind === "published" && basis.says === "surface at least 5 degF over the dew point, and rising")).toBe(true);
    expect(readings.margin).toBe("5 degF above dew point and rising");
  });

  it("asks for its rule", () => {
    expect(faults(surfaceMargin.try({ surfaceTemperature: "60 degF", airTemperature: "70 degF", humidity: "50 %" }))).toEqual(["missing rule"]);
    expect(faults(surfaceMargin.try({ surfaceTemperature: "60 degF", airTemperature: "70 degF", humidity: "101 %", rule: "4 degF" }))).toEqual(["tooHigh humidity", "notAChoice rule"]);
  });
});

describe("surfaceOverDewPoint", () => {
  it("just meets its margin, and just does not", () => {
    const left = (surfaceTemperature: `${number} degF`): string => surfaceOverDewPoint({ surfaceTemperature, condensesAt: "57 degF", leastMargin: "5 degF" }).marginLeft.toString();
    expect([left("62 degF"), left("61.9 degF"), left("63 degF")]).toEqual(["0 degF", "-0.1 degF", "1 degF"]);
  });
});
