import { describe, expect, it } from "vitest";
import { jointForMovement } from "../../src/movement/joint-for-movement.js";
import { moistureMovement } from "../../src/movement/moisture-movement.js";
import { thermalMovement } from "../../src/movement/thermal-movement.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vectors } from "../support/vectors.js";

describe("jointForMovement", () => {
  it.each(vectors("sealant-width-cornell-"))("$id (Cornell University, W = (100/X)[eL(dT)+M]+t)", ({ inputs, expected }) => {
    const length = inputs.L as "240 in";
    const thermal = thermalMovement({ length, expansion: (inputs.e ?? "").replace("/F", "/degF") as "4e-6 /degF", temperatureRange: inputs.dT as "95 F" }).movement;
    const moisture = moistureMovement({ length, moistureStrain: inputs.moisture as "0.0002" }).movement;
    const joint = jointForMovement({ thermal, moisture, structural: inputs.structural as "0.125 in", sealantCapability: inputs.X as "50 %", tolerance: inputs.t as "0.125 in" });
    expectPrinted(joint.needed.to("in"), expected.W);
    expectPrinted(joint.width.to("in"), expected["roundUp1/8"]);
  });

  it("goes up to the next 1/8 in, and not from one that is met", () => {
    // 0.0625/0.25 = 0.25; with 0.125 exactly 3/8
    const width = (thermal: "0.0625 in" | "0.06250001 in" | "0.06249999 in"): string => jointForMovement({ thermal, moisture: "0 in", structural: "0 in", sealantCapability: "25 %", tolerance: "1/8 in" }).width.toString();
    expect([width("0.06249999 in"), width("0.0625 in"), width("0.06250001 in")]).toEqual(["0.375 in", "0.375 in", "0.5 in"]);
  });

  it("is exact where a third of a percent would round: 1/30 in over 33 1/3 % and 1/40 in make 1/8 in", () => {
    const joint = jointForMovement({ thermal: { value: "1/30", unit: "in" }, moisture: "0 in", structural: "0 in", sealantCapability: { value: "100/3", unit: "%" }, tolerance: { value: "1/40", unit: "in" } } as never);
    expect([joint.needed.toString(), joint.width.toString()]).toEqual(["0.125 in", "0.125 in"]);
  });

  it("wants every movement told, even where it is nought, but not all of them nought", () => {
    expect(faults(jointForMovement.try({ thermal: "0.1 in", sealantCapability: "50 %", tolerance: "0 in" }))).toEqual(["missing moisture", "missing structural"]);
    expect(faults(jointForMovement.try({ thermal: "0 in", moisture: "0 in", structural: "0 in", sealantCapability: "50 %", tolerance: "1/8 in" }))).toEqual(["tooLow movement"]);
  });

  it("refuses a sealant that follows nothing, or more than its own width", () => {
    const of = (sealantCapability: string): readonly string[] => faults(jointForMovement.try({ thermal: "0.1 in", moisture: "0 in", structural: "0 in", sealantCapability, tolerance: "0 in" }));
    expect([of("0 %"), of("100 %"), of("101 %"), of("50")]).toEqual([["tooLow sealantCapability"], [], ["tooHigh sealantCapability"], ["tooHigh sealantCapability"]]);
  });
});
