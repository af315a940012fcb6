import { amountIn, isQuantity, type Quantity } from "../../core/quantity.js";
import { type UnitCode, unitSymbol } from "../../core/units.js";
import { decimalText } from "../../core/write-quantity.js";

/** What stands in a cell of a table: a text, a number with all its digits, or nothing. */
export type TableCell = string | { readonly number: string } | undefined;

/** A table with heads, as it is written to a CSV. */
export interface Table {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly TableCell[])[];
}

const digits = 12;

/** A quantity as a number, in its own unit unless another is asked for; 12 digits, which is more than is measured. */
export function numberCell(quantity: Quantity, unit: UnitCode = quantity.unit): TableCell {
  return { number: decimalText(amountIn(quantity, unit), { digits }).text };
}

/** The unit of a quantity as a cell. */
export function unitText(quantity: Quantity | undefined): string {
  return quantity === undefined ? "" : unitSymbol(quantity.unit);
}

/**
 * A list of records as a table, for whatever has none of its own: the checks of a job, the failures of film readings,
 * rows of yours. Each field is a column, a quantity with its unit beside it; lists and records within are left out.
 *
 * @param records - objects with texts, numbers, yes or no, and quantities
 * @example
 * ```ts
 * const { heads, rows } = recordTable([{ wall: "north", area: quantity("area", "320 ft2") }]);
 * heads; // ["wall", "area", "area unit"]
 * rows[0]; // ["north", { number: "320" }, "ft2"]
 * ```
 */
export function recordTable(records: readonly object[]): Table {
  const all = records.map((record) => Object.entries(record).filter(([, value]) => isQuantity(value) || ["string", "number", "boolean", "bigint"].includes(typeof value)));
  const keys = [...new Set(all.flatMap((entries) => entries.map(([key]) => key)))];
  const measured = new Set(all.flatMap((entries) => entries.flatMap(([key, value]) => (isQuantity(value) && unitSymbol(value.unit) !== "" ? [key] : []))));
  const cells = (key: string, value: unknown): readonly TableCell[] => {
    const unit = measured.has(key) ? [isQuantity(value) ? unitText(value) : ""] : [];
    const cell = isQuantity(value) ? numberCell(value) : typeof value === "number" || typeof value === "bigint" ? { number: String(value) } : typeof value === "boolean" ? (value ? "yes" : "no") : (value as string | undefined);
    return [cell, ...unit];
  };
  return {
    heads: keys.flatMap((key) => (measured.has(key) ? [key, `${key} unit`] : [key])),
    rows: all.map((entries) => {
      const record = new Map<string, unknown>(entries);
      return keys.flatMap((key) => cells(key, record.get(key)));
    }),
  };
}
