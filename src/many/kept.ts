import type { Amount } from "../core/amount.js";
import { formulasFor } from "../core/prepared.js";
import type { Definition } from "../core/definition.js";
import { amountOf } from "../core/quantity.js";
import { type Fields, fieldsWith, quantityField, shownUnits } from "../core/fields.js";
import { writtenQuantity } from "../core/limits.js";
import type { UnitCode } from "../core/units.js";
import { type Edges, edgesOf } from "./edges.js";
import { type FlatProgram, flatProgram } from "./flat-program.js";

/** What is kept of a definition from call to call. */
export interface Kept {
  readonly fields: Fields;
  readonly flats: Map<string, FlatProgram>;
  readonly formulas: Map<string, ReturnType<typeof formulasFor>>;
  readonly constants: readonly (readonly [name: string, amount: Amount])[];
  readonly inputEdges: ReadonlyMap<string, Edges>;
  readonly steps: readonly { readonly name: string; readonly unit: UnitCode; readonly limits: Edges }[];
}

const kept = new WeakMap<Definition, Kept>();

/** What is kept of a definition; made at its first use. */
export function keptOf(definition: Definition): Kept {
  let known = kept.get(definition);
  if (known === undefined) {
    known = {
      fields: fieldsWith(quantityField, definition.given),
      flats: new Map(),
      formulas: new Map(),
      constants: Object.entries(definition.constants ?? {}).map(([name, row]) => [name, amountOf(writtenQuantity(row.is, row.value, name))]),
      inputEdges: new Map(Object.entries(definition.given).map(([name, row]) => [name, edgesOf(row, name)])),
      steps: Object.entries(definition.steps).map(([name, row]) => ({ name, unit: shownUnits(row)[0], limits: edgesOf(row, name) })),
    };
    kept.set(definition, known);
  }
  return known;
}

/** The formulas of a definition for a choice of its pairs, by step. */
export function formulasOf({ formulas }: Kept, definition: Definition, chosen: readonly string[]): ReturnType<typeof formulasFor> {
  const key = chosen.join();
  const known = formulas.get(key) ?? formulasFor(definition, chosen);
  formulas.set(key, known);
  return known;
}

/** The flat program of a definition for a choice of its pairs. */
export function flatOf({ flats }: Kept, definition: Definition, chosen: readonly string[]): FlatProgram {
  const key = chosen.join();
  const known = flats.get(key);
  if (known !== undefined) return known;
  const flat = flatProgram(definition, chosen);
  flats.set(key, flat);
  return flat;
}
