import { calculation } from "../core/calculation.js";
import { smoothFace, spreadVolume } from "../data/film.js";

/**
 * How far a volume of coating goes: in the first coat, which also fills the texture of the face, in each further coat, and
 * in all coats together.
 *
 * @example
 * ```ts
 * const rate = filmSpreadingRate({ wetFilm: "20 mil", coats: 2, firstCoatTexture: "5 mil" });
 * rate.firstCoat.toString(); // "64.16666667 ft2/gal"
 * rate.furtherCoat.toString(); // "80.20833333 ft2/gal"
 * ```
 */
export const filmSpreadingRate = /* @__PURE__ */ calculation({
  id: "film.film-spreading-rate",
  title: "Spreading rate of a wet film",
  given: {
    wetFilm: { is: "length", unit: ["mil", "um"], symbol: "t_w", says: "wet film of one coat", above: 0 },
    coats: { is: "count", symbol: "n", says: "coats", atLeast: 1, whole: true },
    firstCoatTexture: { is: "length", unit: ["mil", "um"], symbol: "t_t", says: "wet coating that the texture of the face takes up, spread out even", atLeast: 0, default: "0 mil", basis: smoothFace },
  },
  steps: {
    firstCoat: { is: "spreadingRate", unit: ["ft2/gal", "m2/L"], symbol: "S_1", says: "area per volume of the first coat", formula: "1 / (wetFilm + firstCoatTexture)", basis: spreadVolume },
    furtherCoat: { is: "spreadingRate", unit: ["ft2/gal", "m2/L"], symbol: "S_2", says: "area per volume of each further coat", formula: "1 / wetFilm", basis: spreadVolume },
    allCoats: { is: "spreadingRate", unit: ["ft2/gal", "m2/L"], symbol: "S", says: "area per volume of all coats together", formula: "1 / (coats * wetFilm + firstCoatTexture)", basis: spreadVolume },
  },
  cautions: ["A spreading rate has no loss in it; what stays in pails, rollers and hoses comes off what a pack covers."],
});
