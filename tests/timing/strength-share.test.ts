import { expect, it } from "vitest";
import { strengthShare } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

it("takes the coefficient of the class: R 0.20, N 0.25, S 0.38", () => {
  // EN 1992-1-1, 3.1.2: exp(s (1 - sqrt(28/7))) = exp(-s)
  const shares = (["R", "N", "S"] as const).map((cementClass) => strengthShare({ age: "7 d", cementClass }).strengthShare.to("ratio").toFixed(9));
  expect(shares).toEqual([0.2, 0.25, 0.38].map((s) => Math.exp(-s).toFixed(9)));
  expect(vector("ec2-beta-cc-S-7d").inputs.s).toBe("0.38 (class S)");
});

it("asks for the class", () => {
  expect(faults(strengthShare.try({ age: "7 d" }))).toEqual(["missing cementClass"]);
});
