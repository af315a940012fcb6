import type { Basis } from "../core/basis.js";
import type { Quantity } from "../core/quantity.js";
import type { Solution } from "../core/solution.js";
import { basisOf } from "./line-basis.js";

/** One line of an order list. */
export interface OrderLine {
  readonly item: string;
  /** The item that this is spare stock of. */
  readonly spareOf?: string;
  /** The layer of the assembly it belongs to. */
  readonly layer: string;
  /** What ends on the wall. */
  readonly net: Quantity;
  /** What is added for what does not; absent where nothing is. */
  readonly allowance?: Quantity<"ratio">;
  /** Whether the allowance goes on top of the net, or is a share of what is bought. */
  readonly allowanceIs?: "waste" | "lossShare";
  readonly toOrder: Quantity;
  /** What one pack holds. */
  readonly pack?: Quantity;
  readonly packs?: Quantity<"count">;
  /** What the last step of its solution stands on. */
  readonly basis: Basis;
  readonly solution: Solution;
}

/** A line before what follows from its solution is put in. */
export type LineDraft = Omit<OrderLine, "basis">;

/** Finishes a line. */
export function orderLine(draft: LineDraft): OrderLine {
  return { ...draft, basis: basisOf(draft.solution) };
}
