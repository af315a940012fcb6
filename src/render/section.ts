import type { Formula } from "../core/formula.js";
import type { Figure, Working } from "../core/working.js";

/** A symbol of a formula, which typeset targets set with its subscript. */
export interface SymbolText {
  readonly symbol: string;
}

/** What stands in a cell: words, figures and symbols in a row. */
export type Cell = readonly (string | Figure | SymbolText)[];

/** A table under its title; its first column says what a row is. */
export interface Table {
  readonly kind: "table";
  readonly title: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
  /** Whether its head tells what the cells alone do not. */
  readonly needsHead: boolean;
}

/** A list under its title; numbered where steps and values name its lines by number. */
export interface List {
  readonly kind: "list";
  readonly title: string;
  readonly lines: readonly string[];
  readonly numbered: boolean;
}

/** A step worked out, in one system of units or in both. */
export interface WorkedStep {
  readonly says: string;
  readonly name: string;
  readonly formula: Formula;
  /** One way, or one for each system of units where the two differ. */
  readonly ways: readonly Way[];
  readonly governedBy?: string;
  readonly differs?: string;
  /** The number of what it stands on in the list of sources. */
  readonly source?: number;
}

/** A step with its numbers, in one system of units. */
export interface Way {
  /** The system, where there are two. */
  readonly title: string;
  readonly working: Working;
}

/** The steps of a solution; blank where they are to be worked out on the sheet. */
export interface Steps {
  readonly kind: "steps";
  readonly title: string;
  readonly steps: readonly WorkedStep[];
  readonly blank: boolean;
  /** How a name is written in its formulas: by itself or as a symbol. */
  readonly named: (name: string) => string | SymbolText;
}

export type Block = Table | List | Steps;

/** A solution as a reader sees it: a title and blocks, which each target writes in its own way. */
export interface Section {
  readonly title: string;
  readonly blocks: readonly Block[];
  readonly parts: readonly Section[];
}
