import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Area and coating of a detail band: a fillet, a corner, the band round an opening, a board joint.
 *
 * @example
 * ```ts
 * const corners = detailBand({ length: "77 ft", bandWidth: "6 in", wetFilm: "40 mil", coats: 1 });
 * corners.area.toString(); // "38.5 ft2"
 * corners.volume.toString(); // "0.96 gal"
 * ```
 */
export const detailBand = /* @__PURE__ */ calculation({
  id: "membrane.detail-band",
  title: "Detail band of a barrier",
  given: {
    length: { is: "length", unit: ["ft", "m"], symbol: "l", says: "length of the band", above: 0 },
    bandWidth: { is: "length", unit: ["in", "mm"], symbol: "b", says: "width of the band, both sides of its line", above: 0 },
    wetFilm: { is: "length", unit: ["mil", "um"], symbol: "t_w", says: "wet film of one coat of the band, unthinned", above: 0 },
    coats: { is: "count", symbol: "n", says: "coats of the band", atLeast: 1, whole: true },
  },
  steps: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", formula: "length * bandWidth", basis: geometry },
    volume: { is: "volume", unit: ["gal", "L"], symbol: "V", says: "coating in the band", formula: "area * wetFilm * coats", basis: geometry },
  },
});
