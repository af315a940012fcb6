import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { hyperbolicGrowth } from "../data/timing.js";

/**
 * Strength at an age along a hyperbola that begins after a delay and nears the ultimate strength.
 *
 * @example
 * ```ts
 * hyperbolicStrength({ ultimate: "5000 psi", rateConstant: "0.25 /d", delay: "12 h", age: "4.5 d" }).strength.toString(); // "2500 psi"
 * ```
 */
export const hyperbolicStrength = /* @__PURE__ */ calculation({
  id: "timing.hyperbolic-strength",
  title: "Strength at an age",
  given: {
    ultimate: { is: "pressure", unit: ["psi", "MPa"], symbol: "S_u", says: "strength it nears in the end", above: 0 },
    rateConstant: { is: "perTime", unit: "/d", symbol: "k", says: "rate constant, at the reference temperature of the age", above: 0 },
    delay: { is: "time", unit: "h", symbol: "t_0", says: "age at which strength begins", atLeast: 0 },
    age: { is: "time", unit: "h", symbol: "t", says: "age, at the reference temperature of the rate constant", above: 0 },
  },
  steps: {
    growing: { is: "time", unit: "h", symbol: "t_g", says: "time since strength began", formula: "age - delay", basis: arithmetic, atLeast: 0 },
    growth: { is: "ratio", symbol: "x", says: "rate constant times that time", formula: "rateConstant * growing", basis: hyperbolicGrowth },
    strengthShare: { is: "ratio", unit: "%", symbol: "b", says: "share of the ultimate strength", formula: "growth / (1 + growth)", basis: hyperbolicGrowth },
    strength: { is: "pressure", unit: ["psi", "MPa"], symbol: "S", says: "strength at this age", formula: "ultimate * strengthShare", basis: hyperbolicGrowth },
  },
  cautions: ["An estimate along a curve of concrete, no test result; the constants are those of your own tests."],
});
