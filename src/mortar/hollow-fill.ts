import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";

/**
 * Mortar that a wall out of plane takes on top of the bed. A wall with deeper hollows is flattened first.
 *
 * @example
 * ```ts
 * const extra = hollowFill({ area: "480 ft2", deepest: "1/4 in", meanHollow: "1/8 in", bagYield: "0.5 ft3" });
 * extra.volume.toString(); // "5 ft3"
 * extra.bags.toString(); // "10"
 * ```
 */
export const hollowFill = /* @__PURE__ */ calculation({
  id: "mortar.hollow-fill",
  title: "Extra mortar for a wall out of plane",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "area that is out of plane", above: 0 },
    deepest: { is: "length", unit: ["in", "mm"], symbol: "h_m", says: "deepest hollow under a straightedge or string; over 3/8 in flatten the wall first", above: 0, atMost: "3/8 in" },
    meanHollow: { is: "length", unit: ["in", "mm"], symbol: "h", says: "mean hollow over this area", above: 0 },
    bagYield: { is: "volume", unit: ["ft3", "L"], symbol: "Y", says: "mortar that one bag gives", above: 0 },
  },
  steps: {
    spare: { is: "length", unit: ["in", "mm"], symbol: "h_s", says: "deepest hollow less the mean, which cannot be deeper", formula: "deepest - meanHollow", basis: geometry, atLeast: 0 },
    volume: { is: "volume", unit: ["ft3", "L"], symbol: "V", says: "mortar on top of the bed", formula: "area * meanHollow", basis: geometry },
    bags: { is: "count", symbol: "n", says: "bags, where they are ordered apart from those of the bed", formula: "ceil(volume / bagYield)", basis: arithmetic },
  },
  cautions: [
    "Setting mortar is no levelling coat: a thick bed sags and cracks. The limit of 3/8 in is common practice; the data sheet's own goes before it.",
    "Where one order covers bed and hollows, add the volumes and round up once.",
  ],
});
