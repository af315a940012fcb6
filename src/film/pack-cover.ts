import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { spreadVolume } from "../data/film.js";

/**
 * Area that one pack covers at a spreading rate: mark it out, empty one pack on it, and keep it as the test patch.
 *
 * @example
 * ```ts
 * packCover({ packVolume: "5 gal", spreadingRate: "80 ft2/gal", lossShare: "10 %" }).area.toString(); // "360 ft2"
 * ```
 */
export const packCover = /* @__PURE__ */ calculation({
  id: "film.pack-cover",
  title: "Area one pack covers",
  given: {
    packVolume: { is: "volume", unit: ["gal", "L"], symbol: "V_p", says: "volume of one pack", above: 0 },
    spreadingRate: { is: "spreadingRate", unit: ["ft2/gal", "m2/L"], symbol: "S", says: "area per volume, without loss", above: 0 },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "waste, on top of the net", atLeast: 0, below: 1, either: "allowance" },
    lossShare: { is: "ratio", unit: "%", symbol: "s", says: "share of what is bought that never ends on the wall", atLeast: 0, below: 1, either: "allowance" },
  },
  steps: {
    onWall: {
      is: "volume", unit: ["gal", "L"], symbol: "V_w", says: "part of the pack that ends on the wall",
      formula: { waste: "packVolume / (1 + waste)", lossShare: "packVolume * (1 - lossShare)" }, basis: arithmetic,
    },
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "area the pack covers", formula: "onWall * spreadingRate", basis: spreadVolume },
  },
});
