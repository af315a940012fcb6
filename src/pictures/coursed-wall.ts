import type { Readable } from "../core/read-quantity.js";
import type { BondPattern } from "../layout/bond-pattern.js";
import type { Coursing } from "../layout/coursing.js";
import type { MovementLayout } from "../movement/movement-layout.js";

/** A part of a wall with its courses and its bond, from the left end of the wall and its foot. */
export interface CoursedPanel {
  readonly left: Readable<"length">;
  readonly bottom: Readable<"length">;
  /** The answers of `coursing` for the height of the panel. */
  readonly coursing: Coursing;
  /** The answers of `bondPattern` for its width. */
  readonly bond: BondPattern;
}

/** An opening: the box round it, from the left end of the wall and its foot. */
export interface OpeningBox {
  readonly left: Readable<"length">;
  readonly bottom: Readable<"length">;
  readonly width: Readable<"length">;
  readonly height: Readable<"length">;
}

/** What an elevation of a wall of units is drawn from. */
export interface CoursedWall {
  readonly width: Readable<"length">;
  readonly height: Readable<"length">;
  readonly panels: readonly CoursedPanel[];
  readonly openings?: readonly OpeningBox[];
  /** The answers of `movementLayout` for the same wall and openings. */
  readonly movement?: MovementLayout;
}
