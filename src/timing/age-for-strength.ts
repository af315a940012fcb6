import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { hyperbolicGrowth } from "../data/timing.js";

/**
 * Age at which a strength is reached along the hyperbola of strength over age.
 *
 * @example
 * ```ts
 * ageForStrength({ ultimate: "5000 psi", rateConstant: "0.25 /d", delay: "12 h", strength: "2500 psi" }).age.to("d").toString(); // "4.5"
 * ```
 */
export const ageForStrength = /* @__PURE__ */ calculation({
  id: "timing.age-for-strength",
  title: "Age at which a strength is reached",
  given: {
    ultimate: { is: "pressure", unit: ["psi", "MPa"], symbol: "S_u", says: "strength it nears in the end", above: 0 },
    rateConstant: { is: "perTime", unit: "/d", symbol: "k", says: "rate constant, at the reference temperature of the age", above: 0 },
    delay: { is: "time", unit: "h", symbol: "t_0", says: "age at which strength begins", atLeast: 0 },
    strength: { is: "pressure", unit: ["psi", "MPa"], symbol: "S", says: "strength wanted", atLeast: 0 },
  },
  steps: {
    strengthShare: { is: "ratio", unit: "%", symbol: "b", says: "share of the ultimate strength", formula: "strength / ultimate", basis: arithmetic, below: 1 },
    growing: { is: "time", unit: "h", symbol: "t_g", says: "time since strength began", formula: "strengthShare / (1 - strengthShare) / rateConstant", basis: hyperbolicGrowth },
    age: { is: "time", unit: "h", symbol: "t", says: "age, at the reference temperature of the rate constant", formula: "delay + growing", basis: arithmetic },
  },
  cautions: ["An estimate along a curve of concrete, no test result; the constants are those of your own tests."],
});
