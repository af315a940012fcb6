import { calculation } from "../core/calculation.js";
import { smoothFace, spreadVolume } from "../data/film.js";

/**
 * Coating that ends on an area in all its coats, with what the texture of the face takes up in the first.
 *
 * @example
 * ```ts
 * coatingVolume({ area: "1540 ft2", wetFilm: "20 mil", coats: 2, firstCoatTexture: "5 mil" }).net.toString(); // "43.2 gal"
 * ```
 */
export const coatingVolume = /* @__PURE__ */ calculation({
  id: "film.coating-volume",
  title: "Coating on an area",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "area to be coated, returns in", above: 0 },
    wetFilm: { is: "length", unit: ["mil", "um"], symbol: "t_w", says: "wet film of one coat, unthinned", above: 0 },
    coats: { is: "count", symbol: "n", says: "coats", atLeast: 1, whole: true },
    firstCoatTexture: { is: "length", unit: ["mil", "um"], symbol: "t_t", says: "wet coating that the texture of the face takes up, spread out even", atLeast: 0, default: "0 mil", basis: smoothFace },
  },
  steps: {
    net: { is: "volume", unit: ["gal", "L"], symbol: "V", says: "coating on the wall", formula: "area * (coats * wetFilm + firstCoatTexture)", basis: spreadVolume },
  },
});
