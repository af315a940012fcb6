import { composed } from "../core/composed.js";
import { ageForStrength } from "./age-for-strength.js";
import { hyperbolicStrength } from "./hyperbolic-strength.js";

/**
 * Strength at an age, or the age at which a strength is reached, along a hyperbola of your own tests.
 *
 * @example
 * ```ts
 * strengthAtAge({ ultimate: "5000 psi", rateConstant: "0.25 /d", delay: "12 h", age: "4.5 d" }).strength.toString(); // "2500 psi"
 * strengthAtAge({ ultimate: "5000 psi", rateConstant: "0.25 /d", delay: "12 h", strength: "2500 psi" }).age.to("d").toString(); // "4.5"
 * ```
 */
export const strengthAtAge = /* @__PURE__ */ composed({
  id: "timing.strength-at-age",
  title: "Strength and age",
  given: {
    ultimate: { is: "pressure", unit: ["psi", "MPa"], symbol: "S_u", says: "strength it nears in the end", above: 0 },
    rateConstant: { is: "perTime", unit: "/d", symbol: "k", says: "rate constant, at the reference temperature of the age", above: 0 },
    delay: { is: "time", unit: "h", symbol: "t_0", says: "age at which strength begins", atLeast: 0 },
    age: { is: "time", unit: "h", symbol: "t", says: "age, at the reference temperature of the rate constant", above: 0, either: "reached" },
    strength: { is: "pressure", unit: ["psi", "MPa"], symbol: "S", says: "strength wanted", atLeast: 0, either: "reached" },
  },
  run: ({ age, strength, ...curve }, work) => {
    if (age !== undefined) {
      const { strength: reached, strengthShare } = work.part(hyperbolicStrength, { ...curve, age }).answers;
      return { age, strength: reached, strengthShare };
    }
    if (strength === undefined) throw new Error("neither an age nor a strength");
    const { age: reached, strengthShare } = work.part(ageForStrength, { ...curve, strength }).answers;
    return { age: reached, strength, strengthShare };
  },
});
