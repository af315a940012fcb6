import type { DimensionName } from "../../core/dimensions.js";
import type { Quantity } from "../../core/quantity.js";

/** One column of a sheet: what stands in it, and the names under which people have it. */
export interface Column {
  /** A quantity by its dimension; a text; one of some words; yes or no. */
  readonly is: DimensionName | "text" | "yes or no" | readonly string[];
  /** Its names in plain words, in small letters. */
  readonly names: readonly string[];
  /** What it is, for the one who has to mend it. */
  readonly says: string;
  /** Whether the column, and each cell of it, may be left out. */
  readonly optional?: true;
  /** Whether it may stand there several times, as `reading 1` and `reading 2`; what is read is a list. */
  readonly several?: true;
}

/** The columns of a sheet by the names of what is read. */
export type Columns = Readonly<Record<string, Column>>;

type OneOf<C extends Column> = C["is"] extends DimensionName
  ? Quantity<C["is"]>
  : C["is"] extends readonly (infer Word)[]
    ? Word
    : C["is"] extends "yes or no"
      ? boolean
      : string;

type ValueOf<C extends Column> = C extends { readonly several: true } ? readonly OneOf<C>[] : OneOf<C>;

type OptionalKeys<C extends Columns> = { [K in keyof C]: C[K] extends { readonly optional: true } ? K : never }[keyof C];

/** What is read of one row. */
export type RowOf<C extends Columns> = { readonly [K in Exclude<keyof C, OptionalKeys<C>>]: ValueOf<C[K]> } & {
  readonly [K in OptionalKeys<C>]?: ValueOf<C[K]>;
};
