import { describe, expect, it } from "vitest";
import { lifeAtTemperature } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";
import { vectors } from "../support/vectors.js";

const hours = (text: string | undefined): number => Number(/^[\d.]+ h$/.exec(text ?? "")?.[0].replace(" h", ""));

describe("lifeAtTemperature", () => {
  it.each(vectors("potlife-"))("by the doubling rule of UFGS-09971: $id", ({ inputs, expected }) => {
    const { life, rule } = lifeAtTemperature({ lifeAtReference: inputs["pot life at 70 degF"] as "4 h", reference: "70 degF", temperature: inputs.T as "88 degF", rule: "doubling" });
    expect(life.to("h").toFixed(9)).toBe(hours(expected["pot life"]).toFixed(9));
    expect(rule).toBe("doubling");
  });

  it("both rules by hand: a wait of 24 h at 70 degF is 48 h or 43.6 h at 52 degF", () => {
    const wait = { lifeAtReference: "24 h", reference: "70 degF", temperature: "52 degF" } as const;
    expect(lifeAtTemperature({ ...wait, rule: "doubling" }).life.to("h").toFixed(1)).toBe("48.0");
    // 70 degF = 294.261 K, 52 degF = 284.261 K; 24 exp(5000 (1/284.261 - 1/294.261)) = 24 x 1.8177 = 43.6
    expect(lifeAtTemperature({ ...wait, rule: "Arrhenius", activation: "5000 K" }).life.to("h").toFixed(1)).toBe("43.6");
  });

  it("warmer never gives a longer life", () => {
    for (const by of [{ rule: "doubling" }, { rule: "Arrhenius", activation: "4000 K" }] as const) {
      const lives = Array.from({ length: 17 }, (_, step) => lifeAtTemperature({ lifeAtReference: "2 h", reference: "70 degF", temperature: `${40 + 5 * step} degF` as "40 degF", ...by }).life.toNumber("h"));
      expect(lives.every((life, index) => index === 0 || life < (lives[index - 1] ?? 0))).toBe(true);
    }
  });

  it("is the same asked in degrees Celsius", () => {
    const celsius = lifeAtTemperature({ lifeAtReference: "120 min", reference: "20 degC", temperature: "30 degC", rule: "doubling" });
    expect(celsius.life.to("min").toFixed(9)).toBe("60.000000000");
  });

  it("names its rule's source, and shows the formula", () => {
    const { parts, bases } = lifeAtTemperature.solve({ lifeAtReference: "2 h", reference: "70 degF", temperature: "88 degF", rule: "doubling" });
    expect(parts.map(({ id }) => id)).toEqual(["timing.age-factor-by-doubling", "timing.time-by-age-factor"]);
    expect(bases.some((basis) => basis.kind === "published" && basis.title.startsWith("UFGS-09971"))).toBe(true);
  });

  it("refuses what is out of range, and an activation energy that is lacking or not wanted", () => {
    const given = { lifeAtReference: "2 h", reference: "70 degF", temperature: "70 degF" };
    expect(faults(lifeAtTemperature.try({ ...given, rule: "Arrhenius" }))).toEqual(["missing activation"]);
    expect(faults(lifeAtTemperature.try({ ...given, rule: "doubling", activation: "5000 K" }))).toEqual(["refused activation"]);
    expect(faults(lifeAtTemperature.try(given))).toEqual(["missing rule"]);
    expect(faults(lifeAtTemperature.try({ ...given, rule: "doubling", temperature: "39.9 degF" }))).toEqual(["tooLow temperature"]);
    expect(faults(lifeAtTemperature.try({ ...given, rule: "doubling", temperature: "120.1 degF" }))).toEqual(["tooHigh temperature"]);
  });
});
