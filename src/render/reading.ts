import type { AnyCallable } from "../core/callable.js";
import type { System } from "../core/units.js";

/** How a reader wants a solution told. */
export interface RenderOptions {
  /** The system of units, or both side by side; that of the inputs unless told otherwise. */
  readonly units?: System | "both";
  /** Significant digits of results; operands have two more. 6 unless told otherwise. */
  readonly digits?: number;
  /** Formulas in the names of the inputs, or in their symbols. Names unless told otherwise. */
  readonly formulas?: "names" | "symbols";
  /** Whether the parts of a composed function are worked out too. They are unless told otherwise. */
  readonly parts?: boolean;
  /** All of it, the problem alone (what is asked and given), or a sheet with blanks to work it on. All unless told otherwise. */
  readonly show?: "all" | "problem" | "sheet";
  /** The names of the steps that are asked; those that no other step uses unless told otherwise. */
  readonly asked?: readonly string[];
  /** What gave the solution, so that its limits of use are told. */
  readonly of?: AnyCallable;
  /** Further lists at the end, such as usual mistakes. */
  readonly notes?: readonly Note[];
}

/** A list of the writer's own, under its title. */
export interface Note {
  readonly title: string;
  readonly lines: readonly string[];
}

/** Whether a whole document is wanted, or a part to put into one. */
export interface PageOptions {
  /** A whole document that prints as it is; a part to put into one unless told otherwise. */
  readonly page?: boolean;
}
