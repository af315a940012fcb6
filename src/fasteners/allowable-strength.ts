import { calculation } from "../core/calculation.js";
import { arithmetic, statics } from "../data/basis.js";
import { screwStrengthCaution } from "../data/fasteners.js";

/**
 * What one screw may carry at allowable level: the lesser of what the steel holds and what the screw itself holds, each
 * divided by its safety factor.
 *
 * @example
 * ```ts
 * const screw = allowableStrength({ nominal: "306 lbf", safetyFactor: 2.8, screwStrength: "1158 lbf", screwSafetyFactor: 3 });
 * screw.allowable.to("lbf").toFixed(1); // "109.3"
 * ```
 */
export const allowableStrength = /* @__PURE__ */ calculation({
  id: "fasteners.allowable-strength",
  title: "Allowable load on one screw",
  given: {
    nominal: { is: "force", unit: ["lbf", "N"], symbol: "P_n", says: "nominal strength of the connection: pull-out, pull-over or shear", above: 0 },
    safetyFactor: { is: "ratio", symbol: "Ω", says: "safety factor of the edition the nominal strength is from", atLeast: 1 },
    screwStrength: { is: "force", unit: ["lbf", "N"], symbol: "P_ss", says: "nominal strength of the screw itself, in tension or in shear as the connection is, from its maker's tests", above: 0 },
    screwSafetyFactor: { is: "ratio", symbol: "Ω_s", says: "safety factor for the screw itself", atLeast: 1 },
  },
  steps: {
    connection: { is: "force", unit: ["lbf", "N"], symbol: "P_a", says: "what the steel may carry", formula: "nominal / safetyFactor", basis: arithmetic },
    screw: { is: "force", unit: ["lbf", "N"], symbol: "P_as", says: "what the screw itself may carry", formula: "screwStrength / screwSafetyFactor", basis: arithmetic },
    allowable: { is: "force", unit: ["lbf", "N"], symbol: "P", says: "allowable load on one screw", formula: "min(connection, screw)", basis: statics },
  },
  cautions: [screwStrengthCaution],
});
