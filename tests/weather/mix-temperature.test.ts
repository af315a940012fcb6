import { describe, expect, it } from "vitest";
import { freshMortarTemperature, mixTemperature, waterForMortarTemperature } from "../../src/weather/index.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector } from "../support/vectors.js";

/** `282 lb at 35 degF` as mass and temperature. */
function partOf(text: string | undefined): readonly [mass: "1 lb", temperature: "50 degF"] {
  const [mass = "", temperature = ""] = (text ?? "").split(" at ");
  return [mass, temperature] as unknown as ReturnType<typeof partOf>;
}

const { inputs } = vector("mix-temp-mortar-hot-water");
const [sandMass, sandTemperature] = partOf(inputs["sand (dry)"]);
const [moistureMass] = partOf(inputs["free moisture"]);
const [cementMass, cementTemperature] = partOf(inputs.cement);
const [waterMass, waterTemperature] = partOf(inputs.water);
const parts = { sandMass, sandTemperature, moistureMass, cementMass, cementTemperature, waterMass } as const;

describe("TM 5-852-4, equation 16", () => {
  it("the temperature of fresh mortar", () => {
    expectPrinted(freshMortarTemperature({ ...parts, waterTemperature }).mortarTemperature.to("degF"), vector("mix-temp-mortar-hot-water").expected.T);
  });

  it("all parts at one temperature give that temperature", () => {
    const { expected } = vector("mix-temp-isothermal");
    const same = "70 degF";
    const found = freshMortarTemperature({ ...parts, sandTemperature: same, cementTemperature: same, waterTemperature: same });
    expectPrinted(found.mortarTemperature.to("degF"), expected.T);
    // Water freezes at 32 degF, 38 degrees below.
    expect([found.mortarTemperature, found.overFreezing].map(String)).toEqual(["70 degF", "38 degF"]);
  });

  it("the water that gives a temperature that is wanted", () => {
    const row = vector("mix-temp-needed-water");
    expectPrinted(waterForMortarTemperature({ ...parts, mortarTemperature: row.inputs.target as "60 degF" }).waterTemperature.to("degF"), row.expected.Tm);
  });

  it("water holds about four and a half times the heat of solids", () => {
    expect(vector("heat-water-4p5").expected.ratio).toBe("roughly 4 1/2");
    // a pound of water 9 degF warmer warms as much as 1/0.22 = 4.545 lb of solids do
    const base = { sandMass: "100 lb", sandTemperature: "50 degF", moistureMass: "0 lb", cementMass: "100 lb", cementTemperature: "50 degF", waterMass: "44 lb", waterTemperature: "50 degF" } as const;
    const byWater = freshMortarTemperature({ ...base, waterTemperature: "60 degF" }).mortarTemperature;
    const bySolids = freshMortarTemperature({ ...base, sandTemperature: "60 degF", cementTemperature: "60 degF" }).mortarTemperature;
    // 200 lb x 0.22 = 44 lb: both give 55 degF
    expect([byWater.toString(), bySolids.toString()]).toEqual(["55 degF", "55 degF"]);
  });

  it("water is neither ice nor steam", () => {
    // 400 lb of solids hold as much heat as 88 lb of water: with 44 lb of water it is 3 x mortar - 2 x solids.
    const water = (mortar: number, solids: number): string => {
      const tried = waterForMortarTemperature.try({ sandMass: "300 lb", sandTemperature: `${solids} degF`, moistureMass: "0 lb", cementMass: "100 lb", cementTemperature: `${solids} degF`, waterMass: "44 lb", mortarTemperature: `${mortar} degF` });
      return tried.ok ? `${tried.solution.answers.waterTemperature.toString()}, ${tried.solution.answers.overFreezing.toString()} over freezing` : faults(tried).join();
    };
    expect([water(32, 32), water(34, 34), water(36, 38.5)]).toEqual(["32 degF, 0 degF over freezing", "34 degF, 2 degF over freezing", "tooLow waterTemperature"]);
    expect([water(88, 32), water(92, 32), water(92.1, 32)]).toEqual(["200 degF, 168 degF over freezing", "212 degF, 180 degF over freezing", "tooHigh waterTemperature"]);
  });

  it("each undoes the other, in metric units as well", () => {
    const metric = { sandMass: "128 kg", sandTemperature: "2 degC", moistureMass: "6 kg", cementMass: "42.5 kg", cementTemperature: "4 degC", waterMass: "15 kg" } as const;
    const { mortarTemperature } = freshMortarTemperature({ ...metric, waterTemperature: "55 degC" });
    expect(waterForMortarTemperature({ ...metric, mortarTemperature }).waterTemperature.toString()).toBe("55 degC");
  });
});

describe("mixTemperature", () => {
  it("tells whether the water is within the limit of the job: 120, 140 and 180 degF are in print", () => {
    const found = (waterLimit: "120 degF"): boolean => mixTemperature({ ...parts, mortarTemperature: "60 degF", waterLimit }).waterWithinLimit;
    const printedLimit = /^\d+ degF/.exec(vector("water-max-140").expected.water ?? "")?.[0] as "120 degF";
    expect([found("120 degF"), found(printedLimit), found("180 degF" as "120 degF")]).toEqual([false, true, true]);
    expect(mixTemperature({ ...parts, mortarTemperature: "60 degF", waterLimit: "120 degF" }).says).toContain("heat the sand");
    expect(mixTemperature({ ...parts, mortarTemperature: "60 degF", waterLimit: printedLimit }).says).toBe("the water is within its limit");
    // Everything at 70 degF asks for water at 70 degF: at its limit it is within it.
    const even = { ...parts, sandTemperature: "70 degF", cementTemperature: "70 degF", mortarTemperature: "70 degF" } as const;
    expect(mixTemperature({ ...even, waterLimit: "70 degF" as "120 degF" }).waterWithinLimit).toBe(true);
  });

  it("warns of mortar above the 120 degF that is printed", () => {
    expect(vector("hot-mortar-max").expected.mortar).toBe("120 degF (48.9 degC)");
    const hot = (sand: "120 degF"): readonly string[] => mixTemperature.solve({ ...parts, sandTemperature: sand, cementTemperature: "120 degF", waterTemperature: "120 degF", waterLimit: "140 degF" }).cautions;
    expect(hot("120 degF").some((text) => text.startsWith("Mortar above 120 degF"))).toBe(false);
    expect(hot("121 degF" as "120 degF").some((text) => text.startsWith("Mortar above 120 degF"))).toBe(true);
  });

  it("refuses frozen sand, which holds ice, and mortar that no water can give", () => {
    expect(vector("sand-heat-50F").expected.sand).toContain("must be heated below 32 degF");
    expect(faults(mixTemperature.try({ ...parts, sandTemperature: "31 degF", mortarTemperature: "60 degF", waterLimit: "140 degF" }))).toEqual(["tooLow sandTemperature"]);
    expect(faults(mixTemperature.try({ ...parts, mortarTemperature: "110 degF", waterLimit: "140 degF" }))).toEqual(["tooHigh waterTemperature"]);
    expect(faults(mixTemperature.try({ ...parts, sandTemperature: "90 degF", mortarTemperature: "40 degF", waterLimit: "140 degF" }))).toEqual(["tooLow waterTemperature"]);
  });

  it("asks for one of water and mortar, and for the limit", () => {
    expect(faults(mixTemperature.try({ ...parts, waterLimit: "140 degF" }))).toEqual(["either warmth"]);
    expect(faults(mixTemperature.try({ ...parts, mortarTemperature: "60 degF" }))).toEqual(["missing waterLimit"]);
  });
});
