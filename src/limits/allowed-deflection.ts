import { calculation } from "../core/calculation.js";
import { limitCaution } from "../data/limits.js";
import { arithmetic } from "../data/basis.js";

/**
 * Deflection of framing allowed by a share of its span, such as L/360.
 *
 * @example
 * ```ts
 * allowedDeflection({ span: "9 ft", divisor: 360 }).allowed.toString(); // "0.3 in"
 * ```
 */
export const allowedDeflection = /* @__PURE__ */ calculation({
  id: "limits.allowed-deflection",
  title: "Deflection allowed to framing",
  given: {
    span: { is: "length", unit: ["ft", "m"], symbol: "L", says: "span of the framing between its supports", above: 0 },
    divisor: { is: "count", symbol: "n", says: "what the span is divided by: 360 for L/360", above: 0 },
  },
  steps: {
    allowed: { is: "length", unit: ["in", "mm"], symbol: "d", says: "deflection allowed across the wall", formula: "span / divisor", basis: arithmetic },
  },
  cautions: [limitCaution],
});
