import { calculation } from "../core/calculation.js";
import { cornerZoneRule, windCaution } from "../data/wind.js";

/**
 * Width of zone 5, the strip of wall at each corner of the building where suction is greatest.
 *
 * @example
 * ```ts
 * cornerZoneWidth({ leastWidth: "40 ft", height: "20 ft" }).width.toString(); // "4 ft"
 * ```
 */
export const cornerZoneWidth = /* @__PURE__ */ calculation({
  id: "fasteners.corner-zone-width",
  title: "Width of the corner zone",
  given: {
    leastWidth: { is: "length", unit: ["ft", "m"], symbol: "B", says: "least horizontal dimension of the building", above: 0 },
    height: { is: "length", unit: ["ft", "m"], symbol: "h", says: "mean roof height of the building", above: 0, atMost: "60 ft" },
  },
  constants: {
    widthShare: { is: "ratio", symbol: "c_1", value: "0.1", says: "share of the least width", basis: cornerZoneRule },
    heightShare: { is: "ratio", symbol: "c_2", value: "0.4", says: "share of the height", basis: cornerZoneRule },
    leastShare: { is: "ratio", symbol: "c_3", value: "0.04", says: "least share of the least width", basis: cornerZoneRule },
    leastZone: { is: "length", unit: ["ft", "m"], symbol: "a_min", value: "3 ft", says: "least width of the zone", basis: cornerZoneRule },
  },
  steps: {
    byWidth: { is: "length", unit: ["ft", "m"], symbol: "a_1", says: "a tenth of the least width", formula: "widthShare * leastWidth", basis: cornerZoneRule },
    byHeight: { is: "length", unit: ["ft", "m"], symbol: "a_2", says: "0.4 of the height", formula: "heightShare * height", basis: cornerZoneRule },
    lesser: { is: "length", unit: ["ft", "m"], symbol: "a_0", says: "the lesser of the two", formula: "min(byWidth, byHeight)", basis: cornerZoneRule },
    leastByWidth: { is: "length", unit: ["ft", "m"], symbol: "a_3", says: "0.04 of the least width", formula: "leastShare * leastWidth", basis: cornerZoneRule },
    width: { is: "length", unit: ["ft", "m"], symbol: "a", says: "width of zone 5 from the corner", formula: "max(lesser, leastByWidth, leastZone)", basis: cornerZoneRule },
  },
  cautions: [windCaution],
});
