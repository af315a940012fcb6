import * as z from "zod/mini";
import type { DimensionName } from "../core/dimensions.js";
import { isOpen } from "../core/open-amount.js";
import { problem, type Trouble } from "../core/problems.js";
import { amountOf, type Quantity } from "../core/quantity.js";
import { beyondLimit, type Limit, limitsOf } from "../core/limits.js";
import { readQuantity } from "../core/read-quantity.js";
import type { Words } from "../core/wording.js";

/** How a quantity in nested input is limited, and what it is called in a problem. */
export interface FieldRow {
  readonly says: string;
  readonly above?: 0 | string;
  readonly atLeast?: 0 | string;
  readonly below?: number | string;
  readonly atMost?: number | string;
  readonly whole?: true;
}

/** What nested input takes for a quantity: a text with its unit, `{ value, unit }`, a number for a ratio or a count. */
export type QuantityInput<D extends DimensionName = DimensionName> =
  | string
  | Quantity<D>
  | { readonly value: number | string; readonly unit: string }
  | (D extends "count" | "ratio" ? number : never);

/** A quantity in nested input, as a zod type: read by the same reader as everything else, with the same problems. */
export type QuantityField<D extends DimensionName> = z.ZodMiniPipe<z.ZodMiniCustom<QuantityInput<D>, QuantityInput<D>>, z.ZodMiniTransform<Quantity<D>, QuantityInput<D>>>;

/**
 * A quantity inside nested input.
 *
 * @param dimension - the dimension by name
 * @param row - what it is, and its limits
 * @returns a zod type that takes what the reader takes, and gives a quantity
 * @example
 * ```ts
 * const opening = z.strictObject({ width: quantityField("length", { says: "width of the opening", above: 0 }) });
 * ```
 */
export function quantityField<D extends DimensionName>(dimension: D, row: FieldRow): QuantityField<D> {
  let limits: readonly Limit[] | undefined;
  const read = z.transform((given: QuantityInput<D>, context): Quantity<D> => {
    const found = readLimited(dimension, given, row, (limits ??= limitsOf({ is: dimension, ...row }, row.says)));
    if (!("code" in found)) return found;
    context.issues.push({ code: "custom", input: given, message: "", params: { problem: problem(found) } });
    return z.NEVER;
  });
  // Anything is taken here, so that the reader below says of all of it what is wrong.
  const taken = z.custom<QuantityInput<D>>(() => true);
  described.set(taken, { is: dimension, ...row });
  return z.pipe(taken, read);
}

/** A name in nested input: of an elevation, an item, a batch. It stands in messages, and so is no longer than a line. */
export function nameField(): z.ZodMiniString<string> {
  return z.string().check(z.maxLength(80));
}

/** What a part of nested input is and, of a text that has to be written in its own way, how. */
export interface PartRow {
  readonly says: string;
  readonly wanted?: Words;
}

const told = new WeakMap<object, PartRow>();

/**
 * Says what a part of nested input is: in its problems, as the title of its JSON Schema, and in an editor. A part that stands
 * in several places is another thing in each, so this gives a copy of the schema.
 *
 * @example
 * ```ts
 * const opening = z.strictObject({ toBase: telling("whether it reaches the foot of the wall", z.boolean()) });
 * ```
 */
export function telling<S extends z.ZodMiniType>(words: string, schema: S): S {
  const copy = schema.clone();
  told.set(copy, { says: words });
  return copy;
}

/** A text inside nested input that has to be written in its own way, such as a time by the clock; who reads it says what is wrong in it. */
export function textField(words: string, wanted: Words): z.ZodMiniString<string> {
  const field = z.string();
  told.set(field, { says: words, wanted });
  return field;
}

/** What a part of a schema says it is; of a quantity, the part that takes the input. */
export function partRow(part: object): PartRow | undefined {
  const quantity = described.get(part);
  return quantity === undefined ? told.get(part) : { says: quantity.says };
}

/** What each quantity field was made from, for a schema in words. */
const described = new WeakMap<object, FieldRow & { readonly is: DimensionName }>();

/** What a part of a schema was made from, where it is the part of a quantity field that takes the input. */
export function fieldRow(part: object): (FieldRow & { readonly is: DimensionName }) | undefined {
  return described.get(part);
}

/** The units that are proposed first in nested input: what a wall is measured in, for `mil` and `um` are for film. */
export function proposedUnits(dimension: DimensionName): readonly string[] {
  return dimension === "length" ? ["ft", "in", "m", "mm"] : [];
}

function readLimited<D extends DimensionName>(dimension: D, given: unknown, row: FieldRow, limits: readonly Limit[]): Quantity<D> | Trouble {
  const place = { path: [], says: row.says, propose: proposedUnits(dimension) };
  const read = readQuantity(dimension, given, place);
  if ("code" in read) return given === undefined ? { ...read, code: "missing", given: "" } : read;
  const amount: unknown = amountOf(read);
  if (isOpen(amount) && amount.keeps({ is: dimension, ...row })) return read;
  const broken = beyondLimit(limits, read);
  return broken === undefined ? read : { ...place, ...broken };
}

/**
 * A schema whose value is frozen once it has been read. zod's own `readonly` freezes what is not of its kind too, and
 * that is the caller's.
 */
export function readOnly<S extends z.ZodMiniType>(schema: S): z.ZodMiniPipe<S, z.ZodMiniTransform<Readonly<z.output<S>>, z.output<S>>> {
  return z.pipe(schema, z.transform((value: z.output<S>) => Object.freeze(value)));
}
