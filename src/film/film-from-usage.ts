import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { spreadVolume, thinnedSolids, unthinned } from "../data/film.js";

/**
 * The average film that the empty pails prove, wet and dry, beside the dry film that was specified.
 *
 * @example
 * ```ts
 * const proved = filmFromUsage({ volumeUsed: "40 gal", area: "1540 ft2", lossShare: "10 %", volumeSolids: "60 %", coats: 2, specified: "24 mil" });
 * proved.wetFilm.toString(); // "18.75 mil"
 * proved.dryBuild.toString(); // "22.5 mil"
 * proved.builtShare.toString(); // "93.75 %"
 * ```
 */
export const filmFromUsage = /* @__PURE__ */ calculation({
  id: "film.film-from-usage",
  title: "Average film from the volume used",
  given: {
    volumeUsed: { is: "volume", unit: ["gal", "L"], symbol: "V", says: "coating used, by empty pails, before thinning", above: 0 },
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "area it went on, returns in", above: 0 },
    lossShare: { is: "ratio", unit: "%", symbol: "s", says: "share of what was used that did not end on the wall", atLeast: 0, below: 1 },
    volumeSolids: { is: "ratio", unit: "%", symbol: "v", says: "solids by volume, not by weight, from the data sheet", above: 0, atMost: 1 },
    thinner: { is: "ratio", unit: "%", symbol: "q", says: "thinner added, as a share of the unthinned coating", atLeast: 0, below: 1, default: 0, basis: unthinned },
    coats: { is: "count", symbol: "n", says: "coats", atLeast: 1, whole: true },
    specified: { is: "length", unit: ["mil", "um"], symbol: "t_s", says: "dry film specified for all coats", above: 0 },
  },
  steps: {
    onWall: { is: "volume", unit: ["gal", "L"], symbol: "V_w", says: "coating on the wall", formula: "volumeUsed * (1 - lossShare)", basis: arithmetic },
    wetFilm: { is: "length", unit: ["mil", "um"], symbol: "t_w", says: "average wet film of one coat", formula: "onWall * (1 + thinner) / area / coats", basis: spreadVolume },
    dryBuild: { is: "length", unit: ["mil", "um"], symbol: "t_b", says: "average dry film of all coats", formula: "onWall * volumeSolids / area", basis: thinnedSolids },
    builtShare: { is: "ratio", unit: "%", symbol: "k", says: "average dry film as a share of the film specified", formula: "dryBuild / specified", basis: arithmetic },
  },
  cautions: ["An average: it holds what fills the texture of the face, and it hides a thin place behind a thick one."],
});
