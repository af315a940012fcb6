import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { smoothFace } from "../data/film.js";
import { filmSpreadingRate } from "./film-spreading-rate.js";
import { say } from "./refusals.js";
import { wetFilm as wetFilmFor } from "./wet-film.js";

/** How far a coating goes, and the wet film it goes on in. */
export interface SpreadingRates {
  readonly wetFilm: Quantity<"length">;
  readonly firstCoat: Quantity<"spreadingRate">;
  readonly furtherCoat: Quantity<"spreadingRate">;
  readonly allCoats: Quantity<"spreadingRate">;
}

/**
 * How far a volume of coating goes, from the wet film of a coat, or from its dry film and the solids by volume. The texture
 * of the face is filled by the first coat alone. The volume is that of the coating as bought: thinner adds no film to it.
 *
 * @example
 * ```ts
 * const rate = spreadingRate({ dryFilm: "1 mil", volumeSolids: "100 %", coats: 1 });
 * rate.allCoats.toString(); // "1604.166667 ft2/gal"
 * rate.wetFilm.toString(); // "1 mil"
 * ```
 */
export const spreadingRate = /* @__PURE__ */ composed({
  id: "film.spreading-rate",
  title: "Spreading rate",
  given: {
    wetFilm: { is: "length", unit: ["mil", "um"], symbol: "t_w", says: "wet film of one coat", above: 0, either: "film" },
    dryFilm: { is: "length", unit: ["mil", "um"], symbol: "t_d", says: "dry film of one coat", above: 0, either: "film" },
    volumeSolids: { is: "ratio", unit: "%", symbol: "v", says: "solids by volume, not by weight, from the data sheet; with dryFilm", above: 0, atMost: 1, optional: true },
    coats: { is: "count", symbol: "n", says: "coats", atLeast: 1, whole: true },
    firstCoatTexture: { is: "length", unit: ["mil", "um"], symbol: "t_t", says: "wet coating that the texture of the face takes up, spread out even", atLeast: 0, default: "0 mil", basis: smoothFace },
  },
  run: ({ wetFilm, dryFilm, volumeSolids, coats, firstCoatTexture }, work) => {
    const spread = (film: Quantity<"length">): SpreadingRates => {
      const { firstCoat, furtherCoat, allCoats } = work.part(filmSpreadingRate, { wetFilm: film, coats, firstCoatTexture }).answers;
      return { wetFilm: film, firstCoat, furtherCoat, allCoats };
    };
    if (wetFilm !== undefined) {
      if (volumeSolids !== undefined) work.refuse({ code: "refused", path: ["volumeSolids"], given: "", wanted: say("solidsWithDryFilm") });
      return spread(wetFilm);
    }
    if (dryFilm === undefined || volumeSolids === undefined) {
      return work.refuse({ code: "missing", path: ["volumeSolids"], says: "solids by volume", given: "", wanted: say("dryFilmNeedsSolids") });
    }
    return spread(work.part(wetFilmFor, { dryBuild: dryFilm, volumeSolids, thinner: 0, coats: 1 }).answers.wetFilm);
  },
});
