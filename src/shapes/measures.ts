import type { Quantity } from "../core/quantity.js";
import type { Point } from "./outline-fault.js";

/** One edge of a wall, from one corner to the next. */
export interface WallEdge {
  /** `base`, `left`, `right`, `top`, `left rake`, `right rake`, or `edge 1` and so on of a polygon. */
  readonly name: string;
  readonly from: Point;
  readonly to: Point;
  readonly length: Quantity<"length">;
  /** How far the middle of a curved edge stands over its ends; a straight edge has none. */
  readonly rise?: Quantity<"length">;
}

/** The measures of a wall. */
export interface WallMeasures {
  readonly area: Quantity<"area">;
  readonly perimeter: Quantity<"length">;
  /** Greatest width. */
  readonly width: Quantity<"length">;
  /** Greatest height. */
  readonly height: Quantity<"length">;
  /** The edges in order: counter-clockwise from the lower left corner, or as the points of a polygon go. */
  readonly edges: readonly WallEdge[];
}

/** The measures of an opening. Its sides, `sill`, `jambs`, `head` and `round`, add up to its perimeter; a side it has not is nought. */
export interface OpeningMeasures {
  readonly area: Quantity<"area">;
  readonly perimeter: Quantity<"length">;
  /** Greatest width. */
  readonly width: Quantity<"length">;
  /** Greatest height. */
  readonly height: Quantity<"length">;
  readonly sill: Quantity<"length">;
  /** Both jambs together. */
  readonly jambs: Quantity<"length">;
  /** The level head, or the length of the arch. */
  readonly head: Quantity<"length">;
  /** All round a round opening, which has neither sill nor jambs nor head. */
  readonly round: Quantity<"length">;
}
