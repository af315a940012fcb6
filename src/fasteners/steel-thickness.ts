import { composed } from "../core/composed.js";
import { steelDesignations } from "../data/fasteners.js";
import { deliveredThickness } from "./delivered-thickness.js";
import { lookedUp } from "./design-thickness.js";

/**
 * Design thickness of steel by its mils, and the least thickness that may be delivered for it.
 *
 * @example
 * ```ts
 * const stud = steelThickness({ steel: "33 mil" });
 * stud.designThickness.toString(); // "0.0346 in"
 * stud.leastDelivered.toString(); // "0.03287 in"
 * ```
 */
export const steelThickness = /* @__PURE__ */ composed({
  id: "fasteners.steel-thickness",
  title: "Thickness of steel by its designation",
  given: {
    steel: { oneOf: steelDesignations, says: "steel by its mils; no gauge, since 20 gauge may be 30 mil, 33 mil or less" },
  },
  run: ({ steel }, work) => {
    const designThickness = lookedUp(work, steel);
    const { leastDelivered } = work.part(deliveredThickness, { designThickness }).answers;
    return { designThickness, leastDelivered };
  },
});
