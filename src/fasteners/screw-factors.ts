import type { Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { quantity } from "../core/read-quantity.js";
import { screwFactors } from "../data/fasteners.js";

/** Editions whose factors are on file. */
export type ScrewEdition = keyof typeof screwFactors;

/** Safety factor and resistance factor of an edition for one way a screw may fail. */
export function factorsOf(work: Work, edition: ScrewEdition, state: "pullOut" | "pullOver" | "tiltingAndBearing"): Factors {
  const { basis, [state]: factors } = screwFactors[edition];
  work.stand(basis);
  return { safetyFactor: quantity("ratio", factors.safety), resistanceFactor: quantity("ratio", factors.resistance) };
}

/** Divide the nominal strength by the one for allowable loads, multiply it by the other for strength-level loads. */
export interface Factors {
  readonly safetyFactor: Quantity<"ratio">;
  readonly resistanceFactor: Quantity<"ratio">;
}
