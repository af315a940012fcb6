import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Fasteners by area, for lath, foam and sheets that are not laid out piece by piece.
 *
 * @example
 * ```ts
 * const nails = fastenersByArea({ area: "320 ft2", fastenersPerArea: "1.5 /ft2", waste: "5 %", packCount: 250 });
 * nails.toOrder.toString(); // "504"
 * nails.packs.toString(); // "3"
 * ```
 */
export const fastenersByArea = /* @__PURE__ */ calculation({
  id: "takeoff.fasteners-by-area",
  title: "Fasteners by area",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "area that is fastened", above: 0 },
    fastenersPerArea: { is: "countPerArea", unit: ["/ft2", "/m2"], symbol: "q", says: "fasteners per area, from the fastening schedule", above: 0 },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "fasteners dropped or broken, on top of the net", atLeast: 0, below: 1 },
    packCount: { is: "count", symbol: "p", says: "fasteners in a pack", atLeast: 1, whole: true },
  },
  steps: {
    net: { is: "count", symbol: "n", says: "fasteners in the wall, before rounding", formula: "area * fastenersPerArea", basis: arithmetic },
    withWaste: { is: "count", symbol: "n_w", says: "fasteners with waste, before rounding", formula: "net * (1 + waste)", basis: arithmetic },
    toOrder: { is: "count", symbol: "n_o", says: "whole fasteners to order", formula: "ceil(withWaste)", basis: arithmetic },
    packs: { is: "count", symbol: "b", says: "whole packs to order", formula: "ceil(withWaste / packCount)", basis: arithmetic },
  },
  cautions: ["An estimate by area: edges and corners take more. What holds the wall is for local code and a licensed professional to say."],
});
