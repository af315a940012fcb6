import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { pressureRule, windCaution } from "../data/wind.js";

/**
 * Net wind pressure on a wall, without regard to its direction, and not less than the least pressure of the edition.
 * All of it is at one level, that of the velocity pressure.
 *
 * @example
 * ```ts
 * const corner = wallPressure({ velocityPressure: "20 psf", externalCoefficient: "-1.4", internalCoefficient: 0.18, leastPressure: "16 psf" });
 * corner.pressure.toString(); // "31.6 psf"
 * ```
 */
export const wallPressure = /* @__PURE__ */ calculation({
  id: "fasteners.wall-pressure",
  title: "Net wind pressure on a wall",
  given: {
    velocityPressure: { is: "pressure", unit: ["psf", "Pa"], symbol: "q_h", says: "velocity pressure at the mean roof height", above: 0 },
    externalCoefficient: { is: "ratio", symbol: "GC_p", says: "external pressure coefficient, below 0 for suction" },
    internalCoefficient: { is: "ratio", symbol: "GC_pi", says: "internal pressure coefficient, which acts with suction or with pressure", atLeast: 0 },
    leastPressure: { is: "pressure", unit: ["psf", "Pa"], symbol: "p_min", says: "least pressure of the edition, at the level of the velocity pressure", atLeast: 0 },
  },
  steps: {
    netCoefficient: { is: "ratio", symbol: "C_n", says: "external and internal coefficient together, without sign", formula: "max(externalCoefficient, -externalCoefficient) + internalCoefficient", basis: pressureRule },
    calculated: { is: "pressure", unit: ["psf", "Pa"], symbol: "p_c", says: "pressure before the least is applied", formula: "velocityPressure * netCoefficient", basis: pressureRule },
    pressure: { is: "pressure", unit: ["psf", "Pa"], symbol: "p", says: "pressure on the wall", formula: "max(calculated, leastPressure)", basis: arithmetic },
  },
  cautions: [windCaution],
});
