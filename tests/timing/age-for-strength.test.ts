import { expect, it } from "vitest";
import { ageForStrength, hyperbolicStrength } from "../../src/timing/index.js";

it("undoes hyperbolicStrength for any share", () => {
  const curve = { ultimate: "4000 psi", rateConstant: "0.02 /h", delay: "5 h" } as const;
  for (const share of [1, 10, 37, 90, 99]) {
    const { age } = ageForStrength({ ...curve, strength: `${40 * share} psi` as "40 psi" });
    expect(hyperbolicStrength({ ...curve, age }).strength.to("psi").toString()).toBe(String(40 * share));
  }
});
