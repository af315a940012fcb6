import type { Basis } from "./basis.js";
import type { Formula } from "./formula.js";
import type { Problem } from "./problems.js";
import type { Quantity } from "./quantity.js";
import type { UnitCode } from "./units.js";

/** A value with its name: an input, a constant, or what a step gave. */
export interface Line {
  readonly name: string;
  readonly says: string;
  readonly symbol: string;
  /** A quantity; a word or a yes or no where a composed function takes one. */
  readonly value: Quantity | string | number | boolean;
  /** The units a reader may see it in: one for all, or that of the United States and that of the SI. */
  readonly shown: readonly UnitCode[];
  /** What the value stands on. */
  readonly basis?: Basis;
  /** True where a default was taken because nothing was given. */
  readonly assumed: boolean;
}

/** A step of a worked solution: a line with the formula that gave it. */
export interface Step extends Line {
  readonly value: Quantity;
  readonly basis: Basis;
  readonly formula: Formula;
  /** Whether the value is exact; print `≈` where it is not. */
  readonly exact: boolean;
  /** Where the formula is a min or a max, the argument that won. */
  readonly governedBy?: string;
  /** Where it departs from its source, and why. */
  readonly differs?: string;
}

/** A calculation worked out: what was given, each step, the answers, and what they stand on. All of it is frozen. */
export interface Solution<A = unknown> {
  readonly id: string;
  readonly title: string;
  readonly given: readonly Line[];
  readonly constants: readonly Line[];
  readonly steps: readonly Step[];
  readonly answers: A;
  /** What a composed function worked out on its way, in order. */
  readonly parts: readonly Solution[];
  readonly assumptions: readonly string[];
  readonly cautions: readonly string[];
  readonly bases: readonly Basis[];
}

/** What `.try` gives: the solution, or every problem of the input. */
export type Attempt<A> = { readonly ok: true; readonly solution: Solution<A> } | { readonly ok: false; readonly problems: readonly Problem[] };
