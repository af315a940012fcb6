import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Most contact there can be between a unit and its bed, once the unit is set with a gap behind it. Mortar fills the gap
 * or it does not; what the trowel left is all there is.
 *
 * @example
 * ```ts
 * bedContact({ bed: "3/16 in", gap: "1/4 in" }).contact.toString(); // "75 %"
 * ```
 */
export const bedContact = /* @__PURE__ */ calculation({
  id: "mortar.bed-contact",
  title: "Most contact a bed can give",
  given: {
    bed: { is: "length", unit: ["in", "mm"], symbol: "b", says: "mean bed on the wall and back-butter together", above: 0 },
    gap: { is: "length", unit: ["in", "mm"], symbol: "g", says: "mean distance from the wall to the back of the unit, once set, hollows of both counted in", above: 0 },
  },
  constants: {
    whole: { is: "ratio", unit: "%", symbol: "w", value: 1, says: "the whole back", basis: geometry },
  },
  steps: {
    filled: { is: "ratio", unit: "%", symbol: "f", says: "mortar to the volume of the gap", formula: "bed / gap", basis: geometry },
    contact: { is: "ratio", unit: "%", symbol: "c", says: "most of the back that can be in contact", formula: "min(whole, filled)", basis: geometry },
  },
  cautions: ["Contact is proved by lifting a unit: see limits.contact-coverage."],
});
