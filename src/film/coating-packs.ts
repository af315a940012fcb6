import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Packs for a volume of coating, with waste on top of the net or with the share that is lost; rounded up once.
 *
 * @example
 * ```ts
 * const order = coatingPacks({ net: "43.2 gal", lossShare: "10 %", packVolume: "5 gal" });
 * order.toOrder.toString(); // "48 gal"
 * order.packs.toString(); // "10"
 * ```
 */
export const coatingPacks = /* @__PURE__ */ calculation({
  id: "film.coating-packs",
  title: "Packs of coating",
  given: {
    net: { is: "volume", unit: ["gal", "L"], symbol: "V", says: "coating on the wall", above: 0 },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "waste, on top of the net", atLeast: 0, below: 1, either: "allowance" },
    lossShare: { is: "ratio", unit: "%", symbol: "s", says: "share of what is bought that never ends on the wall", atLeast: 0, below: 1, either: "allowance" },
    packVolume: { is: "volume", unit: ["gal", "L"], symbol: "V_p", says: "volume of one pack", above: 0 },
  },
  steps: {
    toOrder: {
      is: "volume", unit: ["gal", "L"], symbol: "V_o", says: "coating with waste or loss, before rounding",
      formula: { waste: "net * (1 + waste)", lossShare: "net / (1 - lossShare)" }, basis: arithmetic,
    },
    packs: { is: "count", symbol: "N", says: "whole packs to order", formula: "ceil(toOrder / packVolume)", basis: arithmetic },
  },
});
