import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";

/**
 * Coating to order for an area: the net on the wall, the same with waste or loss, and whole packs. `waste` goes on top of
 * the net; `lossShare` is the part of what is bought that never ends on the wall. Exactly one of them is given.
 *
 * @example
 * ```ts
 * const order = coatingOrder({ area: "3850 ft2", wetFilm: "35 mil", coats: 1, lossShare: "30 %", packVolume: "5 gal" });
 * order.net.toString(); // "84 gal"
 * order.toOrder.toString(); // "120 gal"
 * order.packs.toString(); // "24"
 * ```
 */
export const coatingOrder = /* @__PURE__ */ calculation({
  id: "film.coating-order",
  title: "Coating to order",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "area to be coated, returns in", above: 0 },
    wetFilm: { is: "length", unit: ["mil", "um"], symbol: "t_w", says: "wet film of one coat, unthinned", above: 0 },
    coats: { is: "count", symbol: "n", says: "coats", atLeast: 1, whole: true },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "waste, on top of the net", atLeast: 0, below: 1, either: "allowance" },
    lossShare: { is: "ratio", unit: "%", symbol: "s", says: "share of what is bought that never ends on the wall", atLeast: 0, below: 1, either: "allowance" },
    packVolume: { is: "volume", unit: ["gal", "L"], symbol: "V_p", says: "volume of one pack", above: 0 },
  },
  steps: {
    net: { is: "volume", unit: ["gal", "L"], symbol: "V", says: "coating on the wall", formula: "area * wetFilm * coats", basis: geometry },
    toOrder: {
      is: "volume", unit: ["gal", "L"], symbol: "V_o", says: "coating with waste or loss, before rounding",
      formula: { waste: "net * (1 + waste)", lossShare: "net / (1 - lossShare)" }, basis: arithmetic,
    },
    packs: { is: "count", symbol: "N", says: "whole packs to order", formula: "ceil(toOrder / packVolume)", basis: arithmetic },
  },
  cautions: ["A rough or porous face takes more in its first coat: see film.spreading-rate, and set the loss by a test patch."],
});
