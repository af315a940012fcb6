import { calculation } from "../core/calculation.js";
import { eurocodeGrowth } from "../data/timing.js";

/**
 * Share of its 28-day strength that concrete has at an age, by the curve of EN 1992-1-1.
 *
 * @example
 * ```ts
 * concreteStrengthShare({ age: "7 d", coefficient: 0.25 }).strengthShare.to("ratio").toFixed(4); // "0.7788"
 * ```
 */
export const concreteStrengthShare = /* @__PURE__ */ calculation({
  id: "timing.concrete-strength-share",
  title: "Share of the 28-day strength at an age",
  given: {
    age: { is: "time", unit: "d", symbol: "t", says: "age at 20 degC, from 1 to 28 days", atLeast: "1 d", atMost: "28 d" },
    coefficient: { is: "ratio", symbol: "s", says: "coefficient of the class of cement", atLeast: 0.2, atMost: 0.38 },
  },
  constants: {
    fullAge: { is: "time", unit: "d", symbol: "t_28", value: "28 d", says: "age of the full strength", basis: eurocodeGrowth },
  },
  steps: {
    strengthShare: { is: "ratio", unit: "%", symbol: "b", says: "share of the 28-day strength", formula: "exp(coefficient * (1 - sqrt(fullAge / age)))", basis: eurocodeGrowth },
  },
  cautions: ["Sources differ by a third for young ages: a share of strength is a range, no promise. The curve is that of concrete; for thin beds with polymers it only guides."],
});
