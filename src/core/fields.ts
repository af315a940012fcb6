import { basisText, type Basis } from "./basis.js";
import type { ChoiceDefinition, Entries, EntryDefinition, GivenDefinition } from "./definition.js";
import type { DimensionName } from "./dimensions.js";
import { beyondLimit, limitsOf, writtenQuantity } from "./limits.js";
import { choiceOf, shown, type Trouble } from "./problems.js";
import type { Quantity } from "./quantity.js";
import { howToWrite, readQuantity } from "./read-quantity.js";
import { findUnit, type UnitCode, unitSymbol } from "./units.js";
import type { Wanted } from "./wording.js";

/** The units a value is shown in, as codes of the table: one, or that of the United States and that of the SI. */
export type ShownUnits = readonly [UnitCode, ...UnitCode[]];

/** Reads the units a definition names. */
export function shownUnits({ is, unit = is }: { readonly is: DimensionName; readonly unit?: string | readonly string[] }): ShownUnits {
  const codes = [unit].flat().map((text) => {
    const code = findUnit(is, text);
    if (code === undefined) throw new Error(`"${text}" is no unit of ${is}`);
    return code;
  });
  return Object.freeze(codes) as readonly UnitCode[] as ShownUnits;
}

/** What a line tells of an input, a constant or a step, whatever its value. */
export interface Told<Shown = readonly UnitCode[]> {
  readonly name: string;
  readonly says: string;
  readonly symbol: string;
  readonly shown: Shown;
  readonly basis?: Basis | undefined;
}

/** What can be read of an input. */
export type Value = Quantity | string | number | boolean;

/** What is wrong with one input; where it is, and what it is, are added. */
export type Fault = Pick<Trouble, "code" | "given" | "wanted" | "found">;

/** One input, made ready for reading. */
export interface Field extends Told, OfKind {
  readonly optional: boolean;
  readonly assumption: string;
}

/** What quantities and choices have each in their own way. */
interface OfKind {
  /** The units it is shown in; a choice has none. */
  readonly shown: readonly UnitCode[];
  readonly fallback: Value | undefined;
  /** How to write it. */
  readonly wanted: Wanted;
  readonly read: (given: unknown) => Value | Fault;
}

/** The inputs of a calculation or a composed function, made ready for reading. */
export interface Fields {
  readonly all: readonly Field[];
  readonly names: readonly string[];
  /** The inputs that exclude each other, under their common word. */
  readonly pairs: readonly { readonly word: string; readonly names: readonly string[] }[];
}

/** Makes the inputs of a composed function ready for reading: quantities and choices. */
export function fieldsOf(entries: Entries): Fields {
  return fieldsWith((row: EntryDefinition, name) => ("oneOf" in row ? choiceField(row) : quantityField(row, name)), entries);
}

/** Makes inputs ready for reading; a calculation, which has no choices, does not bring their reader. */
export function fieldsWith<Row extends EntryDefinition>(ofKind: (row: Row, name: string) => OfKind, entries: Readonly<Record<string, Row>>): Fields {
  const pairs = new Map<string, string[]>();
  const all = Object.entries(entries).map(([name, row]): Field => {
    if (row.either !== undefined) pairs.set(row.either, [...(pairs.get(row.either) ?? []), name]);
    const assumption = row.default === undefined ? "" : `${name} (${row.says}) taken as ${String(row.default)}: ${basisText(row.basis)}`;
    const { shown, fallback, wanted, read } = ofKind(row, name);
    const optional = row.optional === true || row.either !== undefined;
    // All alike in shape, which the engine reads fastest.
    return { name, says: row.says, symbol: "symbol" in row ? row.symbol : name, shown, basis: row.basis, optional, assumption, fallback, wanted, read };
  });
  return { all, names: Object.keys(entries), pairs: [...pairs].map(([word, names]) => ({ word, names })) };
}

/** A quantity as an input. */
export function quantityField(row: GivenDefinition, name: string): OfKind {
  const shown = shownUnits(row);
  const limits = limitsOf(row, name);
  const place = { path: [], propose: shown.map(unitSymbol) };
  return {
    shown,
    fallback: row.default === undefined ? undefined : writtenQuantity(row.is, row.default, name),
    wanted: howToWrite(row.is, place.propose, shown.length),
    read(value) {
      const read = readQuantity(row.is, value, place);
      if ("code" in read) return read;
      return beyondLimit(limits, read) ?? read;
    },
  };
}

function choiceField(row: ChoiceDefinition): OfKind {
  const wanted = { kind: "choice", of: row.oneOf.map(String) } as const;
  const read = (given: unknown): Value | Fault => row.oneOf.find((one) => one === given) ?? { code: "notAChoice", given: shown(given), wanted: choiceOf(given, wanted.of) };
  return { shown: Object.freeze([]), fallback: row.default, wanted, read };
}
