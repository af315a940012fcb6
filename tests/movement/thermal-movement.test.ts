import { describe, expect, it } from "vitest";
import { thermalMovement } from "../../src/movement/thermal-movement.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector, vectors } from "../support/vectors.js";

/** `"6.5e-6 /F"` in the spelling of the table. */
const expansion = (text: string | undefined): "4e-6 /degF" => (text ?? "").replace("/F", "/degF") as "4e-6 /degF";

describe("thermalMovement", () => {
  it.each(vectors("cte-concrete-"))("$id (Concrete Construction magazine)", ({ inputs, expected }) => {
    const { movement } = thermalMovement({ length: inputs.L as "144 in", expansion: expansion(inputs.alpha), temperatureRange: inputs.dT as "100 F" });
    expectPrinted(movement.to("in"), expected.movement);
  });

  it.each(vectors("sealant-width-cornell-"))("$id, its thermal part (Cornell University, ARCH 262)", ({ inputs, expected }) => {
    const { movement } = thermalMovement({ length: inputs.L as "240 in", expansion: expansion(inputs.e), temperatureRange: inputs.dT as "95 F" });
    expectPrinted(movement.to("in"), expected.thermal);
  });

  it("is the movement that two texts on tile and stone multiply", () => {
    const { inputs, expected } = vector("joint-4x-movement");
    const { movement } = thermalMovement({ length: inputs.L as "144 in", expansion: expansion(inputs.alpha), temperatureRange: inputs.dT as "100 F" });
    expectPrinted(movement.to("in"), expected.movement);
    expectPrinted(movement.to("in"), vector("stone-joint-2to4x").inputs.movement);
  });

  it("reads a coefficient to the degree Celsius as 9/5 of that to the degree Fahrenheit, as Dooley prints both for mortar", () => {
    const { expected } = vector("cte-mortar-dooley");
    const fahrenheit = thermalMovement({ length: "100 m", expansion: `${expected.perF as "6.56e-6"} /degF`, temperatureRange: "10 degC" });
    // 6.56e-6 x 1.8 = 11.808e-6, printed 11.80e-6: 100 m x 10 x 11.808e-6 = 11.808 mm
    expect(fahrenheit.movement.to("mm").toString()).toBe("11.808");
    const celsius = thermalMovement({ length: "100 m", expansion: `${expected.perC as "11.80e-6"} /degC`, temperatureRange: "10 degC" });
    expect(fahrenheit.movement.to("mm").sub(celsius.movement.to("mm")).abs().toNumber()).toBeLessThan(0.01);
  });

  it("is nought where the temperature stays, and grows with length, coefficient and range", () => {
    const at = (length: "10 ft" | "20 ft", range: "0 degF" | "50 degF" | "100 degF"): string => thermalMovement({ length, expansion: "4e-6 /degF", temperatureRange: range }).movement.to("in").toString();
    // 120 x 4e-6 x 50 = 0.024
    expect([at("10 ft", "0 degF"), at("10 ft", "50 degF"), at("20 ft", "50 degF"), at("20 ft", "100 degF")]).toEqual(["0", "0.024", "0.048", "0.096"]);
  });

  it("says that the surface counts and not the air, and refuses nonsense", () => {
    expect(thermalMovement.solve({ length: "10 ft", expansion: "4e-6 /degF", temperatureRange: "100 degF" }).cautions.join(" ")).toMatch(/range of its surface/);
    expect(faults(thermalMovement.try({ length: "0 ft", expansion: "0 /degF", temperatureRange: "-1 degF" }))).toEqual(["tooLow length", "tooLow expansion", "tooLow temperatureRange"]);
  });
});
