import { type Amount, Decimal, exact, exactArithmetic as arithmetic, isExact, sign, toDecimal } from "./amount.js";
import { amountIn, type Quantity } from "./quantity.js";
import { type System, type UnitCode, unitsOf, unitSymbol, unitSystem } from "./units.js";

/** How a quantity is written. */
export interface Writing {
  /** The unit by its code; the one the quantity is shown in unless another is asked for. */
  readonly unit?: UnitCode;
  /** Significant digits of a decimal; trailing noughts are left out. 6 unless told otherwise. */
  readonly digits?: number;
  /** Places after the point, instead of significant digits; trailing noughts are kept. */
  readonly places?: number;
  /** `tape`: inches with a fraction; `feetInches`: feet, inches and a fraction. For lengths. */
  readonly as?: "decimal" | "tape" | "feetInches";
  /** The smallest part of an inch on the tape: 16 unless told otherwise. */
  readonly tapeParts?: 8 | 16 | 32 | 64;
}

/** A quantity in words, and whether the words say all of it. */
export interface Written {
  readonly text: string;
  /** The number without its unit. */
  readonly number: string;
  /** The unit as it is written; empty for a ratio and a count. */
  readonly unit: string;
  /** False where digits were left out, or where the amount itself is approximate: print `≈` and not `=`. */
  readonly exact: boolean;
}

/**
 * Writes a quantity: as a decimal, as a tape reads it, or in feet and inches.
 *
 * @throws RangeError if a length on the tape is asked of something that is no length
 * @example
 * ```ts
 * const height = quantity("length", "66.375 in");
 * writeQuantity(height, { as: "feetInches" }).text; // "5 ft 6-3/8 in"
 * writeQuantity(height, { as: "tape" }).text; // "66-3/8 in"
 * writeQuantity(height, { unit: "mm", digits: 4 }).text; // "1686 mm"
 * ```
 */
export function writeQuantity(quantity: Quantity, writing: Writing = {}): Written {
  const { unit = quantity.unit, as = "decimal" } = writing;
  if (as === "decimal") {
    const symbol = unitSymbol(unit);
    const amount = amountIn(quantity, unit);
    const number = decimalText(amount, writing);
    return { text: symbol === "" ? number.text : `${number.text} ${symbol}`, number: number.text, unit: symbol, exact: number.exact };
  }
  if (quantity.dimension !== "length") throw new RangeError(`${quantity.dimension} cannot be written as a length on a tape`);
  return tapeText(quantity, as === "feetInches", BigInt(writing.tapeParts ?? 16));
}

/** A number in decimals, and whether that is all of it. */
export function decimalText(amount: Amount, { digits = 6, places }: Pick<Writing, "digits" | "places"> = {}): { readonly text: string; readonly exact: boolean } {
  const decimal = toDecimal(amount);
  const rounded = places === undefined ? decimal.toSignificantDigits(digits) : decimal.toDecimalPlaces(places);
  const text = places === undefined ? rounded.toFixed() : rounded.toFixed(places);
  return { text: rounded.isZero() ? text.replace("-", "") : text, exact: isExact(amount) && isWhole(amount, rounded) };
}

/** Whether a rounded decimal is the exact fraction itself. */
function isWhole(amount: Amount, rounded: Decimal): boolean {
  return isExact(amount) && new Decimal(amount.denominator.toString()).times(rounded).eq(amount.numerator.toString());
}

function tapeText(length: Quantity, withFeet: boolean, parts: bigint): Written {
  const inches = amountIn(length, "in");
  const steps = arithmetic.round(arithmetic.multiply(inches, exact(parts)));
  const marks = BigInt(toDecimal(steps).abs().toFixed(0));
  const feet = withFeet ? marks / (12n * parts) : 0n;
  const rest = marks - feet * 12n * parts;
  const [whole, over] = [rest / parts, rest % parts];
  const fraction = over === 0n ? "" : lowestFraction(over, parts);
  // After feet a nought stands before a fraction, as a mason writes it: 1 ft 0-5/8 in.
  const inchText = fraction === "" ? whole.toString() : whole === 0n && feet === 0n ? fraction : `${whole.toString()}-${fraction}`;
  const minus = sign(steps) < 0 ? "-" : "";
  const isExactly = isExact(inches) && arithmetic.compare(arithmetic.multiply(inches, exact(parts)), steps) === 0;
  if (feet === 0n) return { text: `${minus}${inchText} in`, number: `${minus}${inchText}`, unit: "in", exact: isExactly };
  const text = rest === 0n ? `${minus}${feet.toString()} ft` : `${minus}${feet.toString()} ft ${inchText} in`;
  return { text, number: text, unit: "", exact: isExactly };
}

function lowestFraction(above: bigint, below: bigint): string {
  let [n, d] = [above, below];
  while (n % 2n === 0n) [n, d] = [n / 2n, d / 2n];
  return `${n.toString()}/${d.toString()}`;
}

/** Of the units a definition shows a value in, the one for a system of units; the first where none fits. */
export function unitFor(shown: readonly UnitCode[], system: System | undefined, fallback: UnitCode): UnitCode {
  if (system === undefined) return fallback;
  return shown.find((code) => unitSystem(code) === system) ?? shown.find((code) => unitSystem(code) === "both") ?? fallback;
}

/** The units of a dimension that belong to a system. */
export function unitsIn(dimension: Quantity["dimension"], system: System): readonly UnitCode[] {
  return unitsOf(dimension).filter((code) => unitSystem(code) === system || unitSystem(code) === "both");
}
