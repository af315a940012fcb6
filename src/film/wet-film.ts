import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { solidsOfFilm, thinnedSolids, unthinned } from "../data/film.js";

/**
 * Wet film to put on in each coat for a dry film that is wanted of all coats together.
 *
 * @example
 * ```ts
 * const film = wetFilm({ dryBuild: "26 mil", volumeSolids: "65 %", coats: 2 });
 * film.wetFilm.toString(); // "20 mil"
 * ```
 */
export const wetFilm = /* @__PURE__ */ calculation({
  id: "film.wet-film",
  title: "Wet film for a dry film",
  given: {
    dryBuild: { is: "length", unit: ["mil", "um"], symbol: "t_b", says: "dry film wanted of all coats", above: 0 },
    volumeSolids: { is: "ratio", unit: "%", symbol: "v", says: "solids by volume, not by weight, from the data sheet", above: 0, atMost: 1 },
    thinner: { is: "ratio", unit: "%", symbol: "q", says: "thinner added, as a share of the unthinned coating", atLeast: 0, below: 1, default: 0, basis: unthinned },
    coats: { is: "count", symbol: "n", says: "coats", atLeast: 1, whole: true },
  },
  steps: {
    solids: { is: "ratio", unit: "%", symbol: "v_a", says: "solids by volume as applied", formula: "volumeSolids / (1 + thinner)", basis: thinnedSolids },
    dryFilm: { is: "length", unit: ["mil", "um"], symbol: "t_d", says: "dry film of one coat", formula: "dryBuild / coats", basis: arithmetic },
    wetFilm: { is: "length", unit: ["mil", "um"], symbol: "t_w", says: "wet film of one coat", formula: "dryFilm / solids", basis: solidsOfFilm },
  },
  cautions: ["Some flat coatings dry thicker than their solids tell: a wet film steers the work, a dry film is what is accepted."],
});
