import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Cleaner for a face, sold as it is used or to be diluted: the mix that goes on the wall, its concentrate and its water, and
 * the packs to order.
 *
 * @example
 * ```ts
 * const wash = cleanerOrder({ area: "1200 ft2", applications: 1, spreadingRate: "150 ft2/gal", waterParts: 3, waste: "10 %", packVolume: "1 gal" });
 * wash.mix.toString(); // "8 gal"
 * wash.concentrate.toString(); // "2 gal"
 * wash.water.toString(); // "6 gal"
 * wash.packs.toString(); // "3"
 * ```
 */
export const cleanerOrder = /* @__PURE__ */ calculation({
  id: "film.cleaner-order",
  title: "Cleaner for a face",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "face to be cleaned, the trial patch among it", above: 0 },
    applications: { is: "count", symbol: "n", says: "times it is put on", atLeast: 1, whole: true },
    spreadingRate: { is: "spreadingRate", unit: ["ft2/gal", "m2/L"], symbol: "S", says: "area that a volume of the mix as it is used covers, from the label or the trial patch", above: 0 },
    waterParts: { is: "ratio", symbol: "r", says: "parts of water to one of concentrate by volume, from the label; nought where it is used as it comes", atLeast: 0 },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "waste, on top of the net", atLeast: 0, below: 1 },
    packVolume: { is: "volume", unit: ["gal", "L"], symbol: "V_p", says: "concentrate in one pack", above: 0 },
  },
  steps: {
    mix: { is: "volume", unit: ["gal", "L"], symbol: "V_m", says: "mix on the wall", formula: "area * applications / spreadingRate", basis: arithmetic },
    concentrate: { is: "volume", unit: ["gal", "L"], symbol: "V_c", says: "concentrate in it", formula: "mix / (1 + waterParts)", basis: arithmetic },
    water: { is: "volume", unit: ["gal", "L"], symbol: "V_w", says: "water in it; what wets the wall before and rinses it after comes besides", formula: "concentrate * waterParts", basis: arithmetic },
    toOrder: { is: "volume", unit: ["gal", "L"], symbol: "V_o", says: "concentrate with waste", formula: "concentrate * (1 + waste)", basis: arithmetic },
    packs: { is: "count", symbol: "N", says: "whole packs to order", formula: "ceil(toOrder / packVolume)", basis: arithmetic },
  },
  cautions: [
    "Which cleaner, how strong and how long is for its label and the maker of the stone to say; acid etches stone that holds lime and burns skin and eyes.",
    "First a trial patch of 10 to 20 ft2, judged after a week.",
  ],
});
