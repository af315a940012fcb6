import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Share of the back of a unit that is in contact with mortar.
 *
 * @example
 * ```ts
 * contactShare({ unitArea: "100 in2", voidArea: "4 in2" }).share.toString(); // "96 %"
 * ```
 */
export const contactShare = /* @__PURE__ */ calculation({
  id: "limits.contact-share",
  title: "Share of the back in contact",
  given: {
    unitArea: { is: "area", unit: ["in2", "cm2"], symbol: "A", says: "area of the back of the unit", above: 0 },
    voidArea: { is: "area", unit: ["in2", "cm2"], symbol: "A_v", says: "area of all voids together", atLeast: 0 },
  },
  steps: {
    share: { is: "ratio", unit: "%", symbol: "c", says: "share of the back in contact with mortar", formula: "1 - voidArea / unitArea", basis: geometry, atLeast: 0 },
  },
});
