import { composed } from "../core/composed.js";
import { eurocodeCoefficient } from "../data/timing.js";
import { concreteStrengthShare } from "./concrete-strength-share.js";

/**
 * Share of its 28-day strength at an age, by the class of the cement: R fast, N usual, S slow (EN 1992-1-1).
 *
 * @example
 * ```ts
 * strengthShare({ age: "3 d", cementClass: "N" }).strengthShare.to("%").toFixed(0); // "60"
 * ```
 */
export const strengthShare = /* @__PURE__ */ composed({
  id: "timing.strength-share",
  title: "Share of the 28-day strength by class of cement",
  given: {
    age: { is: "time", unit: "d", symbol: "t", says: "age at 20 degC, from 1 to 28 days; an equivalent age at 20 degC too", atLeast: "1 d", atMost: "28 d" },
    cementClass: { oneOf: ["R", "N", "S"], says: "class of the cement: R fast, N usual, S slow" },
  },
  run: ({ age, cementClass }, work) => {
    const coefficient = eurocodeCoefficient[cementClass];
    return { cementClass, strengthShare: work.part(concreteStrengthShare, { age, coefficient }).answers.strengthShare };
  },
});
