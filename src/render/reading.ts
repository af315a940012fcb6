import type { Reading } from "../core/working.js";

/** How a reader wants a solution told. */
export interface RenderOptions extends Reading {
  /** Formulas in the names of the inputs, or in their symbols. Names unless told otherwise. */
  readonly formulas?: "names" | "symbols";
  /** Whether the parts of a composed function are worked out too. They are unless told otherwise. */
  readonly parts?: boolean;
}
