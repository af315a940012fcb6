import { calculation } from "../core/calculation.js";
import { lowRoofNote, straightOverLogArea, wallCoefficients, windCaution } from "../data/wind.js";

/**
 * External pressure coefficient on a wall for an effective wind area, on the straight line over the logarithm of the
 * area between the two ends of the chart.
 *
 * @example
 * ```ts
 * const corner = wallPressureCoefficient({ effectiveArea: "20 ft2", coefficientAt10: "-1.4", coefficientAt500: "-0.8", slopeFactor: 1 });
 * corner.coefficient.to().toFixed(3); // "-1.294"
 * ```
 */
export const wallPressureCoefficient = /* @__PURE__ */ calculation({
  id: "fasteners.wall-pressure-coefficient",
  title: "External pressure coefficient on a wall",
  given: {
    effectiveArea: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "effective wind area", above: 0 },
    coefficientAt10: { is: "ratio", symbol: "C_10", says: "coefficient at 10 ft2, below 0 for suction" },
    coefficientAt500: { is: "ratio", symbol: "C_500", says: "coefficient at 500 ft2, below 0 for suction" },
    slopeFactor: { is: "ratio", symbol: "k_r", says: "factor for the slope of the roof: 0.9 to 10 degrees, else 1", above: 0, atMost: 1 },
  },
  constants: {
    smallArea: { is: "area", unit: ["ft2", "m2"], symbol: "A_10", value: "10 ft2", says: "where the line begins", basis: wallCoefficients },
    largeArea: { is: "area", unit: ["ft2", "m2"], symbol: "A_500", value: "500 ft2", says: "where the line ends", basis: wallCoefficients },
  },
  steps: {
    wayAlong: { is: "ratio", symbol: "w", says: "how far along the line the area lies", formula: "log10(min(max(effectiveArea, smallArea), largeArea) / smallArea) / log10(largeArea / smallArea)", basis: straightOverLogArea },
    onTheLine: { is: "ratio", symbol: "GC_p0", says: "coefficient on the line", formula: "coefficientAt10 + wayAlong * (coefficientAt500 - coefficientAt10)", basis: straightOverLogArea },
    coefficient: { is: "ratio", symbol: "GC_p", says: "external pressure coefficient", formula: "slopeFactor * onTheLine", basis: lowRoofNote },
  },
  cautions: [windCaution],
});
