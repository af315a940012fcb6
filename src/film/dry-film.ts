import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { solidsOfFilm, thinnedSolids, unthinned } from "../data/film.js";

/**
 * Dry film that a wet film leaves: of one coat, and of all coats together.
 *
 * @example
 * ```ts
 * const film = dryFilm({ wetFilm: "20 mil", volumeSolids: "65 %", coats: 2 });
 * film.dryFilm.toString(); // "13 mil"
 * film.dryBuild.toString(); // "26 mil"
 * ```
 */
export const dryFilm = /* @__PURE__ */ calculation({
  id: "film.dry-film",
  title: "Dry film from wet film",
  given: {
    wetFilm: { is: "length", unit: ["mil", "um"], symbol: "t_w", says: "wet film of one coat", above: 0 },
    volumeSolids: { is: "ratio", unit: "%", symbol: "v", says: "solids by volume, not by weight, from the data sheet", above: 0, atMost: 1 },
    thinner: { is: "ratio", unit: "%", symbol: "q", says: "thinner added, as a share of the unthinned coating", atLeast: 0, below: 1, default: 0, basis: unthinned },
    coats: { is: "count", symbol: "n", says: "coats", atLeast: 1, whole: true },
  },
  steps: {
    solids: { is: "ratio", unit: "%", symbol: "v_a", says: "solids by volume as applied", formula: "volumeSolids / (1 + thinner)", basis: thinnedSolids },
    dryFilm: { is: "length", unit: ["mil", "um"], symbol: "t_d", says: "dry film of one coat", formula: "wetFilm * solids", basis: solidsOfFilm },
    dryBuild: { is: "length", unit: ["mil", "um"], symbol: "t_b", says: "dry film of all coats", formula: "coats * dryFilm", basis: arithmetic },
  },
  cautions: ["Some flat coatings dry thicker than their solids tell: a wet film steers the work, a dry film is what is accepted."],
});
