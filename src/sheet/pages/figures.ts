import { type Amount, exact, isExact, isZero, toDecimal } from "../../core/amount.js";
import { type DimensionName, dimensions } from "../../core/dimensions.js";

import { amountOf, type Quantity } from "../../core/quantity.js";
import { fromBase, unitScale } from "../../core/unit-scale.js";
import { type UnitCode, unitDimension } from "../../core/units.js";
import { legalName } from "../workbook/defined-names.js";

/** An amount as the nearest number that a spreadsheet holds. */
export function asNumber(amount: Amount): number {
  return toDecimal(amount).toNumber();
}

/** A quantity in the unit it is shown in. */
export function numberIn(quantity: Quantity, unit: UnitCode): number {
  return asNumber(fromBase(amountOf(quantity), unit));
}

/** The size of a unit as a cell holds it: digits where they end, else the fraction itself, so that nothing is lost. */
export function sizeCell(unit: UnitCode): { readonly value: number; readonly formula?: string } {
  const { size } = unitScale(unit);
  const value = asNumber(size);
  if (unit === "deg") return { value, formula: "PI() / 180" };
  const ends = isExact(size) && String(value).length < 17;
  const fraction = isExact(size) ? size.toString() : "";
  return ends || !/^\d{1,15}\/\d{1,15}$/.test(fraction) ? { value } : { value, formula: fraction.replace("/", " / ") };
}

/** Where the scale of a unit begins, in base units; 0 for all but temperatures. */
export function zeroOf(unit: UnitCode): number {
  return asNumber(unitScale(unit).zero);
}

/** Whether a unit is the base unit itself, so that no factor stands between. */
export function isBase(unit: UnitCode): boolean {
  const { size, zero } = unitScale(unit);
  return isExact(size) && size.equals(exact(1n)) && isZero(zero);
}

const baseSymbols = ["m", "kg", "s", "K", "money", "person"];

/** The base units of a unit's dimension, as `kg/m3`; empty for a bare number, `rad` for an angle. */
export function baseUnit(unit: UnitCode): string {
  const dimension = unitDimension(unit);
  if (dimension === "angle") return "rad";
  const part = (index: number, power: number): string => `${baseSymbols[index] ?? ""}${power === 1 ? "" : String(power)}`;
  const above = dimensions[dimension].flatMap((power, index) => (power > 0 ? [part(index, power)] : []));
  const below = dimensions[dimension].flatMap((power, index) => (power < 0 ? [`/${part(index, -power)}`] : []));
  return (above.length === 0 && below.length > 0 ? "1" : above.join(" ")) + below.join("");
}

/** The names of the cells that hold the size and the zero of a unit: `unit_ft2`, `zero_degF`. */
export function factorName(unit: UnitCode, what: "unit" | "zero" = "unit"): string {
  return legalName(`${what} ${unit}`);
}

/** A formula in base units from one in a unit. */
export function toBaseFormula(cell: string, unit: UnitCode): string {
  if (isBase(unit)) return cell;
  return `${cell} * ${factorName(unit)}${zeroOf(unit) === 0 ? "" : ` + ${factorName(unit, "zero")}`}`;
}

/** A formula in a unit from one in base units. */
export function fromBaseFormula(cell: string, unit: UnitCode): string {
  if (isBase(unit)) return cell;
  return `${zeroOf(unit) === 0 ? cell : `(${cell} - ${factorName(unit, "zero")})`} / ${factorName(unit)}`;
}

/**
 * A number format with about five digits for a number of this size. A count that was rounded has no places; one that
 * only happens to be whole shows what it has, so that nothing is hidden once a given is changed.
 */
export function formatFor(value: number, whole: boolean, dimension: DimensionName): string {
  if (whole) return "#,##0";
  if (dimension === "count" && Number.isInteger(value)) return "General";
  const size = value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)));
  if (size < -6) return "0.0000E+00";
  const places = Math.min(9, Math.max(1, 4 - size));
  return `#,##0.${"0".repeat(places)}`;
}
