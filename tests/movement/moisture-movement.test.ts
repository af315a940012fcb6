import { expect, it } from "vitest";
import { moistureMovement } from "../../src/movement/moisture-movement.js";
import { faults } from "../support/faults.js";
import { vectors } from "../support/vectors.js";

it.each(vectors("sealant-width-cornell-"))("moistureMovement, $id: its strain times its length", ({ inputs }) => {
  // 240, 300 and 144 in times 0.0002
  const byHand: Readonly<Record<string, string>> = { "240 in": "0.048", "300 in": "0.06", "144 in": "0.0288" };
  expect(moistureMovement({ length: inputs.L as "240 in", moistureStrain: Number(inputs.moisture) }).movement.to("in").toString()).toBe(byHand[inputs.L ?? ""]);
});

it("moistureMovement by hand: 6 m of brick at 0.0005 grow by 3 mm", () => {
  expect(moistureMovement({ length: "6 m", moistureStrain: 0.0005 }).movement.toString()).toBe("3 mm");
  expect(moistureMovement({ length: "6 m", moistureStrain: 0 }).movement.toString()).toBe("0 mm");
});

it("moistureMovement refuses no length, and a strain below nought or of a whole length", () => {
  expect(faults(moistureMovement.try({ length: "0 ft", moistureStrain: -0.0001 }))).toEqual(["tooLow length", "tooLow moistureStrain"]);
  expect(faults(moistureMovement.try({ length: "1 ft", moistureStrain: 1 }))).toEqual(["tooHigh moistureStrain"]);
});
