import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { quantity } from "../core/read-quantity.js";
import { expansionTable } from "../data/movement.js";
import { thermalMovement } from "./thermal-movement.js";

/** Thermal movement by the least and the most coefficient of a material. */
export interface MaterialMovement {
  readonly low: Quantity<"length">;
  readonly high: Quantity<"length">;
  readonly lowExpansion: Quantity<"expansion">;
  readonly highExpansion: Quantity<"expansion">;
}

/**
 * Thermal movement of a material by the least and the most of the coefficients on file for it.
 *
 * @example
 * ```ts
 * const brick = thermalMovementByMaterial({ material: "clay brick", length: "20 ft", temperatureRange: "150 degF" });
 * brick.low.toString(); // "0.1296 in"
 * brick.high.toString(); // "0.144 in"
 * ```
 */
export const thermalMovementByMaterial = /* @__PURE__ */ composed({
  id: "movement.thermal-movement-by-material",
  title: "Thermal movement by material",
  cautions: ["Natural materials vary beyond the figures on file: where much hangs on it, take the coefficient of the material that was bought."],
  given: {
    material: {
      oneOf: ["clay brick", "cement mortar", "concrete of basalt", "concrete of gravel", "concrete of sandstone", "concrete, aggregate not known"],
      says: "material that moves; for concrete by its aggregate",
    },
    length: { is: "length", unit: ["ft", "m"], symbol: "L", says: "length that moves, from joint to joint", above: 0 },
    temperatureRange: { is: "temperatureDifference", unit: ["degF", "degC"], symbol: "T", says: "coldest to hottest of the surface itself, which runs far beyond the air", atLeast: 0 },
  },
  run: ({ material, length, temperatureRange }, work): MaterialMovement => {
    const { low, high, basis } = expansionTable[material];
    work.stand(basis);
    const [lowExpansion, highExpansion] = [quantity("expansion", low), quantity("expansion", high)];
    const by = (expansion: Quantity<"expansion">): Quantity<"length"> => work.part(thermalMovement, { length, expansion, temperatureRange }).answers.movement;
    return { low: by(lowExpansion), high: by(highExpansion), lowExpansion, highExpansion };
  },
});
