import type { Quantity } from "../core/quantity.js";
import type { Change } from "./worked-wrong.js";

/** The usual mistakes, by name. */
export type MistakeKind =
  | "conversionLeftOut" | "conversionOfLength" | "percentAsNumber" | "degreesAsRadians"
  | "nominalSize" | "wasteTwice" | "wasteAsDivision" | "wasteLeftOut" | "lossTwice" | "lossAsWaste" | "lossLeftOut"
  | "roundedEarly" | "roundedUpTwice" | "roundedToNearest" | "roundedTheWrongWay"
  | "wrongOneGoverns" | "logarithmOfOtherBase";

/** A mistake before it is worked out. */
export interface Slip {
  readonly kind: MistakeKind;
  readonly says: string;
  readonly change: Change;
}

/** A usual mistake with the answer that it gives; where several give the same answer, all of them. */
export interface Mistake {
  readonly kinds: readonly MistakeKind[];
  /** What was done wrong, one line a kind. */
  readonly says: readonly string[];
  readonly answer: Quantity;
}
